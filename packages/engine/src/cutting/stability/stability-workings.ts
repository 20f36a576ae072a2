import {
  commonPractice,
  derivedFrom,
  given,
  readIn,
  recalledFrom,
  type Working,
  working,
} from "../../quantity/index.ts";
import { worstGroup } from "./imbalance.ts";
import type {
  ReviewedCrossing,
  ReviewedRubbing,
  ReviewedString,
  StabilityFigures,
  StabilityInput,
} from "./stability-figures.ts";
import { STEEL_SHEAR_MODULUS, STEEL_YOUNGS_MODULUS } from "./string-mode.ts";

const EXCITATION = recalledFrom("Richard, Germay & Detournay 2007, J. Sound Vib. 305:432-456; scaling derived again");
const STATICS = derivedFrom("vector sums of the cutter forces");

/**
 * How every figure of a stability review was reached.
 *
 * @source (d) each working names its own source
 */
export function stabilityWorkings(input: StabilityInput, figures: StabilityFigures): Working[] {
  const { crossings, rubbing, string } = figures;
  return [
    ...balanceWorkings(input, figures),
    ...crossings.flatMap(crossingWorkings),
    ...(rubbing ? rubbingWorkings(figures.advance, rubbing) : []),
    ...(string ? stringWorkings(input, string) : []),
    ...whirlWorkings(input, figures),
  ];
}

function balanceWorkings({ bed, weight }: StabilityInput, { imbalance }: StabilityFigures): Working[] {
  const { whole, drag, radial, betweenAngle, direction, pairs, triples } = imbalance;
  const w = given("W", "weight on bit", weight, "N", "entered");
  const parts = [
    given("|F_t|", "part made by drag", drag.force, "N", "sum over cutters"),
    given("|F_r|", "part made by forces away from the axis", radial.force, "N", "sum over cutters"),
    given("β", "angle between the two", betweenAngle, "rad", "sum over cutters"),
  ];
  const groups = (["two", "three"] as const).flatMap((count) => {
    const worst = worstGroup(count === "two" ? pairs : triples);
    if (!worst) return [];
    return [
      working(
        `side force of the worst ${count} neighbours, ${bed.name}`,
        "|Σ F_k| / W over the group",
        [given("|Σ F_k|", `side force of cutters ${worst.cutters.join(", ")}`, worst.lateralForce, "N", "loads"), w],
        worst.lateralShare,
        "-",
        readIn("idea of balancing neighbours: International Petroleum Technology Conference paper 17149; sums derived"),
      ),
    ];
  });
  return [
    working(
      `side force, ${bed.name}`,
      "|F|² = |F_t|² + |F_r|² + 2 |F_t| |F_r| cos β",
      parts,
      whole.force,
      "N",
      STATICS,
    ),
    working(
      `side force as a share of the weight, ${bed.name}`,
      "|F| / W",
      [given("|F|", "side force", whole.force, "N", "working: side force"), w],
      whole.share,
      "-",
      STATICS,
    ),
    ...(direction
      ? [
          working(
            `side force ahead of wing ${direction.wing}, ${bed.name}`,
            "θ_F - θ_wing, of the wing whose outermost cutter is nearest",
            [given("θ_F", "azimuth of the side force", whole.azimuth, "rad", "sum over cutters")],
            direction.aheadAngle,
            "rad",
            derivedFrom("geometry of the layout"),
          ),
        ]
      : []),
    ...groups,
  ];
}

function crossingWorkings({ from, to, weight, crossing }: ReviewedCrossing): Working[] {
  const { span, peak, mostWeight, mostTorque, mostLateral, before, after } = crossing;
  const where = `${from} into ${to}`;
  const w = given("W", "weight held", weight, "N", "entered");
  const d = given("d", `advance of ${from} held`, before.advance, "m", "root of weight against advance");
  const source = derivedFrom("each edge in the bed it stands in, steady at each place");
  return [
    working(
      `way across the boundary, ${where}`,
      "lowest edge less highest layer that is cut",
      [given("d", "larger of the two advances", Math.max(before.advance, after.advance), "m", "both beds")],
      span,
      "m",
      source,
    ),
    working(
      `heaviest cutter force, ${where}`,
      "largest √(drag² + axial² + radial²) of any cutter along the way",
      [w, given("x", "way into the new bed", peak.entered, "m", `cutter ${peak.cutter}`)],
      peak.force,
      "N",
      source,
    ),
    working(
      `overload of that cutter, ${where}`,
      "that force over the larger of its forces wholly in either bed",
      [given("F", `force on cutter ${peak.cutter}`, peak.force, "N", "working: heaviest cutter force")],
      peak.overloadRatio,
      "-",
      source,
    ),
    working(
      `largest weight at held advance, ${where}`,
      "W(x) with the advance of the first bed",
      [d],
      mostWeight.heldAdvance.weight,
      "N",
      source,
    ),
    working(
      `largest torque at held advance, ${where}`,
      "T(x) with the advance of the first bed",
      [d],
      mostTorque.heldAdvance.torque,
      "N·m",
      source,
    ),
    working(
      `largest side force as a share of the weight, ${where}`,
      "|F(x)| / W",
      [w, given("x", "way into the new bed", mostLateral.entered, "m", "crossing")],
      mostLateral.heldWeight.lateralShare,
      "-",
      source,
    ),
  ];
}

