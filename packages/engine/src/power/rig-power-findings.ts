import { commonPractice, derivedFrom, type Finding } from "../quantity/index.ts";
import { FULL_ENGINE_SHARE } from "./drive-efficiency.ts";
import type { BedPower, RigPowerFigures, RigPowerInput } from "./rig-power-state.ts";

const LOAD = derivedFrom("powers of rotary, pump and feed over the efficiency of their drives");

/**
 * What an engineer would remark on the load of the engines.
 *
 * @source (d) load against rating; customs marked as such
 */
export function powerFindings(input: RigPowerInput, figures: RigPowerFigures): Finding[] {
  return [
    ...figures.beds.flatMap((bed) => engineFindings(input, bed)),
    ...compressorFindings(input, figures),
    ...fuelFindings(input, figures),
  ];
}

function engineFindings({ enginePower: limit }: RigPowerInput, { name, enginePower }: BedPower): Finding[] {
  const held = { where: `engine, in ${name}`, value: enginePower.mid, limit, unit: "W" };
  if (enginePower.mid > limit) {
    const message =
      "Turning, pumping or blowing, and the engine's own needs ask for more than it is rated for: it drags down, and rotary or pump stall. Ease weight or speed, pump less, or a larger engine.";
    return [{ ...held, code: "power.engine-short", severity: "caution", message, source: LOAD }];
  }
  if (enginePower.high > limit) {
    const message =
      "The engine just carries this bed with drives in good order; worn or hot ones lose more and it drags down. Watch its speed.";
    return [{ ...held, code: "power.engine-doubtful", severity: "note", message, source: commonPractice() }];
  }
  if (enginePower.mid > FULL_ENGINE_SHARE * limit) {
    const message = "The engine has little left for a hard streak or a tight spot. Watch its speed.";
    return [{ ...held, code: "power.engine-near-full", severity: "note", message, source: commonPractice() }];
  }
  return [];
}

function compressorFindings({ compressor }: RigPowerInput, { compressorPower }: RigPowerFigures): Finding[] {
  const rated = compressor?.enginePower;
  if (!compressor?.ownEngine || rated === undefined || compressorPower === undefined || compressorPower <= rated)
    return [];
  return [
    {
      code: "power.compressor-engine-short",
      severity: "caution",
      where: "compressor",
      message:
        "At full delivery the compressor takes more than its engine is rated for: it gives less air or less pressure than it says.",
      value: compressorPower,
      limit: rated,
      unit: "W",
      source: derivedFrom("adiabatic compression in two stages, overall efficiency by common practice"),
    },
  ];
}

/** How many times the burn given and that of the load may part before it is remarked on [-]; (c) no source. */
const BURN_APART = 2;

function fuelFindings(input: RigPowerInput, figures: RigPowerFigures): Finding[] {
  const { fuelFlow } = input;
  const reckoned = figures.reckonedFuelFlow.mid;
  if (fuelFlow === undefined || !(reckoned > 0)) return [];
  if (fuelFlow <= BURN_APART * reckoned && fuelFlow >= reckoned / BURN_APART) return [];
  return [
    {
      code: "power.burn-apart",
      severity: "note",
      where: "inquiry.rig.fuelBurn",
      message:
        "The burn that was given is far from what the load asks for; as given it is worked with. An engine that idles much, a second engine or a compressor that was not named would explain more of it.",
      value: fuelFlow,
      limit: reckoned,
      unit: "m³/s",
      source: derivedFrom("load of the engine and 0.36 lb of fuel for each horsepower and hour"),
    },
  ];
}
