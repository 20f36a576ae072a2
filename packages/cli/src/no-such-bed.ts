import { Complaint } from "./complaint.ts";

/** A complaint that names the beds there are. */
export function noSuchBed(asked: string, beds: readonly { readonly bed: { readonly name: string } }[]): Complaint {
  const names = beds.map(({ bed }, k) => `${k + 1} ${bed.name}`).join("; ");
  return new Complaint([
    names === ""
      ? `--bed: got "${asked}", but no bed of this hole is drilled with this bit`
      : `--bed: no bed that the bit drills is named "${asked}"; give a number, a name or a part of one: ${names}`,
  ]);
}
