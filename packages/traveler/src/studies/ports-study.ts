import { type PickedPorts, type PortGoal, pickPorts, type WingSlot, wingAzimuths, wingSlots } from "@bitwright/engine";
import { isLiquid, pressureForBit } from "../stations/flow-station.ts";
import type { Workup } from "../workup.ts";

/** A slot with its name. */
export interface StudiedSlot extends WingSlot {
  /** `slot 1`, from the wing with the least azimuth on in the sense of rotation. */
  readonly name: string;
}

/** Sets of ports for the bit of a job, and the slots they wash. */
export interface PortsStudy {
  readonly goal: PortGoal;
  /** The sets, the best for the goal first; empty where none can be picked. */
  readonly sets: readonly PickedPorts[];
  /** Why there is none, in a sentence. */
  readonly none?: string;
  /** The slots one by one; empty where the wings are not known. */
  readonly slots: readonly StudiedSlot[];
  /** Mean speed of the flow through all slots; absent where the wings are not known [m/s]. */
  readonly slotSpeed?: number;
  /** Pressure that the pump can spend at the bit [Pa]. */
  readonly pressureForBit: number;
  /** Largest port that the body has room for; absent where the wings are not known [m]. */
  readonly largestPort?: number;
}

/** Picks ports for a worked-up job: its pump, its wings, the lumps its pump lets through. */
export function portsStudy(workup: Workup, goal: PortGoal): PortsStudy {
  const { inquiry: traveler, bit, flow: station } = workup;
  const { wings, wingThickness, coreRadius, largestPort, slotArea } = bit.review.body;
  const { holeDiameter } = bit.layout;
  const { fluid, pump } = traveler.inquiry;
  const left = pressureForBit(traveler);
  const wingAngles = wingAzimuths(bit.layout, coreRadius);
  const slots =
    wingAngles.length === 0
      ? []
      : wingSlots({ holeDiameter, wingAngles, wingThickness, coreRadius }).map((slot, k) => ({
          ...slot,
          name: `slot ${k + 1}`,
        }));
  const common = {
    goal,
    slots,
    pressureForBit: left,
    ...(slotArea === undefined || slotArea === 0 ? {} : { slotSpeed: station.flow / slotArea }),
    ...(largestPort === undefined ? {} : { largestPort }),
  };
  if (!isLiquid(traveler)) {
    return {
      ...common,
      sets: [],
      none: `On ${fluid.kind} ports are not picked here: as large as the body has room for.`,
    };
  }
  if (wings === 0)
    return { ...common, sets: [], none: "The wings of this bit are not known, so neither are its slots." };
  const sets = pickPorts({
    goal,
    holeDiameter,
    wings,
    density: fluid.density,
    flow: station.flow,
    pressureForBit: left,
    // Where two wings touch at the core their slot starts further out, where the ports are: no width to hold a lump against.
    slots: slots
      .filter(({ footWidth }) => footWidth > 0)
      .map(({ name, footWidth }) => ({ where: name, width: footWidth })),
    ...(pump.lumpSize === undefined ? {} : { lumpSize: pump.lumpSize }),
    ...(largestPort === undefined ? {} : { largestPort }),
  });
  const none =
    "The body has no room for a port that passes what the pump passes. Fewer or thinner wings, or a finer screen.";
  return { ...common, sets, ...(sets.length === 0 ? { none } : {}) };
}
