import {
  atmosphericPressure,
  type CompressorAtWork,
  circuitPressure,
  commonPractice,
  type Finding,
  hoistingWork,
  operatingPoint,
  type PumpAtWork,
  type RigPower,
  rigPower,
} from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";
import { circuitOf, circuitThrough } from "./circuit-of.ts";
import type { BedCut, CutStation } from "./cut-station.ts";
import type { FlowStation } from "./flow-station.ts";
import { stringDrag, stringOf } from "./string-of.ts";
import type { StringStation } from "./string-station.ts";

/** What the rig's engine gives and burns. */
export interface PowerStation extends RigPower {
  /** Rated power of the rig's engine [W]. */
  readonly ratedPower: number;
  /** What the user burns, where they said so [m³/s]. */
  readonly givenFuelFlow?: number;
}

/** The stations that the power is worked out from. */
export interface PowerQuestion {
  readonly cut: CutStation;
  readonly flow: FlowStation;
  readonly string?: StringStation;
}

/** Works the power up: bed by bed at its running point, the fuel there and for the hole; nothing where the bit drills nothing. */
export function powerStation(traveler: ResolvedTraveler, question: PowerQuestion): PowerStation | undefined {
  const { inquiry, prices } = traveler;
  const { rig, bitHole, pipe, fluid } = inquiry;
  const { cut, flow, string } = question;
  if (cut.beds.length === 0) return undefined;
  const compressor = flow.circuit ? undefined : compressorOf(traveler);
  const drilled = cut.beds.reduce((sum, { bed }) => sum + bed.bottom - bed.top, 0);
  const power = rigPower({
    beds: cut.beds.map((bed) => ({
      name: bed.bed.name,
      length: bed.bed.bottom - bed.bed.top,
      rate: bed.drilling.rate,
      drillingTorque: bed.drilling.bit.torque,
      rotarySpeed: bed.rotarySpeed,
      feedForce: largestPush(bed, string),
      ...pumpIn(traveler, bed, flow),
    })),
    enginePower: rig.enginePower,
    ...(rig.fuelBurn === undefined ? {} : { fuelFlow: rig.fuelBurn }),
    ...(compressor ? { compressor } : {}),
    draggingTorque: stringDrag(inquiry),
    hoistingWork: hoistingWork({
      makeUp: stringOf(inquiry),
      fluidDensity: fluid.density,
      length: bitHole.to,
      topHeadWeight: rig.topHeadWeight,
      drag: rig.drag,
    }),
    handlingTime: prices.tripTime + (prices.connectionTime * drilled) / pipe.jointLength,
  });
  const findings = [...power.findings, ...(flow.circuit || compressor ? [] : [noCompressor(fluid.kind)])];
  const given = rig.fuelBurn === undefined ? {} : { givenFuelFlow: rig.fuelBurn };
  return { ...power, findings, ratedPower: rig.enginePower, ...given };
}

function largestPush({ bed }: BedCut, string: StringStation | undefined): number {
  const joints = (string?.joints ?? []).filter(({ depth }) => depth > bed.top && depth <= bed.bottom);
  return Math.max(0, ...joints.map(({ feedForce }) => feedForce));
}

/** What the mud pump gives with the bit at the end of a bed; nothing on air, mist and foam. */
function pumpIn(traveler: ResolvedTraveler, { bed, drilling }: BedCut, flow: FlowStation): { pump?: PumpAtWork } {
  const gear = flow.circuit ? circuitOf(traveler, bed.bottom) : undefined;
  if (!gear) return {};
  const way = circuitThrough(gear, { ports: flow.ports, stickyGround: false, chipSize: drilling.advance });
  const { flow: given, pressure } = operatingPoint({
    pump: gear.pump,
    circuitPressure: (asked) => circuitPressure(way, asked),
  });
  return { pump: { flow: given, pressure } };
}

function compressorOf({ inquiry }: ResolvedTraveler): CompressorAtWork | undefined {
  const { compressor, altitude } = inquiry;
  if (!compressor) return undefined;
  const { flow, pressure, ownEngine, enginePower } = compressor;
  return {
    freeAirFlow: flow,
    deliveryPressure: pressure,
    inletPressure: atmosphericPressure(altitude),
    ownEngine,
    ...(enginePower === undefined ? {} : { enginePower }),
  };
}

function noCompressor(medium: string): Finding {
  return {
    code: "power.compressor-unknown",
    severity: "note",
    where: "inquiry.compressor",
    message: `The hole is blown with ${medium} and no compressor is named: its power, which is most of what such a hole burns, is left out of load and fuel.`,
    source: commonPractice(),
  };
}
