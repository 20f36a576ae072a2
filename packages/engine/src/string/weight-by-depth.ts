import { requirePositive } from "../quantity/index.ts";
import { type HangingString, hangingWeight } from "./string-make-up.ts";
import { type FeedGauge, feedForce, feedGaugeReading, weightOnBit } from "./weight-balance.ts";

/** What the rig can push, lift and show. */
export interface FeedLimits {
  /** Largest pull-down [N]. */
  readonly pullDownRating?: number;
  /** Largest pull of the hoist [N]. */
  readonly hoistRating?: number;
  /** Largest load that the topmost joint may carry, pushed or pulled [N]. */
  readonly topJointRating?: number;
  readonly gauge?: FeedGauge;
}

/** What `weightByDepth` needs. */
export interface WeightByDepthInput extends HangingString {
  /** Depth of the hole [m]. */
  readonly depth: number;
  /** Weight wanted on the bit [N]. */
  readonly targetWeight: number;
  /** Weight of top head or kelly that rests on the string; 0 where not given [N]. */
  readonly topHeadWeight?: number;
  /** Drag of the hole wall, against going down and coming up; 0 where not given [N]. */
  readonly drag?: number;
  readonly limits?: FeedLimits;
}

/** Whether a joint can be drilled as wanted, and if not, what fails. */
export type JointVerdict = "within" | "pull-down short" | "hoist short" | "top joint overloaded";

/** One joint of the way down. */
export interface JointRow {
  /** Number of the joint from the top of the hole, from 1 [-]. */
  readonly joint: number;
  /** Depth of the bit when the joint is drilled down [m]. */
  readonly depth: number;
  /** Weight of the string in fluid, this joint included [N]. */
  readonly hangingWeight: number;
  /** Feed force, pull-down positive, hold-back negative [N]. */
  readonly feedForce: number;
  /** Reading of the feed gauge for it, where the gauge's factor is known [Pa]. */
  readonly gaugeReading?: number;
  /** Most weight the rig can put on the bit here, where its pull-down is known [N]. */
  readonly mostWeight?: number;
  readonly verdict: JointVerdict;
}

/**
 * Feed force for a wanted weight on bit, joint by joint down to the depth.
 *
 * Each row is its joint drilled down, the whole string in the hole and in fluid. While a joint still stands above ground it
 * weighs as in air: more by 1 - BF of it, an eighth in water and more in heavier mud.
 *
 * @throws RangeError when a length or weight is out of range
 * @source (d) balance of forces along the string at each joint
 */
export function weightByDepth(input: WeightByDepthInput): JointRow[] {
  const { makeUp, depth } = input;
  requirePositive({ depth, jointLength: makeUp.pipe.jointLength });
  const joints = Math.ceil(depth / makeUp.pipe.jointLength - 1e-9);
  return Array.from({ length: joints }, (_, index) => {
    return jointRow(input, index + 1, Math.min(depth, (index + 1) * makeUp.pipe.jointLength));
  });
}

function jointRow(input: WeightByDepthInput, joint: number, depth: number): JointRow {
  const { makeUp, fluidDensity, targetWeight, topHeadWeight = 0, drag = 0, limits = {} } = input;
  const weight = hangingWeight({ makeUp, fluidDensity, length: depth });
  const resting = { hangingWeight: weight, topHeadWeight, drag };
  const feed = feedForce({ targetWeight, ...resting });
  const { gauge, pullDownRating } = limits;
  return {
    joint,
    depth,
    hangingWeight: weight,
    feedForce: feed,
    ...(gauge ? { gaugeReading: feedGaugeReading({ feedForce: feed, ...gauge }) } : {}),
    ...(pullDownRating === undefined
      ? {}
      : { mostWeight: Math.max(0, weightOnBit({ pullDown: pullDownRating, holdBack: 0, ...resting })) }),
    verdict: verdict(limits, feed, weight + topHeadWeight + drag),
  };
}

/** The hoist has to lift the string off bottom against drag, which is more than it ever holds back while drilling. */
function verdict(limits: FeedLimits, feed: number, lift: number): JointVerdict {
  const { pullDownRating, hoistRating, topJointRating } = limits;
  if (topJointRating !== undefined && Math.max(feed, lift) > topJointRating) return "top joint overloaded";
  if (hoistRating !== undefined && lift > hoistRating) return "hoist short";
  if (pullDownRating !== undefined && feed > pullDownRating) return "pull-down short";
  return "within";
}
