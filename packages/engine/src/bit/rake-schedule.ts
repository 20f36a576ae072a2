import { commonPractice, type Finding } from "../quantity/index.ts";
import type { ProfileZone } from "./profile-zone.ts";

const DEGREE = Math.PI / 180;

/** How a face leans and turns. */
export interface Rakes {
  /** Back rake [rad]. */
  readonly backRake: number;
  /** Side rake [rad]. */
  readonly sideRake: number;
}

/** Rakes by zone; `centre` is for the cutter that reaches the bit axis, the taper takes those of the shoulder. */
export interface ZoneRakes {
  readonly kind: "by zone";
  readonly centre: Rakes;
  readonly cone: Rakes;
  readonly nose: Rakes;
  readonly shoulder: Rakes;
  readonly gauge: Rakes;
}

/** Rakes that run evenly over the radius, from the bit axis to the gauge. */
export interface EvenRakes {
  readonly kind: "even";
  readonly centre: Rakes;
  readonly gauge: Rakes;
}

/** What back and side rake each cutter gets. */
export type RakeSchedule = ZoneRakes | EvenRakes;

/** Ground by what it asks of an edge: `hard` also stands for abrasive and broken ground. */
export type RakeGround = "soft" | "usual" | "hard";

/** (c) common practice, no source: 5 degrees less in soft ground, 5 more in hard, abrasive or broken ground. */
const GROUND_SHIFT: Readonly<Record<RakeGround, number>> = { soft: -5 * DEGREE, usual: 0, hard: 5 * DEGREE };

/**
 * Side rake of the cutter that reaches the bit axis: enough that its edge crosses the axis low on the face [rad].
 *
 * @source (c) common practice, no source: 0 to 10 degrees outward on the cone
 */
export const CENTRE_SIDE_RAKE = 10 * DEGREE;

function rakes(backDegrees: number, sideDegrees: number): Rakes {
  return { backRake: backDegrees * DEGREE, sideRake: sideDegrees * DEGREE };
}

/**
 * The usual rakes of a small water-well bit: back rake near 10 degrees, somewhat more toward the gauge, shifted by the
 * ground; side rake outward.
 *
 * @source (c) common practice, no source; least cutting force near 10 degrees: ASME J. Energy Resour. Technol. 114:323, 1992
 */
export function usualRakes(ground: RakeGround = "usual"): ZoneRakes {
  const shift = GROUND_SHIFT[ground];
  const shifted = (of: Rakes): Rakes => ({ ...of, backRake: of.backRake + shift });
  return {
    kind: "by zone",
    centre: shifted({ backRake: 10 * DEGREE, sideRake: CENTRE_SIDE_RAKE }),
    cone: shifted(rakes(10, 5)),
    nose: shifted(rakes(10, 5)),
    shoulder: shifted(rakes(12, 5)),
    gauge: shifted(rakes(15, 10)),
  };
}

/**
 * The rakes of one cutter.
 *
 * @source (d) look-up by zone, or straight line over the radius
 */
export function rakesAt(
  schedule: RakeSchedule,
  at: {
    readonly zone: ProfileZone | "centre";
    /** Radius of the tip as a share of the hole radius [-]. */
    readonly radiusShare: number;
  },
): Rakes {
  if (schedule.kind === "by zone") return schedule[at.zone === "taper" ? "shoulder" : at.zone];
  const share = Math.min(1, Math.max(0, at.radiusShare));
  const between = (from: number, to: number) => from + share * (to - from);
  return {
    backRake: between(schedule.centre.backRake, schedule.gauge.backRake),
    sideRake: between(schedule.centre.sideRake, schedule.gauge.sideRake),
  };
}

/** Bounds of back rake by zone [rad]. (c) common practice, no source: large bits 10-20, 15-20, 15-25, 20-30 degrees. */
const BACK_RAKE_MOST: Readonly<Record<ProfileZone, number>> = {
  cone: 20 * DEGREE,
  nose: 20 * DEGREE,
  taper: 25 * DEGREE,
  shoulder: 25 * DEGREE,
  gauge: 30 * DEGREE,
};
/** Small bits go down to this in every zone [rad]: (c) common practice, no source, near 10 degrees. */
const BACK_RAKE_LEAST = 10 * DEGREE;
/** Side rake past which an edge leaves its track [rad]: (c) common practice, no source, 0 to 10, in tests to 15 degrees. */
const SIDE_RAKE_MOST = 15 * DEGREE;
/** Angles are cut to about this, so less than it is no remark [rad]: (c) common practice, no source. */
const ANGLE_TOLERANCE = 0.5 * DEGREE;

/** A cutter as its rakes are judged. */
export interface RakedCutter extends Rakes {
  /** Number of the cutter [-]. */
  readonly number: number;
  readonly zone: ProfileZone;
}

/**
 * Remarks on rakes outside what the trade uses for the ground, one for each kind, naming the cutters; without a ground,
 * outside what it uses in any.
 *
 * @source (c) common practice, no source
 */
export function rakeFindings(cutters: readonly RakedCutter[], ground?: RakeGround): Finding[] {
  const least = BACK_RAKE_LEAST + GROUND_SHIFT[ground ?? "soft"];
  const larger = GROUND_SHIFT[ground ?? "hard"];
  const findings: Finding[] = [];
  const remark = (
    code: string,
    found: readonly RakedCutter[],
    message: string,
    of: (cutter: RakedCutter) => number,
    limit: number,
    severity: Finding["severity"] = "caution",
  ) => {
    const [worst] = [...found].sort((a, b) => Math.abs(of(b) - limit) - Math.abs(of(a) - limit));
    if (!worst) return;
    const names = found.map((cutter) => cutter.number).join(", ");
    const where = `cutter ${names}`;
    findings.push({ code, severity, where, message, value: of(worst), limit, unit: "rad", source: commonPractice() });
  };
  const back = (cutter: RakedCutter) => cutter.backRake;
  remark(
    "no-back-rake",
    cutters.filter((cutter) => !(cutter.backRake > 0)),
    "The face does not lean back: its heel drags and the edge chips. Give it back rake.",
    back,
    0,
  );
  remark(
    "back-rake-small",
    cutters.filter((cutter) => cutter.backRake > 0 && cutter.backRake < least - ANGLE_TOLERANCE),
    `Less back rake than is usual in ${groundWords(ground)}: it cuts easily and the edge chips sooner.`,
    back,
    least,
    "note",
  );
  for (const zone of Object.keys(BACK_RAKE_MOST) as ProfileZone[]) {
    const most = BACK_RAKE_MOST[zone] + larger;
    remark(
      "back-rake-large",
      cutters.filter((cutter) => cutter.zone === zone && cutter.backRake > most + ANGLE_TOLERANCE),
      `More back rake than is usual on the ${zone} in ${groundWords(ground)}: it asks for much more weight.`,
      back,
      most,
    );
  }
  remark(
    "side-rake-large",
    cutters.filter((cutter) => Math.abs(cutter.sideRake) > SIDE_RAKE_MOST + ANGLE_TOLERANCE),
    "More side rake than was tried with good results: the face cuts a narrower track.",
    (cutter) => Math.abs(cutter.sideRake),
    SIDE_RAKE_MOST,
  );
  return findings;
}

function groundWords(ground: RakeGround | undefined): string {
  if (ground === undefined) return "any ground";
  return { soft: "soft ground", usual: "mixed ground", hard: "hard, abrasive or broken ground" }[ground];
}
