/** How numbers are shown to a coach: a space between thousands, a decimal point, no trailing zeros. */

/** `7825` → `7 825`, `82.50` → `82.5`; ties are rounded away from zero (`0.25` to one decimal → `0.3`). */
export function printNumber(value: number, maximumDecimals = 0): string {
  const rounded = roundTo(value, maximumDecimals);
  const [whole, decimals] = Math.abs(rounded).toFixed(maximumDecimals).split('.') as [string, string?];
  const grouped = whole.length > 3 ? whole.replace(/\B(?=(\d{3})+$)/g, ' ') : whole;
  const kept = decimals?.replace(/0+$/, '');
  return `${rounded < 0 ? '-' : ''}${grouped}${kept ? `.${kept}` : ''}`;
}

/** A change with its sign: `6.78` → `+6.8` to one decimal; no change → `0`. */
export function printSigned(value: number, maximumDecimals = 0): string {
  const text = printNumber(value, maximumDecimals);
  return text === '0' || text.startsWith('-') ? text : `+${text}`;
}

/** `98` and `105` → `98 to 105`; once when both print the same. */
export function printRange(low: number, high: number, maximumDecimals = 0): string {
  const first = printNumber(low, maximumDecimals);
  const last = printNumber(high, maximumDecimals);
  return first === last ? first : `${first} to ${last}`;
}

/** Rounds the decimal text of a number, so that 1.005 becomes 1.01 though its binary form lies just below. */
export function roundTo(value: number, decimals: number): number {
  if (decimals >= 0 && Number.isInteger(value)) return value === 0 ? 0 : value;
  const magnitude = shiftPoint(Math.round(shiftPoint(Math.abs(value), decimals)), -decimals);
  return value < 0 && magnitude > 0 ? -magnitude : magnitude;
}

function shiftPoint(value: number, places: number): number {
  if (places === 0) return value;
  const [digits, exponent] = String(value).split('e') as [string, string?];
  return Number(`${digits}e${Number(exponent ?? 0) + places}`);
}
