/** Where a recording goes: with the check that is open when it begins. */
export function addressOf(isHandsFree = false) {
  const { base, check } = document.getElementById("bench").dataset;
  return `${base}/recordings?check=${encodeURIComponent(check)}${isHandsFree ? "&handsFree=true" : ""}`;
}
