/**
 * Student's t for whole degrees of freedom, by the finite series of Abramowitz & Stegun, Handbook of
 * Mathematical Functions (1964), 26.7.3 and 26.7.4: no special function is needed.
 */

/** The t that a two-sided interval of that confidence reaches to: 0.95 and 5 degrees of freedom → 2.570582. */
export function findStudentT(confidence: number, degreesOfFreedom: number): number | undefined {
  if (!(confidence > 0 && confidence < 1) || !Number.isInteger(degreesOfFreedom) || degreesOfFreedom < 1) {
    return undefined;
  }
  // The share inside ± t rises with the angle from 0 to 1, so halving the span finds it to the last digit.
  let low = 0;
  let high = Math.PI / 2;
  for (let step = 0; step < 60; step++) {
    const angle = (low + high) / 2;
    if (shareWithin(angle, degreesOfFreedom) < confidence) {
      low = angle;
    } else {
      high = angle;
    }
  }
  return Math.sqrt(degreesOfFreedom) * Math.tan((low + high) / 2);
}

/** The probability between -t and t, where tan(angle) = t / √(degrees of freedom). */
function shareWithin(angle: number, degreesOfFreedom: number): number {
  const isOdd = degreesOfFreedom % 2 === 1;
  const square = Math.cos(angle) ** 2;
  let term = isOdd ? Math.cos(angle) : 1;
  let series = degreesOfFreedom === 1 ? 0 : term;
  for (let index = isOdd ? 3 : 2; index < degreesOfFreedom; index += 2) {
    term *= ((index - 1) / index) * square;
    series += term;
  }
  return isOdd ? (2 / Math.PI) * (angle + Math.sin(angle) * series) : Math.sin(angle) * series;
}