function rubbingWorkings(advance: number, { first, wings }: ReviewedRubbing): Working[] {
  const [earliest] = first;
  if (!earliest) return [];
  return [
    working(
      `advance at which wing ${earliest.wing} rubs`,
      "d = max over the edges j before it of (z_j - z)/c_j, least over the wing's land",
      [given("r", "radius at which it touches first", earliest.radius, "m", "least over the land")],
      earliest.advance,
      "m",
      derivedFrom("exposure and what each wing leaves for the next"),
    ),
    working(
      "weight on the wings at the advance of the cutters alone",
      "W_b = Σ σ_c min(l, κ δ cos τ) cos τ db",
      [
        given("d", "advance per revolution", advance, "m", "root of weight against advance"),
        given("A", "land that rubs", wings.contactArea, "m²", "sum over the lands"),
      ],
      wings.weight,
      "N",
      commonPractice("the land of a wing bears as a wear flat does: our choice, no source"),
    ),
  ];
}

function stringWorkings({ weight, rotarySpeed }: StabilityInput, string: ReviewedString): Working[] {
  const { mode, slopes, scaled, march } = string;
  const { wings } = scaled;
  const bars = derivedFrom("strength of materials; Rayleigh's rule for the effective inertia");
  const c = given("C", "stiffness in twist", mode.torsionalStiffness, "N·m/rad", "working: stiffness in twist");
  const i = given("I", "inertia that swings at the bit", mode.inertia, "kg·m²", "working: inertia of the string");
  const n = given("n", "wings", wings, "-", "layout");
  const g = given("G", "shear modulus of steel", STEEL_SHEAR_MODULUS, "Pa", "handbook value, recalled");
  const e = given("E", "Young's modulus of steel", STEEL_YOUNGS_MODULUS, "Pa", "API RP 7G, recalled");
  const l = given("L", "length of the string", mode.length, "m", "string");
  const ws = given("dW/dd", "weight that cuts for each metre of advance", slopes.weightSlope, "N/m", "loads");
  const ts = given("dT/dd", "torque that cuts for each metre of advance", slopes.torqueSlope, "N", "loads");
  const m = given("M", "mass of string and top head", string.mass, "kg", "string");
  const w = given("W", "weight on bit", weight, "N", "entered");
  const omega = given("ω", "rotary speed", rotarySpeed, "rad/s", "entered");
  return [
    working("stiffness in twist", "1/C = Σ L/(G J)", [g, l], mode.torsionalStiffness, "N·m/rad", bars),
    working(
      "inertia of the string",
      "I = Σ m (D² + d²)/8 · L (p² + p q + q²)/3; ρ J L/3 for one size",
      [l],
      mode.inertia,
      "kg·m²",
      bars,
    ),
    working("natural speed in twist", "(π/2) √(G/ρ)/L for one size", [g, l], mode.torsionalSpeed, "rad/s", bars),
    working("natural speed along the hole", "(π/2) √(E/ρ)/L for one size", [e, l], mode.axialSpeed, "rad/s", bars),
    working("unit of time of the string", "t* = √(I/C)", [i, c], scaled.timeScale, "s", EXCITATION),
    working("unit of length of the string", "L* = C/(dT/dd)", [c, ts], scaled.lengthScale, "m", EXCITATION),
    working(
      "stiffness of the cut against the string",
      "ψ = (dW/dd) I/(M C)",
      [ws, i, m, c],
      scaled.cutStiffness,
      "-",
      EXCITATION,
    ),
    working(
      "contact load of one wing",
      "λ = W_f/(n (dW/dd) L*)",
      [given("W_f", "weight on flats and bevels", slopes.contactWeight, "N", "loads"), n, ws],
      scaled.contactLoad,
      "-",
      EXCITATION,
    ),
    working(
      "speed under which the bit bounces on its own cut",
      "ω = √(8 (dW/dd)/(n M))",
      [ws, n, m],
      string.axialLimitSpeed,
      "rad/s",
      derivedFrom("characteristic equation of u'' = -n ψ (u - u(t - τ))"),
    ),
    ...(string.neededDamping === undefined
      ? []
      : [
          working(
            "damping of the twist that steady drilling needs",
            "largest ξ with P = n k E s²/(s² + n ψ E), P = s² + 2 ξ s + 1, s = i ω",
            [w, omega, n],
            string.neededDamping,
            "-",
            derivedFrom("linear stability of the equations of Richard, Germay & Detournay 2007 with damping added"),
          ),
        ]),
    working(
      "mean torque of the march",
      "mean of n δ + n β λ g over its second half, times C",
      [w, omega, given("ξ", "damping counted on", string.twistDamping, "-", "no source, our choice or entered")],
      march.meanScaledTorque * scaled.torqueScale,
      "N·m",
      EXCITATION,
    ),
  ];
}

function whirlWorkings(
  { trace, rotarySpeed, gaugeClearance = 0 }: StabilityInput,
  { whirl }: StabilityFigures,
): Working[] {
  if (whirl?.whirlSpeed === undefined) return [];
  return [
    working(
      "speed of an ideal backward whirl",
      "Ω_w = ω R_bit/(R_hole - R_bit)",
      [
        given("ω", "rotary speed", rotarySpeed, "rad/s", "entered"),
        given("2 R_bit", "diameter of the bit", trace.layout.holeDiameter, "m", "layout"),
        given("2 (R_hole - R_bit)", "hole over bit", gaugeClearance, "m", "entered"),
      ],
      whirl.whirlSpeed,
      "rad/s",
      derivedFrom("rolling of a circle inside a circle"),
    ),
  ];
}
