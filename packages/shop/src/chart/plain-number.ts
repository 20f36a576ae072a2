/** A figure of an axis: no more decimals than its step has, a comma between thousands. */
export function plain(value: number): string {
  const text = String(Number(value.toPrecision(6)));
  const [whole, decimals] = text.split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ",");
  return decimals === undefined ? grouped : `${grouped}.${decimals}`;
}
