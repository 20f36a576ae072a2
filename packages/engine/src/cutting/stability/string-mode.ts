import { bracketedRoot, requireNotNegative, requirePositive, STANDARD_GRAVITY } from "../../quantity/index.ts";
import type { OneModeString } from "./scaled-bit.ts";

/**
 * Shear modulus of steel [Pa].
 *
 * @source (b) handbook value of carbon steel, recalled: 79 to 80 GPa
 */
export const STEEL_SHEAR_MODULUS = 79.3e9;

/**
 * Young's modulus of steel [Pa].
 *
 * @source (b) API RP 7G, recalled: 30e6 psi
 */
export const STEEL_YOUNGS_MODULUS = 206.8e9;

/** A length of pipe or collar of one size. */
export interface StringSection {
  /** Outer diameter [m]. */
  readonly outerDiameter: number;
  /** Bore [m]. */
  readonly bore: number;
  /** Length [m]. */
  readonly length: number;
  /** Weight in air for each length, joints included [N/m]. */
  readonly linearWeight: number;
}

/** A string as one mass on one spring, and its own lowest speeds of swinging. */
export interface StringMode extends OneModeString {
  /** Length [m]. */
  readonly length: number;
  /** Stiffness along the hole, the top held [N/m]. */
  readonly axialStiffness: number;
  /** Lowest natural speed in twist, the top held and the bit free, joints spread evenly [rad/s]. */
  readonly torsionalSpeed: number;
  /** Lowest natural speed along the hole, the top held and the bit free [rad/s]. */
  readonly axialSpeed: number;
}

/**
 * A string held at the top as one mass on one spring at the bit.
 *
 * 1/C = Σ L/(G J), J = π (D⁴ - d⁴)/32; I = Σ m (D² + d²)/8 · L (p² + p q + q²)/3, with m the mass of a length and p, q
 * how far the ends of a section turn for each radian at the bit under a still torque; for one size of plain pipe this
 * is C = G J/L and I = ρ J L/3. M = Σ m L, all of it, for the top is taken to give way to the bit's ups and downs.
 * The natural speeds are those of the even bars themselves, for one size (π/2) √(G/ρ)/L; one mass on one spring reads a
 * tenth high. Couplings, the rig's own give and the fluid are left out.
 *
 * @throws RangeError when there is no section, or one has no length, wall or weight
 * @source (d) strength of materials; Rayleigh's rule for the effective inertia
 */
export function stringMode(
  /** From the bit up. */
  sections: readonly StringSection[],
): StringMode {
  requirePositive({ "number of sections": sections.length });
  const bars = sections.map(barOf);
  const twist = sumOf(bars, ({ twistGive, length }) => twistGive * length);
  let [below, inertia] = [1, 0];
  for (const { twistGive, length, polarInertia } of bars) {
    const above = below - (twistGive * length) / twist;
    inertia += (polarInertia * length * (below * below + below * above + above * above)) / 3;
    below = above;
  }
  return {
    inertia,
    torsionalStiffness: 1 / twist,
    mass: sumOf(bars, ({ linearMass, length }) => linearMass * length),
    length: sumOf(bars, ({ length }) => length),
    axialStiffness: 1 / sumOf(bars, ({ stretchGive, length }) => stretchGive * length),
    torsionalSpeed: lowestSpeed(
      bars.map(({ length, twistGive, polarInertia }) => ({ length, give: twistGive, inertia: polarInertia })),
    ),
    axialSpeed: lowestSpeed(
      bars.map(({ length, stretchGive, linearMass }) => ({ length, give: stretchGive, inertia: linearMass })),
    ),
  };
}

/**
 * A string of a given length, from the bit up: its last section made as long as is left, the others cut where they are
 * more.
 *
 * @throws RangeError when the length is not positive
 * @source (d) lengths taken one after the other
 */
export function stringOfLength(
  /** From the bit up. */
  sections: readonly StringSection[],
  /** [m] */
  length: number,
): StringSection[] {
  requirePositive({ length });
  let left = length;
  return sections.flatMap((section, k) => {
    const taken = k === sections.length - 1 ? left : Math.min(section.length, left);
    left -= taken;
    return taken > 0 ? [{ ...section, length: taken }] : [];
  });
}

/** A section by its length. */
interface Bar {
  readonly length: number;
  /** 1/(G J) */
  readonly twistGive: number;
  /** 1/(E A) */
  readonly stretchGive: number;
  readonly linearMass: number;
  readonly polarInertia: number;
}

function barOf({ outerDiameter, bore, length, linearWeight }: StringSection): Bar {
  requirePositive({ outerDiameter, length, linearWeight, wall: outerDiameter - bore });
  requireNotNegative({ bore });
  const linearMass = linearWeight / STANDARD_GRAVITY;
  return {
    length,
    twistGive: 32 / (STEEL_SHEAR_MODULUS * Math.PI * (outerDiameter ** 4 - bore ** 4)),
    stretchGive: 4 / (STEEL_YOUNGS_MODULUS * Math.PI * (outerDiameter ** 2 - bore ** 2)),
    linearMass,
    polarInertia: (linearMass * (outerDiameter ** 2 + bore ** 2)) / 8,
  };
}

/** A piece of an even bar: what it gives and what it weighs against being moved, for each length. */
interface SwingingBar {
  readonly length: number;
  readonly give: number;
  readonly inertia: number;
}

/** Lowest natural speed of bars end to end, free at the first end and held at the last. */
function lowestSpeed(bars: readonly SwingingBar[]): number {
  // Where the top stands for each unit of swing at the bit: passes through nothing at each natural speed.
  const top = (speed: number): number => {
    let [place, force] = [1, 0];
    for (const { length, give, inertia } of bars) {
      const wave = speed * Math.sqrt(give * inertia);
      const impedance = wave / give;
      const [c, s] = [Math.cos(wave * length), Math.sin(wave * length)];
      [place, force] = [place * c - (force / impedance) * s, place * impedance * s + force * c];
    }
    return place;
  };
  // All of the inertia at the free end and all of the give: no string swings slower.
  const give = sumOf(bars, (bar) => bar.give * bar.length);
  const inertia = sumOf(bars, (bar) => bar.inertia * bar.length);
  const slowest = 1 / Math.sqrt(give * inertia);
  let high = slowest;
  while (top(high) > 0) high *= 1.02;
  return bracketedRoot({ f: top, low: high / 1.03, high, residual: 1e-10 });
}

function sumOf<T>(items: readonly T[], of: (item: T) => number): number {
  return items.reduce((sum, item) => sum + of(item), 0);
}
