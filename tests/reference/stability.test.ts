import {
  axialLimitSpeed,
  backwardWhirlSpeed,
  bladeSlopes,
  criticalDelay,
  emptyBedLoads,
  imbalance,
  marchSelfExcitation,
  neededDamping,
  type PlacedCutter,
  scaledAxialLimit,
  scaledBit,
  steadySpeeds,
  traceEdges,
  whirlLobes,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { type CoulombBit, coulombMarch } from "../support/coulomb-march.ts";
import { inch, MPa, mm, rpm } from "../support/field-units.ts";

/** Cutters at one radius, evenly round the bit, each with the same drag and the same push toward the axis. */
function evenBit(count: number, drags: readonly number[], inward: number, weight: number) {
  const cutters = Array.from(
    { length: count },
    (_, k): PlacedCutter => ({
      wing: k + 1,
      radius: 50 * mm,
      azimuth: (2 * Math.PI * k) / count,
      height: 0,
      profileAngle: 0,
      backRake: 0.26,
      sideRake: 0,
      faceDiameter: 13.44 * mm,
      length: 8 * mm,
      chamferWidth: 0,
      chamferAngle: 0,
      wornHeight: 0,
    }),
  );
  const trace = traceEdges({ holeDiameter: 0.12, cutters }, { cells: 60 });
  const loads = emptyBedLoads(trace);
  cutters.forEach(({ azimuth }, k) => {
    const [c, s] = [Math.cos(azimuth), Math.sin(azimuth)];
    loads.radialX[k] = -inward * c;
    loads.radialY[k] = -inward * s;
    loads.lateralX[k] = -inward * c + drags[k] * s;
    loads.lateralY[k] = -inward * s - drags[k] * c;
    loads.cuttingAxial[k] = weight / count;
  });
  return imbalance(trace, loads);
}

describe("side force (derived: statics)", () => {
  it("five equal cutters, 100 N of drag and 30 N inward each: nothing is left", () => {
    expect(evenBit(5, [100, 100, 100, 100, 100], 30, 2000).whole.force).toBeLessThan(1e-9);
  });

  it("one drag of 100 N missing: 100 N, 5 % of 2,000 N", () => {
    const { whole, drag, radial } = evenBit(5, [100, 0, 100, 100, 100], 30, 2000);
    expectClose(whole.force, 100, 1e-9);
    expectClose(whole.share, 0.05, 1e-9);
    expectClose(drag.force, 100, 1e-9);
    expect(radial.force).toBeLessThan(1e-9);
  });
});

describe("whirl", () => {
  it("lobes k n + 1 (teaching article on bit whirl, read)", () => {
    expect([1, 2, 3].map((number) => whirlLobes({ wings: 5, number }))).toEqual([6, 11, 16]);
  });

  it("ideal backward rolling of a 6 1/8 in bit in a 6 3/8 in hole (derived)", () => {
    const speed = backwardWhirlSpeed({ rotarySpeed: 90 * rpm, bitDiameter: 6.125 * inch, holeDiameter: 6.375 * inch });
    expectClose(speed / rpm, 2205, 1e-6);
  });
});

// The example of Richard, Germay & Detournay 2007 (J. Sound Vib. 305:432-456), recalled; every number derived again.
const STRING = { inertia: 116, torsionalStiffness: 938, mass: 34_000 };
const BLADES = {
  holeRadius: 0.108,
  wings: 4,
  cuttingRatio: 0.6,
  specificEnergy: 60 * MPa,
  contactStress: 60 * MPa,
  flatLength: 1.2 * mm,
  flatFriction: 0.5,
  bitConstant: 1,
};
const slopes = bladeSlopes(BLADES);
const paperBit = scaledBit(STRING, slopes);
const WEIGHT = 100_000;
const scaledWeight = WEIGHT / paperBit.weightScale;

describe("self-excitation: scales and linear limit (recalled form, numbers derived)", () => {
  it("scales", () => {
    expectClose(paperBit.timeScale, 0.351664, 1e-4);
    expectClose(paperBit.lengthScale / mm, 2.68061, 1e-4);
    expectClose(paperBit.cutStiffness, 14.1417, 1e-4);
    expectClose(paperBit.contactLoad, 0.746098, 1e-4);
    expectClose(4 * paperBit.contactLoad, 2.98439, 1e-4);
    expectClose(scaledWeight, 9.59488, 1e-4);
    // β = μ γ ζ.
    expectClose(paperBit.contactFriction, 0.5 * 0.6, 1e-12);
  });

  it("axial limit", () => {
    expectClose(scaledAxialLimit(paperBit), 5.31822, 2e-4);
    const speed = axialLimitSpeed({ weightSlope: slopes.weightSlope, wings: 4, mass: STRING.mass });
    expectClose(speed, 15.123, 2e-4);
    expectClose(speed / rpm, 144.414, 2e-4);
    expectClose(scaledAxialLimit(paperBit) / paperBit.timeScale, speed, 1e-12);
    expectClose((2 * Math.PI) / (4 * criticalDelay(paperBit)), scaledAxialLimit(paperBit), 1e-12);
  });
});

/** A bit without contact that turns evenly: its motion obeys u'' = -n ψ (u - u(t - τ)) and nothing else. */
const delayBit = { wings: 4, cutStiffness: 56.56 / 4, contactLoad: 0, contactFriction: 0 };
const criticalTime = criticalDelay(delayBit);

function marchDelay(
  delay: number,
  duration: number,
  { size = 1e-3, ...more }: Partial<Parameters<typeof marchSelfExcitation>[0]> & { size?: number } = {},
) {
  const frequency = Math.sqrt(56.56);
  return marchSelfExcitation({
    bit: delayBit,
    scaledWeight: 40,
    scaledSpeed: (2 * Math.PI) / (4 * delay),
    duration,
    rotation: "even",
    samples: 40_000,
    // u = u0 cos ω t up to the start; an angle before the start is a time before it, the turning being even.
    start: {
      axialOffset: size,
      ripple: (angle) => size * Math.cos((frequency * angle * 4 * delay) / (2 * Math.PI)),
    },
    timeStep: delay / 400,
    ...more,
  });
}

/** Largest |u'| over a stretch of time. */
function swingBetween(march: ReturnType<typeof marchDelay>, from: number, to: number): number {
  const { time, axialSpeed } = march.series;
  let most = 0;
  time.forEach((t, k) => {
    if (t >= from && t < to) most = Math.max(most, Math.abs(axialSpeed[k] - 1));
  });
  return most;
}

/** The root of s² + K (1 - e^(-s τ)) farthest to the right, apart from s = 0, by Newton's method from many starts. */
function rightmostRoot(stiffness: number, delay: number): { re: number; im: number } {
  let best = { re: Number.NEGATIVE_INFINITY, im: 0 };
  for (let start = 0.5; start < 40; start += 0.5) {
    let [x, y] = [0, start];
    for (let n = 0; n < 60; n++) {
      const size = Math.exp(-x * delay);
      const [ex, ey] = [size * Math.cos(y * delay), -size * Math.sin(y * delay)];
      const [fx, fy] = [x * x - y * y + stiffness * (1 - ex), 2 * x * y - stiffness * ey];
      const [gx, gy] = [2 * x + stiffness * delay * ex, 2 * y + stiffness * delay * ey];
      const over = gx * gx + gy * gy;
      x -= (fx * gx + fy * gy) / over;
      y -= (fy * gx - fx * gy) / over;
    }
    const size = Math.exp(-x * delay);
    const off = Math.hypot(
      x * x - y * y + stiffness * (1 - size * Math.cos(y * delay)),
      2 * x * y + stiffness * size * Math.sin(y * delay),
    );
    if (off < 1e-8 && Math.abs(y) > 1e-3 && x > best.re) best = { re: x, im: Math.abs(y) };
  }
  return best;
}

describe("the march of the delay equations", () => {
  it("decays at 0.8 and 0.95 of the limit delay and grows at 1.05 and 1.2 (derived; n ψ = 56.56)", () => {
    expectClose(criticalTime, Math.PI / Math.sqrt(2 * 56.56), 1e-12);
    for (const [share, behaviour] of [
      [0.8, "decays"],
      [0.95, "decays"],
      [1.05, "grows"],
      [1.2, "grows"],
    ] as const) {
      const march = marchDelay(share * criticalTime, 40);
      const grows = swingBetween(march, 35, 40) > swingBetween(march, 1, 3);
      expect(grows ? "grows" : "decays", `at ${share}`).toBe(behaviour);
    }
  });

  it("grows and decays as fast as the rightmost root of the characteristic equation says, within 0.5 %", () => {
    for (const share of [0.8, 0.9, 0.95, 1.05, 1.1, 1.3]) {
      const delay = share * criticalTime;
      const { re, im } = rightmostRoot(56.56, delay);
      // Seen over one turn of the swing, and again whole turns later, so that its phase is the same.
      const turn = (2 * Math.PI) / im;
      const later = turn * Math.ceil(Math.min(8, 6 / Math.abs(re)) / turn);
      // So small at first that nothing leaves the bottom by the end.
      const march = marchDelay(delay, 3 + later + turn, { size: 1e-5 });
      const measured =
        Math.log(swingBetween(march, 3 + later, 3 + later + turn) / swingBetween(march, 3, 3 + turn)) / later;
      expect(Math.sign(re)).toBe(Math.sign(share - 1));
      expect(Math.abs(measured - re), `root ${re}, marched ${measured} at ${share}`).toBeLessThan(0.005 * Math.abs(re));
    }
  });

  it("swings as an undamped spring until the first wing comes back: u = u0 cos √(n ψ) t, its energy kept", () => {
    const delay = 0.9 * criticalTime;
    const march = marchDelay(delay, 0.99 * delay, { start: { axialOffset: 1e-3 }, samples: 300 });
    const frequency = Math.sqrt(56.56);
    const steadySpeed = ((40 / 4) * (2 * Math.PI)) / (4 * delay) / (Math.PI / 2);
    const { time, axialOffset, axialSpeed } = march.series;
    time.forEach((t, k) => {
      expect(Math.abs(axialOffset[k] - 1e-3 * Math.cos(frequency * t))).toBeLessThan(1e-10);
      const speed = (axialSpeed[k] - 1) * steadySpeed;
      const energy = speed ** 2 + 56.56 * axialOffset[k] ** 2;
      expectClose(energy, 56.56e-6, 1e-7);
    });
  });

  it("comes nearer by a factor of eight and more when its steps are halved", () => {
    const endAt = (steps: number) => {
      const { series } = marchSelfExcitation({
        bit: paperBit,
        scaledWeight,
        scaledSpeed: 7,
        duration: 6,
        timeStep: 0.22 / steps,
        start: { axialSpeedRatio: 1.02, turningSpeedRatio: 0.98 },
      });
      return series.axialOffset[series.axialOffset.length - 1];
    };
    const exact = endAt(160);
    const [coarse, middle, fine] = [10, 20, 40].map((steps) => Math.abs(endAt(steps) - exact));
    expect(coarse / middle).toBeGreaterThan(8);
    expect(middle / fine).toBeGreaterThan(8);
    expect(fine / Math.abs(exact)).toBeLessThan(1e-5);
  });

  it("keeps the mean torque that the balance along the hole asks for: T' = W' - (1 - β) n λ <g>", () => {
    for (const scaledSpeed of [4.8, 5, 8]) {
      const march = marchSelfExcitation({
        bit: paperBit,
        scaledWeight,
        scaledSpeed,
        duration: 400,
        start: { axialSpeedRatio: 1.02, turningSpeedRatio: 0.98 },
      });
      expect(march.stickShare).toBe(0);
      const { contactFriction, contactLoad } = paperBit;
      const expected = scaledWeight - (1 - contactFriction) * 4 * contactLoad * march.meanContactShare;
      expectClose(march.meanScaledTorque, expected, 2e-3);
    }
  });

  it("agrees with a march by impulses in SI through stick-slip, lifting flats and bounces", () => {
    const bit: CoulombBit = {
      inertia: STRING.inertia,
      stiffness: STRING.torsionalStiffness,
      mass: STRING.mass,
      radius: BLADES.holeRadius,
      zeta: BLADES.cuttingRatio,
      epsilon: BLADES.specificEnergy,
      sigma: BLADES.contactStress,
      flatLength: BLADES.flatLength,
      friction: BLADES.flatFriction,
      blades: BLADES.wings,
      weight: WEIGHT,
    };
    for (const [scaledSpeed, regime] of [
      [2, "stick-slip"],
      [3, "stick-slip"],
      [3.5, "stick-slip"],
      [5, "axial vibration"],
    ] as const) {
      const march = marchSelfExcitation({
        bit: paperBit,
        scaledWeight,
        scaledSpeed,
        duration: 100,
        start: { axialSpeedRatio: 1.05, turningSpeedRatio: 0.9 },
      });
      const other = coulombMarch(bit, {
        topSpeed: scaledSpeed / paperBit.timeScale,
        seconds: 100 * paperBit.timeScale,
        step: 1e-4,
        kick: { down: 1.05, turning: 0.9 },
      });
      expect(march.regime).toBe(regime);
      expect(Math.abs(march.stickShare - other.stands)).toBeLessThan(0.002);
      expect(Math.abs(march.bounceShare - other.flies)).toBeLessThan(0.001);
      expectClose(march.meanScaledTorque * paperBit.torqueScale, other.meanTorque, 2e-3);
      expectClose(march.fastestRatio, other.fastest, 5e-3);
    }
  });

  it("flies free of the rock off bottom: the string swings by itself, the bit falls under the weight", () => {
    const { series } = marchSelfExcitation({
      bit: { ...paperBit, contactLoad: 0 },
      scaledWeight: 0.01,
      scaledSpeed: 1,
      duration: 3,
      start: { axialOffset: -3, turningSpeedRatio: 1.2 },
      samples: 600,
    });
    series.time.forEach((t, k) => {
      expect(series.scaledTorque[k]).toBe(0);
      // φ'' + φ = ω0 τ from φ(0) = -T0, φ'(0) = 1.2: φ' = 1 + T0 sin τ + 0.2 cos τ, T0 = W' without contact.
      expectClose(series.turningSpeed[k], 1 + 0.01 * Math.sin(t) + 0.2 * Math.cos(t), 1e-7);
    });
    const last = series.time.length - 1;
    const steady = 0.01 / (2 * Math.PI);
    const fallen = -3 + steady * 3 + (paperBit.cutStiffness * 0.01 * 9) / 2;
    expectClose(series.axialOffset[last] + steady * 3, fallen, 1e-9);
  });

  it("needs the damping of the twist that linear theory asks for: grows with a tenth less, decays with a tenth more", () => {
    for (const scaledSpeed of [6, 8, 12]) {
      const needed = neededDamping({ bit: paperBit, scaledWeight, scaledSpeed });
      const growth = (share: number) =>
        marchSelfExcitation({
          bit: paperBit,
          scaledWeight,
          scaledSpeed,
          duration: 300,
          twistDamping: share * needed,
          start: { turningSpeedRatio: 0.999 },
        }).growthRatio;
      expect(growth(0.9)).toBeGreaterThan(1);
      expect(growth(1.1)).toBeLessThan(1);
    }
  });

  it("finds the steady speeds of the paper's bit above its axial limit, stick-slip well below", () => {
    const speeds = steadySpeeds({
      bit: paperBit,
      weight: WEIGHT,
      slowestSpeed: 60 * rpm,
      fastestSpeed: 220 * rpm,
      count: 9,
      twistDamping: 0.01,
    });
    expect(speeds.finished).toBe(true);
    expect(speeds.tried[0].regime).toBe("stick-slip");
    expect(speeds.steady).toHaveLength(1);
    const [span] = speeds.steady;
    expect(span.slowestSpeed / rpm).toBeGreaterThan(130);
    expect(span.slowestSpeed / rpm).toBeLessThan(170);
    expectClose(span.fastestSpeed / rpm, 220, 1e-9);
  });
});
