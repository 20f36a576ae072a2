import { type Finding, requireNotNegative, requirePositive } from "../quantity/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";
import { fitByAbrasion } from "./fit-by-abrasion.ts";
import { fitByHazard } from "./fit-by-hazard.ts";
import { fitByKind } from "./fit-by-kind.ts";
import { fitByStrength } from "./fit-by-strength.ts";
import { type GroundKind, groundKind } from "./ground-kind.ts";
import { type InsteadUse, insteadOfPdc } from "./instead-of-pdc.ts";
import type { Reason } from "./reason.ts";
import { type Verdict, worstVerdict } from "./verdict.ts";

/** Whether a PDC bit is the tool for one bed, and what follows from it. */
export interface BedFit {
  readonly bed: AdvisedBed;
  readonly kind: GroundKind;
  readonly verdict: Verdict;
  /** At least one; those that decided come first. */
  readonly reasons: readonly Reason[];
  /** What to use in its place, the likeliest first; for a fit bed a cheaper tool where there is one. */
  readonly insteadUse: readonly InsteadUse[];
  /** What to mind while this bed is drilled. */
  readonly cautions: readonly string[];
  /** Whether the wall has to be held by casing before the hole goes deeper. */
  readonly caseOff: boolean;
  readonly findings: readonly Finding[];
}

/**
 * Fit of a PDC bit to one bed: the worst of what its kind, its strength, its abrasivity and its hazards say.
 *
 * @throws RangeError when the bed has no thickness or its depths are negative
 * @source (c) common practice, no source, with the classes of Plinninger 2010 and ISRM 2014 recalled for abrasivity
 */
export function fitOfBed(bed: AdvisedBed): BedFit {
  requireNotNegative({ top: bed.top });
  requirePositive({ thickness: bed.bottom - bed.top });
  const kind = groundKind(bed);
  const looks = [fitByKind(bed), fitByStrength(bed), fitByAbrasion(bed), fitByHazard(bed)];
  const verdict = worstVerdict(looks.map((look) => look.verdict));
  const deciding = looks.filter((look) => look.verdict === verdict);
  const others = looks.filter((look) => look.verdict !== verdict);
  const troubles = [...deciding, ...others].flatMap((look) => look.troubles);
  return {
    bed,
    kind,
    verdict,
    reasons: [...deciding, ...others].flatMap((look) => look.reasons),
    insteadUse: insteadOfPdc({ bed, troubles }),
    cautions: [...new Set(looks.flatMap((look) => look.cautions))],
    caseOff: isLoose(kind, bed),
    findings: looks.flatMap((look) => look.findings),
  };
}

/** Rock that caves at its joints is the mud's affair; loose ground that caves is the casing's. */
function isLoose(kind: GroundKind, { rock, hazards }: AdvisedBed): boolean {
  if (kind === "sand") return true;
  return (kind === "soil" || kind === "gravel") && rock.family !== "clastic" && hazards.includes("caving");
}
