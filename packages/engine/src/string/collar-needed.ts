import { collarForShortfall } from "./collar-for-shortfall.ts";
import { collarLengthNeeded, USABLE_COLLAR_SHARE } from "./collar-length.ts";
import { DRILL_COLLARS } from "./drill-collar-list.ts";
import { hangingWeight } from "./string-make-up.ts";
import type { CollarNeeded, CollarsForWeight, StringStationInput } from "./string-state.ts";
import { weightOnBit } from "./weight-balance.ts";

/**
 * The collar that makes up what rig and string lack at the depth where a bit starts: more of the collars there are, or of the
 * heaviest listed one that leaves a finger's room in the hole. It gives the whole of it only once it is in the hole.
 *
 * Undefined where nothing is lacking, the pull-down is not known, or no collar is heavier than the pipe.
 *
 * @source (d) balance of forces along the string; room around a collar (c) common practice, no source
 */
export function collarNeeded(input: StringStationInput): CollarNeeded | undefined {
  const { makeUp, fluidDensity, targetWeight, topHeadWeight = 0, drag = 0, depth, limits } = input;
  const pullDown = limits?.pullDownRating;
  if (pullDown === undefined) return undefined;
  const length = input.startDepth ?? Math.min(depth, makeUp.pipe.jointLength);
  const resting = { hangingWeight: hangingWeight({ makeUp, fluidDensity, length }), topHeadWeight, drag };
  const missingWeight = targetWeight - weightOnBit({ pullDown, holdBack: 0, ...resting });
  const pipeWeight = makeUp.pipe.linearWeight;
  const collarWeight = collarWeightFor(input);
  if (missingWeight <= 0 || collarWeight === undefined || collarWeight <= pipeWeight) return undefined;
  return {
    collarWeight,
    collarLength: collarForShortfall({ missingWeight, collarWeight, pipeWeight, fluidDensity }),
    missingWeight,
  };
}

/**
 * Collars of the kind there are, or of the heaviest listed one for the hole, that carry the whole weight and keep the neutral
 * point in them, so that the pipe hangs straight; undefined where none goes into the hole or no weight is wanted.
 *
 * @source (a) Lyons, Carter & Lapeyrouse 2012, with 0.85 of the collars' weight used
 */
export function collarsForWeight(input: StringStationInput): CollarsForWeight | undefined {
  const { fluidDensity, targetWeight: weight } = input;
  const collarWeight = collarWeightFor(input);
  if (collarWeight === undefined || !(weight > 0)) return undefined;
  const usableShare = USABLE_COLLAR_SHARE.mid;
  return {
    collarWeight,
    collarLength: collarLengthNeeded({ weight, linearWeight: collarWeight, fluidDensity, usableShare }),
  };
}

/** Weight of a length of the collars there are, or of the heaviest listed one with room in the hole [N/m]. */
function collarWeightFor({ makeUp, bitDiameter }: StringStationInput): number | undefined {
  return makeUp.collars?.linearWeight ?? heaviestFor(bitDiameter);
}

/**
 * Room that a collar leaves to the wall of the hole, both sides together, an inch [m].
 *
 * @source (c) common practice, no source
 */
const ROOM_AROUND_COLLAR = 0.0254;

function heaviestFor(bitDiameter: number): number | undefined {
  const fitting = DRILL_COLLARS.filter(({ outerDiameter }) => outerDiameter <= bitDiameter - ROOM_AROUND_COLLAR);
  return fitting.length === 0 ? undefined : Math.max(...fitting.map(({ linearWeight }) => linearWeight));
}
