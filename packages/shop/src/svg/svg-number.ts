/**
 * A number as drawings carry it: three decimals, no exponent, no negative zero, so that one drawing is one text.
 *
 * @throws RangeError when the value is not finite: a drawing with a hole in it is not to leave the shop
 */
export function svgNumber(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a number in a drawing must be finite, got ${value}`);
  const text = value.toFixed(3).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}
