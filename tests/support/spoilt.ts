import { soundTraveler } from "./sound-traveler.ts";

/** A place in a document: names and numbers from the outside in. */
export type Path = readonly (string | number)[];

/** The sound traveler with one place put to another value, or taken out where the value is `undefined`. */
export function spoilt(path: Path, value: unknown, document: unknown = soundTraveler()): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(document)) return document.map((item, at) => (at === step ? spoilt(rest, value, item) : item));
  const group = (document ?? {}) as Record<string, unknown>;
  const { [step]: old, ...others } = group;
  const next = spoilt(rest, value, old ?? {});
  return next === undefined ? others : { ...group, [step]: next };
}
