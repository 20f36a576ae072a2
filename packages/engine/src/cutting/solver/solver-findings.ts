import { type GeneratedBit, gapsBetweenWings, wingsAround } from "../../bit/index.ts";
import { commonPractice, derivedFrom, type Finding } from "../../quantity/index.ts";
import { ACCEPTED_LATERAL_SHARE, GOOD_LATERAL_SHARE } from "../drilling-findings.ts";
import type { FiguredLayout } from "./layout-figures.ts";
import type { TwoAims } from "./pareto-list.ts";
import type { SolverSetting } from "./solver-setting.ts";

/** A share of a face under which an overlap counts as missed; the tenth of a millimetre of a station is less [-]. */
const OVERLAP_SLACK = 0.01;

/**
 * What a layout does not meet: uncut rings, thin walls, neighbours too far apart, a port that does not fit, side force.
 *
 * @source (d) geometry and summed forces; each limit names its own
 */
export function unmetFindings(
  setting: SolverSetting,
  bit: GeneratedBit,
  { figures, cover, walls, coverage }: FiguredLayout,
): Finding[] {
  const rings = coverage.findings.filter(({ code }) => code !== "under-gauge");
  return [
    ...rings,
    ...walls.findings,
    ...overlapFindings(setting, bit, figures.leastOverlap, cover.between),
    ...portFindings(setting, bit, figures.largestPort),
    ...sideForceFindings(figures.imbalance),
  ];
}

/**
 * The remarks on a bit as laid out, those on wings without gauge cutter in words that hold whoever laid it out.
 *
 * @source (d) bookkeeping
 */
export function bitFindings({ findings }: GeneratedBit): Finding[] {
  return findings.map((finding) =>
    finding.code === "wing-without-gauge-cutter"
      ? {
          ...finding,
          message:
            "This wing carries no gauge cutter: its outermost cutter works on the face. The wings on either side hold the diameter.",
        }
      : finding,
  );
}

function overlapFindings(
  { mostApart }: SolverSetting,
  { places }: GeneratedBit,
  leastOverlap: number,
  between: readonly [number, number],
): Finding[] {
  const limit = 1 - mostApart;
  if (leastOverlap >= limit - OVERLAP_SLACK) return [];
  const [inner, outer] = between.map((at) => `${places[at].number} on wing ${places[at].wing}`);
  return [
    {
      code: "faces-far-apart",
      severity: "caution",
      where: `cutters ${inner} and ${outer}`,
      message:
        "Between these two a high ridge is left, which is cut by the flanks of the faces and may reach the wing. Another cutter between them lowers it.",
      value: leastOverlap,
      limit,
      unit: "-",
      source: commonPractice("our choice, no source"),
    },
  ];
}

function portFindings({ portDiameter }: SolverSetting, { wingAngles }: GeneratedBit, largestPort: number): Finding[] {
  if (largestPort >= portDiameter) return [];
  const gaps = gapsBetweenWings(wingAngles);
  const narrowest = gaps.indexOf(Math.min(...gaps));
  const round = wingsAround(wingAngles);
  const [behind, ahead] = [round[narrowest], round[(narrowest + 1) % round.length]];
  return [
    {
      code: "port-does-not-fit-slot",
      severity: "caution",
      where: `slot between wings ${behind + 1} and ${ahead + 1}`,
      message: "The narrowest slot has no room for this port: take fewer wings, shorter cutters or smaller ports.",
      value: largestPort,
      limit: portDiameter,
      unit: "m",
      source: derivedFrom("room between two wings at the core"),
    },
  ];
}

function sideForceFindings(imbalance: number): Finding[] {
  if (!(imbalance > GOOD_LATERAL_SHARE)) return [];
  const refused = imbalance > ACCEPTED_LATERAL_SHARE;
  return [
    {
      code: "side-force",
      severity: refused ? "caution" : "note",
      where: "bit",
      message: refused
        ? "The cutters push the bit sideways by more than is accepted as balanced."
        : "The cutters push the bit sideways by more than counts as well balanced.",
      value: imbalance,
      limit: refused ? ACCEPTED_LATERAL_SHARE : GOOD_LATERAL_SHARE,
      unit: "-",
      source: commonPractice(),
    },
  ];
}

/** How a search went. */
export interface SearchCourse {
  /** Candidates tried [-]. */
  readonly tried: number;
  /** Candidates asked for [-]. */
  readonly asked: number;
  readonly stopped: boolean;
  /** Whether any layout covers the hole and keeps its walls. */
  readonly sound: boolean;
}

/**
 * Remarks on the search as a whole: that it was stopped, found nothing sound, or nothing better than the plain generator.
 *
 * @source (d) comparison of figures
 */
export function searchFindings(
  { tried, asked, stopped, sound }: SearchCourse,
  /** The layouts found. */
  found: readonly TwoAims[],
  /** The plain layouts to better. */
  plain: readonly TwoAims[],
): Finding[] {
  const source = derivedFrom("layouts tried in the search");
  const findings: Finding[] = [];
  if (stopped) {
    findings.push({
      code: "search-stopped",
      severity: "note",
      where: "search",
      message: "The search was stopped early; what it had found by then is given.",
      value: tried,
      limit: asked,
      unit: "-",
      source,
    });
  }
  if (!sound) {
    findings.push({
      code: "no-sound-layout",
      severity: "caution",
      where: "search",
      message:
        "No layout was found that covers the hole and keeps every wall; the one that lacks least is given. Take smaller or fewer cutters on a wing, more wings, or a steel body with its thinner walls.",
      source,
    });
    return findings;
  }
  const betters = found.some((one) =>
    plain.every(({ evenness, imbalance }) => one.evenness < evenness && one.imbalance < imbalance),
  );
  if (!betters) {
    findings.push({
      code: "plain-layout-not-bettered",
      severity: "note",
      where: "search",
      message:
        "No layout found is both more even and steadier than the plain generator's: more candidates or more freedom may find one.",
      value: Math.min(...found.map(({ evenness }) => evenness)),
      limit: Math.min(...plain.map(({ evenness }) => evenness)),
      unit: "-",
      source,
    });
  }
  return findings;
}
