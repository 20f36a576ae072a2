import { TRAVELER_FORMAT, TRAVELER_VERSION } from "@bitwright/traveler";
import { valueAt } from "./path.ts";

/** A traveler as the page holds it: as typed, so that what is not sound yet is kept as well. */
export type JobDocument = Readonly<Record<string, unknown>>;

/** A new inquiry. It names what must be there and nothing else. */
export function newInquiry(): JobDocument {
  return {
    format: TRAVELER_FORMAT,
    version: TRAVELER_VERSION,
    job: { name: "New inquiry" },
    inquiry: { holes: [{ name: "open hole" }] },
    ground: { beds: [] },
  };
}

/** What a list of jobs shows of one. */
export interface JobHead {
  readonly name: string;
  readonly number?: string;
  readonly customer?: string;
  readonly date?: string;
}

/** Name, number, customer and date of a document, whether it is sound or not. */
export function headOf(document: unknown): JobHead {
  const word = (field: string) => {
    const value = valueAt(document, ["job", field]);
    return typeof value === "string" || typeof value === "number" ? String(value).trim() : "";
  };
  const given = (field: "number" | "customer" | "date") => (word(field) === "" ? {} : { [field]: word(field) });
  return { name: word("name") || "Job without a name", ...given("number"), ...given("customer"), ...given("date") };
}
