import { contactTemperatures, type HeatConditions } from "./cutter-heat.ts";
import type { BitInRock, DrilledState } from "./drilled-state.ts";

/** What one cutter takes and bears in steady drilling. */
export interface CutterLoad {
  /** Number of the cutter in the layout, from 1 [-]. */
  readonly cutter: number;
  /** Area of cut across travel [m²]. */
  readonly areaOfCut: number;
  /** Rock volume of one revolution [m³]. */
  readonly volume: number;
  /** Share of the volume of all cutters [-]. */
  readonly volumeShare: number;
  /** Greatest depth of cut, normal to the edge [m]. */
  readonly deepest: number;
  /** Mean depth over the width of edge in the rock, 0 where none is [m]. */
  readonly meanDepth: number;
  /** Normal load that cuts [N]. */
  readonly cuttingNormal: number;
  /** Normal load on chamfer and flat that only presses [N]. */
  readonly contactNormal: number;
  /** Part of the weight on this cutter [N]. */
  readonly axial: number;
  /** Drag against travel [N]. */
  readonly tangential: number;
  /** Force away from the bit axis; inward is negative [N]. */
  readonly radial: number;
  /** Torque of this cutter about the bit axis [N·m]. */
  readonly torque: number;
  /** Rotary power taken by this cutter [W]. */
  readonly power: number;
  /** Mean temperature of the rubbing surface, where the heat conditions are known [K]. */
  readonly contactTemperature?: number;
}

/**
 * The loads of a state, cutter by cutter.
 *
 * @throws RangeError when a property of the heat conditions is not positive
 * @source (b) Detournay & Defourny 1992, Int. J. Rock Mech. Min. Sci. 29:13-23, recalled, summed over the traced edges
 */
export function cutterLoads(
  { trace, response }: BitInRock,
  { engagement, loads }: DrilledState,
  {
    rotarySpeed,
    heat,
  }: {
    /** Rotary speed of the bit [rad/s]. */
    readonly rotarySpeed: number;
    readonly heat?: HeatConditions;
  },
): CutterLoad[] {
  const temperatures = heat && contactTemperatures(loads, { response, rotarySpeed, heat });
  const wholeVolume = engagement.volume.reduce((total, volume) => total + volume, 0);
  return trace.layout.cutters.map((_, i) => {
    const engagedWidth = loads.engagedWidth[i];
    return {
      cutter: i + 1,
      areaOfCut: engagement.area[i],
      volume: engagement.volume[i],
      volumeShare: wholeVolume > 0 ? engagement.volume[i] / wholeVolume : 0,
      deepest: loads.deepest[i],
      // The area of cut is depth normal to the edge times width along it, so their quotient is the mean depth.
      meanDepth: engagedWidth > 0 ? engagement.area[i] / engagedWidth : 0,
      cuttingNormal: loads.cuttingNormal[i],
      contactNormal: loads.contactNormal[i],
      axial: loads.cuttingAxial[i] + loads.contactAxial[i],
      tangential: loads.tangential[i],
      radial: loads.radial[i],
      torque: loads.torque[i],
      power: loads.torque[i] * rotarySpeed,
      ...(temperatures ? { contactTemperature: temperatures[i] } : {}),
    };
  });
}
