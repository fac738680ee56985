// Of a value that waits on the device: whether it lies between the limits of the open check. What it is decided by, the
// instrument and its uncertainty, is the workshop's computer's to know, so nothing is called passed or failed here.

const plain = /^(-?\d+(?:\.\d+)?)\s*(\p{L}*)$/u;

/** A sentence about a typed value, or several parted by semicolons; undefined where the check has no limits, or where the
    value is not plain enough to be sure what it is. */
export function againstLimits(form, typed, chosen) {
  const limits = JSON.parse(form.querySelector("[data-limits]")?.dataset.limits ?? "[]");
  const placed = typed.split(";").map((one) => place(one.trim(), chosen, limits));
  if (placed.some((one) => one === undefined)) {
    return undefined;
  }

  const where = placed.every((one) => one) ? "between" : placed.some((one) => one) ? "partly between" : "not between";
  return `${where} the limits (${limits.find(({ unit }) => unit === chosen)?.words ?? limits[0].words}); decided when it is sent`;
}

/** Whether one value lies between the limits; undefined where it is not sure. */
function place(text, chosen, limits) {
  const [, number, said] = plain.exec(text) ?? [];
  const of = limits.filter(({ unit }) => (said ? unit === said || said.toLowerCase() === "k" && unit.startsWith("k") : unit === chosen));
  if (number === undefined || of.length !== 1) {
    return undefined;
  }

  const [{ lower, upper }] = of;
  return Number(number) >= (lower ?? -Infinity) && Number(number) <= (upper ?? Infinity);
}
