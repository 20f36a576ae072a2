import { commonPractice, derivedFrom, type Finding, gravestFirst } from "../quantity/index.ts";
import type { GroundBedFigures } from "./ground-bed.ts";
import { HAZARD_WORDS, type Hazard } from "./hazard.ts";

/** From this rock abrasivity index on ground counts as very abrasive [-]; the class limit of Plinninger 2010. */
const VERY_ABRASIVE = 60;
/** From this CERCHAR index on ground counts as of high abrasivity [-]; the class limit of ISRM 2014. */
const HIGH_CERCHAR = 3;

/** Hazards that call for a word on every bed that has them: to the bit at once, or to the crew. */
const SPOKEN_OF: readonly Hazard[] = ["impact", "hard-stringers", "silica-dust", "gas"];

/**
 * Remarks on one bed, gravest first.
 *
 * @source (c) common practice; class limits as named
 */
export function bedFindings(of: GroundBedFigures): Finding[] {
  return gravestFirst([
    ...namingFindings(of),
    ...strengthFindings(of),
    ...wearFindings(of),
    ...hazardFindings(of),
    ...bandFindings(of),
  ]);
}

function namingFindings({ bed, rock, rockFrom, reading }: GroundBedFigures): Finding[] {
  const where = bed.name;
  const source = commonPractice("usage of drillers' logs, no source");
  if (rockFrom === "not named") {
    const said = reading ? ` ${reading.reason}` : "";
    return [
      {
        code: "ground-not-named",
        severity: "caution",
        where,
        message: `Nobody says what this ground is.${said} Figures for it are as wide as rock goes: name the rock.`,
        source,
      },
    ];
  }
  if (reading?.confidence === "guess" && rockFrom === "phrase") {
    return [{ code: "rock-guessed-from-phrase", severity: "note", where, message: reading.reason, source }];
  }
  if (rockFrom === "entered" && reading?.rockId !== undefined && reading.rockId !== rock.id) {
    return [
      {
        code: "phrase-reads-otherwise",
        severity: "note",
        where,
        message: `The bed is entered as ${rock.name}; the driller's words read as ${reading.rockId}. Check which holds.`,
        source,
      },
    ];
  }
  return [];
}

function strengthFindings({ bed, rock, rockFrom, ucs, ucsSource }: GroundBedFigures): Finding[] {
  if (bed.ucs !== undefined || ucsSource.kind === "entered" || rockFrom === "not named") return [];
  return [
    {
      code: "strength-from-table-only",
      severity: "note",
      where: bed.name,
      message: `Strength is that of any ${rock.name}: the high side is ${spread(ucs)} times the low. A log, a test or a bit record of a neighbour well narrows it.`,
      value: ucs.mid,
      unit: "Pa",
      source: ucsSource,
    },
  ];
}

function spread({ low, high }: { readonly low: number; readonly high: number }): string {
  const ratio = high / low;
  return ratio < 10 ? ratio.toFixed(1) : ratio.toFixed(0);
}

function wearFindings({ bed, abrasivity }: GroundBedFigures): Finding[] {
  const { index, cerchar } = abrasivity;
  if (index.mid >= VERY_ABRASIVE) {
    return [
      {
        code: "abrasive-bed",
        severity: "caution",
        where: bed.name,
        message: `Ground is ${abrasivity.class}: expect flats on the outer cutters and loss of gauge.`,
        value: index.mid,
        limit: VERY_ABRASIVE,
        unit: "-",
        source: derivedFrom("rock abrasivity index, Plinninger 2010, class limits recalled"),
      },
    ];
  }
  if (cerchar.mid < HIGH_CERCHAR) return [];
  return [
    {
      code: "abrasive-bed",
      severity: "caution",
      where: bed.name,
      message: `CERCHAR abrasivity of such ground is ${abrasivity.cercharClass}: expect flats on the outer cutters.`,
      value: cerchar.mid,
      limit: HIGH_CERCHAR,
      unit: "-",
      source: derivedFrom("CERCHAR index of the rock table, ISRM 2014 classes recalled"),
    },
  ];
}

/** Bands called hard and not named: nobody can say what they do to the cutters. */
function bandFindings({ bed, hazards, stringer }: GroundBedFigures): Finding[] {
  if (stringer || !hazards.includes("hard-stringers")) return [];
  return [
    {
      code: "hard-bands-unnamed",
      severity: "note",
      where: bed.name,
      message:
        "Hard bands are told of, but not of which rock. Ask the driller and name it, to see how hard the cutters meet them.",
      source: commonPractice(),
    },
  ];
}

function hazardFindings({ bed, hazards }: GroundBedFigures): Finding[] {
  return hazards
    .filter((hazard) => SPOKEN_OF.includes(hazard))
    .map((hazard) => ({
      code: `hazard-${hazard}`,
      severity: "caution",
      where: bed.name,
      message: `${HAZARD_WORDS[hazard].replace(/^./u, (letter) => letter.toUpperCase())}.`,
      source: commonPractice(),
    }));
}
