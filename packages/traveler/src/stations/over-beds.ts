import type { Finding } from "@bitwright/engine";

/** The remarks on one bed. */
export interface RemarkedBed {
  /** Name of the bed. */
  readonly name: string;
  readonly findings: readonly Finding[];
}

/** What is found in several beds alike is said once, with the beds named and the worst figure. */
export function overBeds(
  beds: readonly RemarkedBed[],
  /** Remarks that have been made already and are not made again. */
  known: readonly Finding[] = [],
): Finding[] {
  const said = new Set(known.map(({ code, where }) => `${code} ${where}`));
  const met = new Map<string, { finding: Finding; names: string[] }>();
  for (const { name, findings } of beds) {
    for (const finding of findings) {
      if (said.has(`${finding.code} ${finding.where}`)) continue;
      const key = `${finding.code} ${finding.severity} ${finding.where}`;
      const before = met.get(key);
      if (!before) met.set(key, { finding, names: [name] });
      else {
        before.names.push(name);
        if ((finding.value ?? 0) > (before.finding.value ?? 0)) before.finding = finding;
      }
    }
  }
  return [...met.values()].map(({ finding, names }) => ({
    ...finding,
    where: `${finding.where}, in ${names.join("; ")}`,
  }));
}
