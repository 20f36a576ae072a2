import { lengthThatWeighs, type ReturnAtDepth } from "@bitwright/engine";
import { chipSizeOf, returnAt } from "../stations/return-by-bed.ts";
import { stringOf } from "../stations/string-of.ts";
import type { Workup } from "../workup.ts";

type JointInBed = NonNullable<Workup["string"]>["joints"][number];

/** One joint of the way down: what the rig does, and what the flow cleans. */
export interface JointAtDepth extends JointInBed {
  /** Height of the neutral point above the bit; absent where the whole string is pressed [m]. */
  readonly neutralPoint?: number;
  /** Rate of the bit in the bed [m/s]. */
  readonly rate: number;
  /** The return with the bit there; absent on air, mist and foam. */
  readonly cleaning?: ReturnAtDepth;
}

/** Weight and cleaning joint by joint. */
export interface DepthStudy {
  readonly joints: readonly JointAtDepth[];
  /** Findings of string and flow. */
  readonly findings: Workup["findings"];
}

/** Joint by joint over the stretch that the bit drills: weight, feed and gauge, and what the flow cleans there. */
export function depthStudy({ inquiry: traveler, cut, string, flow, findings }: Workup): DepthStudy {
  const { inquiry } = traveler;
  const makeUp = stringOf(inquiry);
  const joints = (string?.joints ?? []).flatMap((joint): JointAtDepth[] => {
    const bed = cut.beds.find((one) => joint.depth > one.bed.top && joint.depth <= one.bed.bottom);
    if (!bed) return [];
    const above = lengthThatWeighs({ makeUp, fluidDensity: inquiry.fluid.density, weight: joint.targetWeight });
    const cleaning = returnAt(traveler, { depth: joint.depth, chipSize: chipSizeOf(bed), flow: flow.flow });
    return [
      {
        ...joint,
        ...(above > joint.depth ? {} : { neutralPoint: above }),
        rate: bed.drilling.rate,
        ...(cleaning ? { cleaning } : {}),
      },
    ];
  });
  return { joints, findings: findings.filter(({ station }) => station === "string" || station === "flow") };
}
