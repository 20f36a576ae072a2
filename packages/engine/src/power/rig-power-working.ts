import { commonPractice, derivedFrom, enteredBy, given, type Working, working } from "../quantity/index.ts";
import { USUAL_COMPRESSOR_EFFICIENCY, USUAL_COMPRESSOR_STAGES } from "./compressor-power.ts";
import { ENGINE_OWN_SHARE, PUMP_EFFICIENCY, ROTARY_EFFICIENCY } from "./drive-efficiency.ts";
import { SPECIFIC_CONSUMPTION, USUAL_FUEL_DENSITY } from "./engine-fuel-flow.ts";
import type { BedDrives, BedPower, RigPowerFigures, RigPowerInput } from "./rig-power-state.ts";

const INPUT = "input of the rig";
const PRACTICE = "common practice";

/**
 * How each figure of the rig's power was reached.
 *
 * @source (d) the relations of the room, each naming its own source
 */
export function powerWorking(input: RigPowerInput, figures: RigPowerFigures): Working[] {
  const apart = input.compressor?.ownEngine ? (figures.compressorPower ?? 0) : 0;
  return [
    ...compressorWorking(input, figures),
    ...input.beds.flatMap((bed, at) => bedWorking(input, bed, figures.beds[at], apart)),
    ...holeWorking(input, figures),
  ];
}

function compressorWorking({ compressor }: RigPowerInput, { compressorPower }: RigPowerFigures): Working[] {
  if (!compressor || compressorPower === undefined) return [];
  const inputs = [
    given("q", "delivery as air at the inlet", compressor.freeAirFlow, "m³/s", INPUT),
    given("p", "delivery pressure", compressor.deliveryPressure, "Pa", INPUT),
    given("p_a", "pressure at the inlet", compressor.inletPressure, "Pa", "altitude"),
    given("n", "stages", USUAL_COMPRESSOR_STAGES, "-", PRACTICE),
    given("η", "overall efficiency", USUAL_COMPRESSOR_EFFICIENCY, "-", PRACTICE),
  ];
  const relation = "P = p_a q n k/(k - 1) (r^((k - 1)/(k n)) - 1)/η, r = (p + p_a)/p_a";
  const source = derivedFrom("adiabatic compression in even stages");
  return [working("compressor at full delivery", relation, inputs, compressorPower, "W", source)];
}

/** `apart` is the power of a compressor with an engine of its own, which burns fuel but loads nothing of the rig [W]. */
function bedWorking(input: RigPowerInput, drives: BedDrives, bed: BedPower, apart: number): Working[] {
  const { name, parts } = bed;
  const named = (what: string) => `${what}, ${name}`;
  const loss = commonPractice("efficiency of drives by common practice, no source");
  const turning = working(
    named("engine power for turning"),
    "P = (T + T_d) ω/η",
    [
      given("T", "torque at the bit", drives.drillingTorque, "N·m", `cut, ${name}`),
      given("T_d", "torque of the dragging string", input.draggingTorque, "N·m", "drag and pipe"),
      given("ω", "rotary speed", drives.rotarySpeed, "rad/s", `cut, ${name}`),
      given("η", "efficiency of the rotary drive", ROTARY_EFFICIENCY.mid, "-", PRACTICE),
    ],
    parts.rotaryPower,
    "W",
    loss,
  );
  const feeding = working(
    named("engine power for pushing"),
    "P = F v/η, none where the rig holds back",
    [
      given("F", "largest push", Math.max(0, drives.feedForce), "N", "weight by depth"),
      given("v", "rate", drives.rate, "m/s", `cut, ${name}`),
      given("η", "efficiency of the feed", ROTARY_EFFICIENCY.mid, "-", PRACTICE),
    ],
    parts.feedPower,
    "W",
    loss,
  );
  const load = working(
    named("engine load"),
    "P = P_r + P_p + P_f + P_c + s P_e",
    [
      given("P_r", "turning", parts.rotaryPower, "W", named("engine power for turning")),
      given("P_p", "mud pump", parts.pumpPower, "W", named("engine power for the pump")),
      given("P_f", "pushing", parts.feedPower, "W", named("engine power for pushing")),
      given("P_c", "compressor, where this engine drives it", parts.compressorPower, "W", "compressor"),
      given("s", "the engine's own share of its rated power", ENGINE_OWN_SHARE, "-", PRACTICE),
      given("P_e", "rated power of the engine", input.enginePower, "W", INPUT),
    ],
    bed.enginePower.mid,
    "W",
    derivedFrom("sum of the powers"),
  );
  return [turning, ...pumpWorking(drives, bed), feeding, load, ...fuelWorking(input, drives, bed, apart)];
}

