import { hydraulicPower } from "../flow/index.ts";
import { type Band, exactBand, gravestFirst, mapBand } from "../quantity/index.ts";
import { rotaryPower } from "../string/index.ts";
import { compressorPower, USUAL_COMPRESSOR_EFFICIENCY, USUAL_COMPRESSOR_STAGES } from "./compressor-power.ts";
import {
  COMPRESSOR_CONNECTION_FACTOR,
  ENGINE_OWN_SHARE,
  PUMP_EFFICIENCY,
  ROTARY_EFFICIENCY,
} from "./drive-efficiency.ts";
import { engineFuelFlow, SPECIFIC_CONSUMPTION, USUAL_FUEL_DENSITY } from "./engine-fuel-flow.ts";
import { powerFindings } from "./rig-power-findings.ts";
import type { BedDrives, BedPower, PumpAtWork, RigPower, RigPowerFigures, RigPowerInput } from "./rig-power-state.ts";
import { powerWorking } from "./rig-power-working.ts";

/**
 * What the rig's engine gives in each bed, what it burns there and for the whole hole.
 *
 * The load is T ω and F v over the efficiency of the drives, p Q over that of pump and drive, the compressor at full
 * delivery, and the engine's own share. The band is that of the drives and of the fuel for each work; that of the ground is
 * left out.
 *
 * @throws RangeError when a figure is out of range
 * @source (d) sum of the powers; each part names its own source in the workings
 */
export function rigPower(input: RigPowerInput): RigPower {
  const figures = rigPowerFigures(input);
  return {
    ...figures,
    findings: gravestFirst(powerFindings(input, figures)),
    working: powerWorking(input, figures),
  };
}

function rigPowerFigures(input: RigPowerInput): RigPowerFigures {
  const { compressor, fuelFlow: own } = input;
  const shaft =
    compressor &&
    compressorPower({
      ...compressor,
      stageCount: USUAL_COMPRESSOR_STAGES,
      efficiency: USUAL_COMPRESSOR_EFFICIENCY,
    });
  const apart = compressor?.ownEngine ? (shaft ?? 0) : 0;
  const beds = input.beds.map((bed) => bedPower(input, bed, { shaft: shaft ?? 0, apart }));
  const timeOnBottom = beds.reduce((sum, bed) => sum + (bed.timeOnBottom ?? 0), 0);
  const time = timeOnBottom + input.handlingTime;
  const reckoned = over((side) => holeFuel(input, { beds, shaft: shaft ?? 0, apart, timeOnBottom }, side));
  const fuelVolume = own === undefined ? reckoned : exactBand(own * time);
  const perTime = (volume: number) => (time > 0 ? volume / time : 0);
  return {
    beds,
    ...(shaft === undefined ? {} : { compressorPower: shaft }),
    timeOnBottom,
    fuelVolume,
    meanFuelFlow: mapBand(fuelVolume, perTime),
    reckonedFuelFlow: mapBand(reckoned, perTime),
  };
}

/** Power at the compressor's shaft, and what of it is not on the rig's engine; none without a compressor. */
interface CompressorLoad {
  /** At the shaft [W]. */
  readonly shaft: number;
  /** On an engine of its own [W]. */
  readonly apart: number;
}

type Side = keyof Band;

/** A band worked out side by side; the high side is that of most power and most fuel. */
function over(work: (side: Side) => number): Band {
  return { low: work("low"), mid: work("mid"), high: work("high") };
}

/** The efficiency that goes with a side of the load: the best drives take the least power. */
const OTHER_SIDE: Readonly<Record<Side, Side>> = { low: "high", mid: "mid", high: "low" };

/** Hydraulic power that a pump gives; none where nothing moves [W]. */
function pumpedPower(pump: PumpAtWork | undefined): number {
  if (!pump || !(pump.flow > 0 && pump.pressure > 0)) return 0;
  return hydraulicPower({ flow: pump.flow, pressureDrop: pump.pressure });
}

function bedPower(input: RigPowerInput, bed: BedDrives, { shaft, apart }: CompressorLoad): BedPower {
  const { enginePower: rated, fuelFlow: own, draggingTorque } = input;
  const { rotarySpeed, rate, length } = bed;
  const turning = rotaryPower({ torque: bed.drillingTorque + draggingTorque, rotarySpeed });
  const pushing = Math.max(0, bed.feedForce) * rate;
  const pumping = pumpedPower(bed.pump);
  const parts = (side: Side) => ({
    rotaryPower: turning / ROTARY_EFFICIENCY[OTHER_SIDE[side]],
    pumpPower: pumping / PUMP_EFFICIENCY[OTHER_SIDE[side]],
    feedPower: pushing / ROTARY_EFFICIENCY[OTHER_SIDE[side]],
    compressorPower: shaft - apart,
    ownPower: ENGINE_OWN_SHARE * rated,
  });
  const load = over((side) => Object.values(parts(side)).reduce((sum, part) => sum + part, 0));
  const fuelFlow = own === undefined ? over((side) => burnt(load[side] + apart, side)) : exactBand(own);
  return {
    name: bed.name,
    parts: parts("mid"),
    enginePower: load,
    engineShare: mapBand(load, (power) => power / rated),
    fuelFlow,
    ...(rate > 0 ? { fuelPerLength: mapBand(fuelFlow, (flow) => flow / rate), timeOnBottom: length / rate } : {}),
  };
}

function burnt(enginePower: number, side: Side): number {
  return engineFuelFlow({
    enginePower,
    specificConsumption: SPECIFIC_CONSUMPTION[side],
    fuelDensity: USUAL_FUEL_DENSITY,
  });
}

/** Fuel of the hole: drilling, the engine running along while pipe is handled, one trip out, the compressor in connections. */
function holeFuel(
  { enginePower, handlingTime, hoistingWork }: RigPowerInput,
  { beds, shaft, apart, timeOnBottom }: CompressorLoad & Pick<RigPowerFigures, "beds" | "timeOnBottom">,
  side: Side,
): number {
  const drilling = beds.reduce((sum, bed) => sum + (bed.enginePower[side] + apart) * (bed.timeOnBottom ?? 0), 0);
  const idling = ENGINE_OWN_SHARE * enginePower * handlingTime;
  const hoisting = hoistingWork / ROTARY_EFFICIENCY[OTHER_SIDE[side]];
  const blowing = (COMPRESSOR_CONNECTION_FACTOR - 1) * shaft * timeOnBottom;
  return burnt(drilling + idling + hoisting + blowing, side);
}
