import { VERDICT_WORDS } from "@bitwright/engine";
import type { Workup } from "@bitwright/traveler";
import type { Figures } from "./figures.ts";
import { textTable, wrapped } from "./text-table.ts";

/** Is PDC the tool: every bed with its strength and verdict, why, and what to use where it is not. */
export function groundLines({ advice, ground, inquiry }: Workup, figures: Figures, width: number): string[] {
  const { bitHole } = inquiry.inquiry;
  const rows = advice.fits.map((fit, at) => {
    const { bed } = fit;
    const inHole = bed.bottom > bitHole.from && bed.top < bitHole.to;
    const { ucs, rock } = ground.beds[at];
    return [
      figures.range("depth", bed.top, bed.bottom),
      bed.name,
      rock.name,
      figures.band("strength", ucs),
      inHole ? VERDICT_WORDS[fit.verdict] : `${VERDICT_WORDS[fit.verdict]} (above the bit's hole)`,
    ];
  });
  const table = textTable(["depth", "ground", "taken as", "strength low / mid / high", "PDC"], rows, [1, 2, 4]);
  const why = advice.fits
    .filter(({ bed }) => bed.top < bitHole.to)
    .flatMap((fit) => {
      const reason = fit.reasons[0];
      const instead = fit.insteadUse.map(({ tool }) => tool).join(", ");
      const use = fit.verdict === "unfit" && instead !== "" ? ` Use instead: ${instead}.` : "";
      return wrapped(`- ${fit.bed.name}: ${VERDICT_WORDS[fit.verdict]}. ${reason.sentence}${use}`, width, 2);
    });
  const casing = advice.casing.reasons.flatMap(({ sentence, value }) =>
    wrapped(`- casing: ${sentence}${value === undefined ? "" : ` At least ${figures.of("depth", value)}.`}`, width, 2),
  );
  return [...table, "", ...why, ...casing];
}
