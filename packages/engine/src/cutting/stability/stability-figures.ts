import type { RockResponse } from "../../ground/index.ts";
import type { Finding, Working } from "../../quantity/index.ts";
import type { EdgeTrace } from "../edge-trace.ts";
import type { SpeedWindow } from "../running-map-best.ts";
import type { BedCrossing } from "./bed-crossing.ts";
import type { BedLoads } from "./bed-loads.ts";
import type { Imbalance } from "./imbalance.ts";
import type { March } from "./march-input.ts";
import type { LengthsInStep } from "./resonance.ts";
import type { BitSlopes, ScaledBit } from "./scaled-bit.ts";
import type { StringMode, StringSection } from "./string-mode.ts";
import type { WingLands } from "./wing-lands.ts";
import type { FirstRub, WingLoads } from "./wing-rubbing.ts";

/** A bed by its name. */
export interface NamedBed {
  readonly name: string;
  readonly response: RockResponse;
}

/** A boundary to look at, in the order in which the bit comes to it. */
export interface CrossingToReview {
  readonly from: NamedBed;
  readonly to: NamedBed;
  /** Weight that is held across it: that of the first bed where the driller does not ease it [N]. */
  readonly weight: number;
}

/** What the stability of a bit is reviewed from. */
export interface StabilityInput {
  readonly trace: EdgeTrace;
  /** The bed being drilled. */
  readonly bed: NamedBed;
  /** Weight on bit [N]. */
  readonly weight: number;
  /** Rotary speed [rad/s]. */
  readonly rotarySpeed: number;
  /** Boundaries to see the bit across: from the bed above, into the hard bands of this one. */
  readonly crossings?: readonly CrossingToReview[];
  /** Dip of the beds from level [rad]. */
  readonly dipAngle?: number;
  /** What the wings need to be looked at for rubbing. */
  readonly body?: {
    /** Height of each cutter's tip over its wing along the profile normal, in the order of the layout [m]. */
    readonly exposure: readonly number[];
    /** Thickness of a wing along travel [m]. */
    readonly wingThickness: number;
  };
  /** Pipe and collars, for self-excitation and resonance. */
  readonly string?: {
    /** From the bit up. */
    readonly sections: readonly StringSection[];
    /** The whole string as the bed is drilled; as long as its sections where not given. */
    readonly lengths?: {
      /** As the bit comes into the bed [m]. */
      readonly shortest: number;
      /** As it leaves the bed [m]. */
      readonly longest: number;
    };
    /** Mass of the top head that rides on the string; none where not given [kg]. */
    readonly topHeadMass?: number;
    /** ξ, damping of the twist as a share of critical [-]. */
    readonly twistDamping?: number;
  };
  /** Diameter of the hole as drilled less that of the bit [m]. */
  readonly gaugeClearance?: number;
}

/** A boundary the bit goes across. */
export interface ReviewedCrossing {
  readonly from: string;
  readonly to: string;
  /** Weight held across it [N]. */
  readonly weight: number;
  /** Whether the bed it goes into is the harder one. */
  readonly intoHarder: boolean;
  readonly crossing: BedCrossing;
}

/** What the wings do at this weight. */
export interface ReviewedRubbing {
  readonly lands: WingLands;
  /** Where each wing begins to rub, the earliest first. */
  readonly first: readonly FirstRub[];
  /** What the wings carry at the advance of the cutters alone. */
  readonly wings: WingLoads;
}

/** What the string does with the bit. */
export interface ReviewedString {
  readonly mode: StringMode;
  readonly slopes: BitSlopes;
  readonly scaled: ScaledBit;
  /** Mass of string and top head that moves with the bit [kg]. */
  readonly mass: number;
  /** Rotary speed under which the bit bounces on its own cut, by the linear limit [rad/s]. */
  readonly axialLimitSpeed: number;
  /**
   * Whether the string is so short that a feed which holds its top still keeps the bit from bouncing: its own stretch
   * swings faster than the bit would on its own cut. The equations speak of a top under constant force.
   */
  readonly feedHolds: boolean;
  /**
   * Damping of the twist that steady drilling needs, as a share of critical; absent under the axial limit, where the bit
   * bounces on its own cut whatever the twist does [-].
   */
  readonly neededDamping?: number;
  /** Damping of the twist that was counted on, as a share of critical [-]. */
  readonly twistDamping: number;
  /** What becomes of the bit at this weight and speed. */
  readonly march: March;
  /** Speeds in step with the string's own swing. */
  readonly avoid: readonly SpeedWindow[];
  /** Lengths of the string at which the speed of the run is in step with it. */
  readonly inStep: readonly LengthsInStep[];
}

/** What may be expected of a backward whirl. */
export interface ReviewedWhirl {
  /** Lobes of the hole bottom, for the first three patterns [-]. */
  readonly lobes: readonly number[];
  /** Speed of an ideal backward rolling, against the sense of rotation; absent without a clearance [rad/s]. */
  readonly whirlSpeed?: number;
}

/** How steadily a bit drills one bed, and what it meets at its boundaries. */
export interface StabilityFigures {
  /** Advance per revolution, cutters alone [m]. */
  readonly advance: number;
  readonly loads: BedLoads;
  readonly imbalance: Imbalance;
  readonly crossings: readonly ReviewedCrossing[];
  readonly rubbing?: ReviewedRubbing;
  readonly string?: ReviewedString;
  readonly whirl?: ReviewedWhirl;
}

/** The figures with their remarks and workings. */
export interface StabilityReview extends StabilityFigures {
  /** Remarks on the bit in the bed. */
  readonly findings: readonly Finding[];
  /** Remarks on the boundaries, each with its place. */
  readonly boundaryFindings: readonly Finding[];
  readonly working: readonly Working[];
}
