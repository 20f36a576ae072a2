/** A place in the document: `["inquiry", "holes", 0, "diameter"]`. */
export type Path = readonly (string | number)[];

/** The steps of a path as problems and remarks write it: `inquiry.holes[0].diameter`. */
export function pathOf(text: string): (string | number)[] {
  return [...text.matchAll(/[^.[\]]+/g)].map(([step]) => (/^\d+$/.test(step) ? Number(step) : step));
}

/** A path as problems and remarks write it. */
export function pathText(path: Path): string {
  return path.map((step, at) => (typeof step === "number" ? `[${step}]` : at === 0 ? step : `.${step}`)).join("");
}

/** What stands at a path; nothing where the way there does not exist. */
export function valueAt(document: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, step) => (isGroup(value) ? value[step] : undefined), document);
}

/** The document with another value at a path. `undefined` takes the field out, and the groups that it leaves empty. */
export function withValue(document: unknown, path: Path, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  const inner = withValue(isGroup(document) ? document[step] : undefined, rest, value);
  if (Array.isArray(document) || (document === undefined && typeof step === "number")) {
    const list: unknown[] = Array.isArray(document) ? [...document] : [];
    // An emptied row stays a row: its neighbours must not move under the hand that types.
    list[Number(step)] = inner === undefined && rest.length > 0 ? {} : inner;
    return rest.length === 0 && inner === undefined ? list.filter((_, at) => at !== step) : list;
  }
  const group: Record<string, unknown> = isGroup(document) ? { ...document } : {};
  if (inner === undefined || isEmpty(inner)) delete group[step];
  else group[step] = inner;
  return isEmpty(group) ? undefined : group;
}

function isGroup(value: unknown): value is Record<string | number, unknown> {
  return typeof value === "object" && value !== null;
}

function isEmpty(value: unknown): boolean {
  if (Array.isArray(value)) return value.length === 0;
  return isGroup(value) && Object.keys(value).length === 0;
}
