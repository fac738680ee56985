// A file that is dropped anywhere on a page that asks for one goes into its field.

const field = document.querySelector("[data-drop]");

if (field) {
  document.addEventListener("dragover", (event) => event.preventDefault());
  document.addEventListener("drop", (event) => {
    event.preventDefault();
    if (event.dataTransfer.files.length > 0) {
      field.files = event.dataTransfer.files;
      field.focus();
    }
  });
}
