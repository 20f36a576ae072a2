import { derivedFrom, given, readIn, type Working, type WorkingInput } from "../quantity/index.ts";
import { STEEL_DENSITY } from "./plain-end-weight.ts";
import { motionWorking } from "./string-motion-working.ts";
import type { StringFigures, StringStationInput } from "./string-state.ts";
import type { JointRow } from "./weight-by-depth.ts";

/**
 * How each figure of a string was reached.
 *
 * @source (d) the relations of the string, each naming its own source
 */
export function stringWorking(input: StringStationInput, figures: StringFigures): Working[] {
  return [
    {
      name: "buoyancy factor",
      relation: "BF = 1 - ρ/ρ_steel",
      inputs: [
        given("ρ", "density of the fluid", input.fluidDensity, "kg/m³", INPUT),
        given("ρ_steel", "density of steel", STEEL_DENSITY, "kg/m³", "Lyons, Carter & Lapeyrouse 2012"),
      ],
      value: figures.buoyancyFactor,
      unit: "-",
      source: readIn("Lyons, Carter & Lapeyrouse 2012, p. 24"),
    },
    ...figures.rows.flatMap((row) => jointWorking(input, figures, row)),
    ...depthWorking(input, figures),
    ...torqueWorking(input, figures),
    ...motionWorking(input, figures),
  ];
}

const INPUT = "input of the string";
const BALANCE = derivedFrom("balance of forces along the string");

function buoyancy({ buoyancyFactor }: StringFigures): WorkingInput {
  return given("BF", "buoyancy factor", buoyancyFactor, "-", "buoyancy factor");
}

function target({ targetWeight }: StringStationInput): WorkingInput {
  return given("W", "weight wanted on the bit", targetWeight, "N", INPUT);
}

function restingInputs({ topHeadWeight = 0, drag = 0 }: StringStationInput): WorkingInput[] {
  return [given("W_h", "top head or kelly", topHeadWeight, "N", INPUT), given("D", "drag", drag, "N", INPUT)];
}

function linearWeights({ makeUp }: StringStationInput): WorkingInput[] {
  return [
    given("w_c", "weight of collars for each length", makeUp.collars?.linearWeight ?? 0, "N/m", INPUT),
    given("w_p", "weight of pipe for each length", makeUp.pipe.linearWeight, "N/m", INPUT),
  ];
}

function jointWorking(input: StringStationInput, figures: StringFigures, row: JointRow): Working[] {
  const collarLength = Math.min(row.depth, input.makeUp.collars?.length ?? 0);
  const hanging = `hanging weight, joint ${row.joint}`;
  const feed = `feed force, joint ${row.joint}`;
  const workings: Working[] = [
    {
      name: hanging,
      relation: "W_s = BF (w_c L_c + w_p L_p)",
      inputs: [
        buoyancy(figures),
        ...linearWeights(input),
        given("L_c", "collars in the hole", collarLength, "m", INPUT),
        given("L_p", "pipe in the hole", row.depth - collarLength, "m", INPUT),
      ],
      value: row.hangingWeight,
      unit: "N",
      source: readIn("Lyons, Carter & Lapeyrouse 2012, p. 24"),
    },
    {
      name: feed,
      relation: "F = W - W_s - W_h + D (pull-down above zero, hold-back below)",
      inputs: [target(input), given("W_s", "hanging weight", row.hangingWeight, "N", hanging), ...restingInputs(input)],
      value: row.feedForce,
      unit: "N",
      source: BALANCE,
    },
  ];
  const gauge = input.limits?.gauge;
  if (gauge && row.gaugeReading !== undefined) {
    const { gaugeForceFactor, holdBackGaugeForceFactor = gaugeForceFactor } = gauge;
    const factor = row.feedForce < 0 ? holdBackGaugeForceFactor : gaugeForceFactor;
    workings.push({
      name: `feed gauge, joint ${row.joint}`,
      relation: "p = p₀ + |F|/k",
      inputs: [
        given("F", "feed force", row.feedForce, "N", feed),
        given("k", "force for each unit of gauge pressure", factor, "N/Pa", INPUT),
        given("p₀", "reading that just moves the empty feed", gauge.zeroReading ?? 0, "Pa", INPUT),
      ],
      value: row.gaugeReading,
      unit: "Pa",
      source: derivedFrom("the gauge's force factor"),
    });
  }
  return workings;
}

function depthWorking(input: StringStationInput, figures: StringFigures): Working[] {
  const collars = given("L_c", "length of collars", input.makeUp.collars?.length ?? 0, "m", INPUT);
  const workings: Working[] = [
    {
      name: "depth where pushing turns into holding back",
      relation: "BF (w_c L_c + w_p L_p) + W_h - D = W, solved for L_c + L_p",
      inputs: [target(input), buoyancy(figures), ...linearWeights(input), collars, ...restingInputs(input)],
      value: figures.balanceDepth,
      unit: "m",
      source: BALANCE,
    },
    {
      name: "neutral point above the bit",
      relation: "BF (w_c L_c + w_p L_p) = W, solved for L_c + L_p",
      inputs: [target(input), buoyancy(figures), ...linearWeights(input), collars],
      value: figures.neutralPoint.aboveBit,
      unit: "m",
      source: BALANCE,
    },
  ];
  const pullDown = input.limits?.pullDownRating;
  if (figures.fullWeightDepth !== undefined && pullDown !== undefined) {
    workings.push({
      name: "depth from which the rig can push the weight wanted",
      relation: "BF (w_c L_c + w_p L_p) + W_h - D = W - P, solved for L_c + L_p",
      inputs: [
        target(input),
        given("P", "largest pull-down", pullDown, "N", INPUT),
        buoyancy(figures),
        ...linearWeights(input),
        collars,
        ...restingInputs(input),
      ],
      value: figures.fullWeightDepth,
      unit: "m",
      source: BALANCE,
    });
  }
  return workings;
}

function torqueWorking(input: StringStationInput, figures: StringFigures): Working[] {
  const workings: Working[] = [];
  const { makeUpTorque: row, rotaryPower: power } = figures;
  if (row && input.subDiameter !== undefined) {
    workings.push({
      name: "make-up torque of the bit's joint, normal",
      relation: `row of the ${row.thread} list at the largest sub not above this one`,
      inputs: [
        given("D_s", "outer diameter of the bit sub", input.subDiameter, "m", INPUT),
        given("D_row", "sub of the row taken", row.subDiameter, "m", "list of make-up torques"),
        given("T_min", "least torque", row.least, "N·m", "list of make-up torques"),
        given("T_max", "largest torque", row.most, "N·m", "list of make-up torques"),
      ],
      value: row.normal,
      unit: "N·m",
      source: row.source,
    });
  }
  if (power !== undefined && input.drillingTorque !== undefined && input.rotarySpeed !== undefined) {
    workings.push({
      name: "rotary power",
      relation: "P = T ω",
      inputs: [
        given("T", "torque expected at the bit", input.drillingTorque, "N·m", INPUT),
        given("ω", "rotary speed", input.rotarySpeed, "rad/s", INPUT),
      ],
      value: power,
      unit: "W",
      source: derivedFrom("work of a torque"),
    });
  }
  return workings;
}
