/** A study as JSON text in SI: typed arrays as plain lists, the grid of edges, which is made again in a moment, left out. */
export function studyJson(study: object): string {
  const plain = (key: string, value: unknown) => {
    if (key === "trace") return undefined;
    return value instanceof Float64Array || value instanceof Int32Array ? [...value] : value;
  };
  return JSON.stringify(study, plain, 2);
}