function pumpWorking({ pump }: BedDrives, { name, parts }: BedPower): Working[] {
  if (!pump) return [];
  const inputs = [
    given("p", "pump pressure", pump.pressure, "Pa", `circuit at the end of ${name}`),
    given("Q", "flow", pump.flow, "m³/s", `circuit at the end of ${name}`),
    given("η", "efficiency of pump and drive", PUMP_EFFICIENCY.mid, "-", PRACTICE),
  ];
  const source = commonPractice("efficiency of pump and drive by common practice, no source");
  return [working(`engine power for the pump, ${name}`, "P = p Q/η", inputs, parts.pumpPower, "W", source)];
}

function fuelWorking(
  { fuelFlow: own }: RigPowerInput,
  { rate }: BedDrives,
  { name, fuelFlow, fuelPerLength, enginePower }: BedPower,
  apart: number,
): Working[] {
  const flow =
    own === undefined
      ? working(
          `fuel while drilling, ${name}`,
          "Q = (P + P_c) b/ρ",
          [
            given("P", "load of the rig's engine", enginePower.mid, "W", `engine load, ${name}`),
            given("P_c", "compressor with an engine of its own", apart, "W", "compressor at full delivery"),
            given("b", "fuel for each work at the shaft", SPECIFIC_CONSUMPTION.mid, "kg/J", PRACTICE),
            given("ρ", "density of the fuel", USUAL_FUEL_DENSITY, "kg/m³", PRACTICE),
          ],
          fuelFlow.mid,
          "m³/s",
          commonPractice("fuel for each work by common practice, no source"),
        )
      : working(`fuel while drilling, ${name}`, "Q as given", [ownBurn(own)], own, "m³/s", ownBurnSource);
  if (!fuelPerLength) return [flow];
  const perLength = working(
    `fuel for each length of hole, ${name}`,
    "q = Q/v",
    [given("Q", "fuel", fuelFlow.mid, "m³/s", flow.name), given("v", "rate", rate, "m/s", `cut, ${name}`)],
    fuelPerLength.mid,
    "m³/m",
    derivedFrom("fuel over rate"),
  );
  return [flow, perLength];
}

const ownBurn = (burn: number) => given("Q", "the user's own burn", burn, "m³/s", "inquiry.rig.fuelBurn");
const ownBurnSource = enteredBy("inquiry.rig.fuelBurn");

function holeWorking(input: RigPowerInput, figures: RigPowerFigures): Working[] {
  const { timeOnBottom, fuelVolume, meanFuelFlow } = figures;
  const { handlingTime, hoistingWork, fuelFlow } = input;
  const times = [
    given("t", "time on bottom", timeOnBottom, "s", "lengths over rates"),
    given("t_h", "trips and connections", handlingTime, "s", "prices"),
  ];
  const volume =
    fuelFlow === undefined
      ? working(
          "fuel of the hole",
          "V = Σ Q_i t_i + (s P_e t_h + E/η + 0.2 P_c t) b/ρ",
          [
            ...times,
            given("s P_e", "the engine running along", ENGINE_OWN_SHARE * input.enginePower, "W", PRACTICE),
            given("E", "work of one trip out", hoistingWork, "J", "string"),
            given("P_c", "compressor", figures.compressorPower ?? 0, "W", "compressor"),
          ],
          fuelVolume.mid,
          "m³",
          derivedFrom("sum over the beds, and what handling burns"),
        )
      : working(
          "fuel of the hole",
          "V = Q (t + t_h)",
          [...times, ownBurn(fuelFlow)],
          fuelVolume.mid,
          "m³",
          ownBurnSource,
        );
  const inputs = [given("V", "fuel of the hole", fuelVolume.mid, "m³", "fuel of the hole"), ...times];
  const mean = working(
    "mean fuel over the hole",
    "Q = V/(t + t_h)",
    inputs,
    meanFuelFlow.mid,
    "m³/s",
    derivedFrom("fuel over time"),
  );
  return [volume, mean];
}
