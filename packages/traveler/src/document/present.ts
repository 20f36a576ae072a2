/** The fields that are there, so that an absent one is absent and not undefined. */
export function present<Fields extends Readonly<Record<string, unknown>>>(fields: Fields): Present<Fields> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Present<Fields>;
}

/** Fields of which any may be absent and none is undefined. */
export type Present<Fields> = { [Name in keyof Fields]?: Exclude<Fields[Name], undefined> };
