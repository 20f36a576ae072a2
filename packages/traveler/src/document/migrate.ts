import { type Problem, problem, shown } from "./problem.ts";
import { TRAVELER_FORMAT, TRAVELER_VERSION } from "./traveler-schema.ts";

/** A document as it lies in a file: a group of fields, nothing known of them yet. */
type RawTraveler = Readonly<Record<string, unknown>>;

/** The document in today's version, or what is wrong with its mark or its version. */
export type Migrated =
  | { readonly ok: true; readonly document: RawTraveler }
  | { readonly ok: false; readonly problem: Problem };

/**
 * One step of the ladder for each version that was ever written: `STEPS[n]` takes a document of version n to n + 1.
 * A step moves fields and touches nothing it does not know.
 */
const STEPS: readonly ((document: RawTraveler) => RawTraveler)[] = [holeBecomesHoles];

/** Version 0 knew one hole only, `inquiry.hole`; since version 1 a job has a list of them. */
function holeBecomesHoles(document: RawTraveler): RawTraveler {
  const inquiry = document.inquiry;
  if (typeof inquiry !== "object" || inquiry === null || !("hole" in inquiry) || "holes" in inquiry) return document;
  // Rebuilt entry by entry, so that the fields stay in the order they were written in.
  const entries = Object.entries(inquiry).map(([name, value]) =>
    name === "hole" ? ["holes", [value]] : [name, value],
  );
  return { ...document, inquiry: Object.fromEntries(entries) };
}

/** A document of any version up to today's, brought to today's. A newer one is refused in plain words. */
export function migrate(document: unknown): Migrated {
  const refuse = (field: string, value: unknown, expected: string, wrong?: string): Migrated => ({
    ok: false,
    problem: problem({ field, got: shown(value), expected, wrong: wrong ?? wrongOf(value) }),
  });
  if (typeof document !== "object" || document === null || Array.isArray(document)) {
    return refuse("traveler", document, "give a traveler, a group of fields in braces { }");
  }
  const { format, version } = document as { format?: unknown; version?: unknown };
  if (format !== TRAVELER_FORMAT) {
    return refuse("format", format, `give "${TRAVELER_FORMAT}", the mark by which a traveler is known`);
  }
  if (typeof version !== "number" || !Number.isInteger(version) || version < 0) {
    return refuse("version", version, `give the version of the document, a whole number up to ${TRAVELER_VERSION}`);
  }
  if (version > TRAVELER_VERSION) {
    const wrong = `this traveler was saved by a newer Bitwright (version ${version})`;
    return refuse("version", version, `this one reads up to version ${TRAVELER_VERSION}`, wrong);
  }
  const current = STEPS.slice(version).reduce((older, step) => step(older), document as RawTraveler);
  return { ok: true, document: version === TRAVELER_VERSION ? current : { ...current, version: TRAVELER_VERSION } };
}

function wrongOf(value: unknown): string {
  const got = shown(value);
  return got === "nothing" ? "nothing is given" : `got ${got}`;
}
