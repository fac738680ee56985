/** A time by this device's clock, with how far that is from universal time. */
export function localTime(date = new Date()) {
  const ahead = -date.getTimezoneOffset();
  const two = (number) => String(Math.floor(number)).padStart(2, "0");
  const offset = `${ahead < 0 ? "-" : "+"}${two(Math.abs(ahead) / 60)}:${two(Math.abs(ahead) % 60)}`;
  return new Date(date.getTime() + ahead * 60_000).toISOString().replace("Z", offset);
}
