import { type BedFit, VERDICT_WORDS } from "@bitwright/engine";
import type { Workup } from "@bitwright/traveler";
import type { Figures } from "./figures.ts";
import { textTable, wrapped } from "./text-table.ts";

/** Is PDC the tool: every bed with its strength and verdict, why, and what to use where it is not. */
export function groundLines({ advice, ground, inquiry }: Workup, figures: Figures, width: number): string[] {
  const { bitHole } = inquiry.inquiry;
  const rows = advice.fits.map((fit, at) => {
    const { bed } = fit;
    const { ucs, rock } = ground.beds[at];
    return [
      figures.range("depth", bed.top, bed.bottom),
      bed.name,
      rock.name,
      figures.band("strength", ucs),
      VERDICT_WORDS[fit.verdict] + beside(bed, bitHole),
    ];
  });
  const table = textTable(["depth", "ground", "taken as", "strength low / mid / high", "PDC"], rows, [1, 2, 4]);
  const reasons = advice.fits
    .filter(({ bed }) => bed.top < bitHole.to)
    .map((fit) => {
      const reason = fit.reasons[0];
      const instead = fit.insteadUse.map(({ tool }) => tool).join(", ");
      const use = fit.verdict === "unfit" && instead !== "" ? ` Use instead: ${instead}.` : "";
      return `- ${fit.bed.name}: ${VERDICT_WORDS[fit.verdict]}. ${reason.sentence}${use}`;
    });
  // Beds of one name and one reason are told once.
  const why = [...new Set(reasons)].flatMap((line) => wrapped(line, width, 2));
  const casing = advice.casing.reasons.flatMap(({ sentence, value }) =>
    wrapped(`- casing: ${sentence}${value === undefined ? "" : ` At least ${figures.of("depth", value)}.`}`, width, 2),
  );
  return [...wrapped(fitAnswer({ advice, inquiry }, figures), width), "", ...table, "", ...why, ...casing];
}

/** The answer in one line: over which depths the bit of this hole is the tool, and where it is not. */
export function fitAnswer({ advice, inquiry }: Pick<Workup, "advice" | "inquiry">, figures: Figures): string {
  const { fits, casing } = advice;
  const { bitHole } = inquiry.inquiry;
  const inHole = fits.filter(({ bed }) => beside(bed, bitHole) === "");
  if (inHole.length === 0) return "Nobody can tell: the log says nothing of the ground in this hole.";
  if (inHole.every(({ verdict }) => verdict === "unfit")) {
    const tools = [...new Set(inHole.flatMap(({ insteadUse }) => insteadUse.map(({ tool }) => tool)))].join(", ");
    return `No. Nothing in this hole is ground for a PDC bit.${tools === "" ? "" : ` Use instead: ${tools}.`}`;
  }
  const stretches = casing.bitIntervals.map(({ top, bottom }) => figures.range("depth", top, bottom)).join(" and ");
  const named = (verdict: BedFit["verdict"]) => [
    ...new Set(inHole.filter((fit) => fit.verdict === verdict).map(({ bed }) => bed.name)),
  ];
  const care = named("fit-with-care");
  const unfit = named("unfit");
  return [
    `Yes, ${stretches}.`,
    ...(care.length === 0 ? [] : [`With care in ${care.join("; ")}.`]),
    ...(unfit.length === 0 ? [] : [`Not in ${unfit.join("; ")}.`]),
  ].join(" ");
}

type Hole = Workup["inquiry"]["inquiry"]["bitHole"];

/** Where a bed lies that the bit's hole does not reach. */
function beside({ top, bottom }: BedFit["bed"], { from, to }: Hole): string {
  if (bottom <= from) return " (above the bit's hole)";
  return top >= to ? " (below the bit's hole)" : "";
}
