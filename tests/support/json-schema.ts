type Node = Readonly<Record<string, unknown>>;

const TYPES: Readonly<Record<string, (value: unknown) => boolean>> = {
  object: (value) => typeof value === "object" && value !== null && !Array.isArray(value),
  array: Array.isArray,
  string: (value) => typeof value === "string",
  number: (value) => typeof value === "number",
  integer: Number.isInteger,
  boolean: (value) => typeof value === "boolean",
  null: (value) => value === null,
};
/** Words that say something to a reader and nothing of what is valid. */
const FOR_READERS = ["$schema", "title", "description", "examples", "default"];

/**
 * The places where a value breaks a JSON Schema, in the part of draft 2020-12 that the traveler uses. A keyword that is
 * not known here throws, so that a schema that grows cannot pass unread.
 */
export function schemaFaults(schema: Node, value: unknown, at = "$"): string[] {
  const rest = new Set(Object.keys(schema).filter((key) => !FOR_READERS.includes(key)));
  const take = <T>(key: string): T | undefined => {
    rest.delete(key);
    return schema[key] as T | undefined;
  };
  const faults: string[] = [];
  const need = (holds: boolean, what: string) => {
    if (!holds) faults.push(`${at}: ${what}`);
  };
  const types = [take<string | string[]>("type") ?? []].flat();
  need(types.length === 0 || types.some((type) => TYPES[type](value)), `is no ${types.join(" or ")}`);
  const constant = take("const");
  need(constant === undefined || constant === value, `is not ${JSON.stringify(constant)}`);
  const among = take<unknown[]>("enum");
  need(!among || among.includes(value), `is none of ${JSON.stringify(among)}`);
  const minimum = take<number>("minimum");
  need(minimum === undefined || !(typeof value === "number" && value < minimum), `is under ${minimum}`);
  const maximum = take<number>("maximum");
  need(maximum === undefined || !(typeof value === "number" && value > maximum), `is over ${maximum}`);
  const choices = take<Node[]>("anyOf");
  need(!choices || choices.some((choice) => schemaFaults(choice, value, at).length === 0), "fits none of the choices");
  const leastItems = take<number>("minItems") ?? 0;
  const items = take<Node>("items");
  const properties = take<Record<string, Node>>("properties") ?? {};
  const required = take<string[]>("required") ?? [];
  const others = take<Node>("additionalProperties") ?? {};
  const names = take<Node>("propertyNames") ?? {};
  if (rest.size > 0) throw new Error(`unknown keyword at ${at}: ${[...rest].join(", ")}`);
  if (Array.isArray(value)) {
    need(value.length >= leastItems, `holds fewer than ${leastItems}`);
    if (items) for (const [k, item] of value.entries()) faults.push(...schemaFaults(items, item, `${at}[${k}]`));
  } else if (TYPES.object(value)) {
    const group = value as Record<string, unknown>;
    for (const name of required) need(name in group, `lacks ${name}`);
    for (const [name, item] of Object.entries(group)) {
      faults.push(...schemaFaults(names, name, `${at}.${name}`));
      faults.push(...schemaFaults(properties[name] ?? others, item, `${at}.${name}`));
    }
  }
  return faults;
}
