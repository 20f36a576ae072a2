import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { marchSelfExcitation } from "./march.ts";
import { steadySpeeds, steadySpeedsInSteps } from "./steady-speeds.ts";

const bit = { wings: 4, cutStiffness: 14, contactLoad: 0.7, contactFriction: 0.3 };
const slight = { axialSpeedRatio: 1.01, turningSpeedRatio: 0.99 };
const scaled = { ...bit, timeScale: 0.35, lengthScale: 2.7e-3, weightScale: 10_000, torqueScale: 900 };

describe("marchSelfExcitation", () => {
  it("left alone stays in steady drilling", () => {
    const march = marchSelfExcitation({ bit, scaledWeight: 9, scaledSpeed: 9, duration: 100 });
    expect(march.regime).toBe("steady");
    expect(march.events).toBeLessThan(6);
    expect(march.axialSwing).toBeLessThan(1e-6);
    expect(march.meanContactShare).toBe(1);
    expect(march.meanScaledTorque).toBeCloseTo(9 - 0.7 * 4 * 0.7, 6);
    expect(march.steadyCut).toBeCloseTo((9 - 2.8) / 4, 12);
  });

  it("ends, with sound figures, whatever bit, weight and speed it is given", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 7 }),
        fc.double({ min: 0.05, max: 30, noNaN: true }),
        fc.constantFrom(0, 0.1, 1, 3),
        fc.double({ min: 0, max: 1.5, noNaN: true }),
        fc.double({ min: 0.05, max: 8, noNaN: true }),
        fc.double({ min: 0.3, max: 12, noNaN: true }),
        fc.constantFrom(0, 0.03),
        (wings, cutStiffness, contactLoad, contactFriction, over, scaledSpeed, twistDamping) => {
          const march = marchSelfExcitation({
            bit: { wings, cutStiffness, contactLoad, contactFriction },
            scaledWeight: wings * contactLoad + over,
            scaledSpeed,
            twistDamping,
            duration: 30,
            start: { axialSpeedRatio: 1.2, turningSpeedRatio: 0.8, axialOffset: -0.3 },
          });
          expect(march.finished).toBe(true);
          const { time, turningSpeed, cutRatio, axialOffset } = march.series;
          for (const row of Object.values(march.series)) {
            expect(row.length).toBe(time.length);
            expect(row.every(Number.isFinite)).toBe(true);
          }
          expect(time[time.length - 1]).toBe(30);
          expect(turningSpeed.every((speed) => speed >= 0)).toBe(true);
          expect(cutRatio.every((cut) => cut >= -1e-9)).toBe(true);
          for (let k = 1; k < time.length; k++) expect(time[k]).toBeGreaterThanOrEqual(time[k - 1]);
          // It drills on: at no time is the bit far above the bottom it would have reached.
          expect(Math.abs(axialOffset[axialOffset.length - 1])).toBeLessThan(60 * (1 + over));
          for (const share of ["stickShare", "liftShare", "bounceShare", "meanContactShare"] as const) {
            expect(march[share]).toBeGreaterThanOrEqual(0);
            expect(march[share]).toBeLessThanOrEqual(1 + 1e-9);
          }
        },
      ),
      { seed: 51, numRuns: 60 },
    );
  });

  it("holds the hole bottom it leaves: over a long time it gains what the mean cut and the wings that pass give", () => {
    const march = marchSelfExcitation({ bit, scaledWeight: 9, scaledSpeed: 2.5, duration: 300, start: slight });
    expect(march.regime).toBe("stick-slip");
    const { time, axialOffset } = march.series;
    const last = time.length - 1;
    const steadySpeed = (march.steadyCut * 2.5 * 4) / (2 * Math.PI);
    const advanced = axialOffset[last] + steadySpeed * time[last];
    // A bit that sticks puts part of its weight on standing flats, so it goes slower than steady, but it goes.
    expect(advanced).toBeGreaterThan(0.5 * steadySpeed * time[last]);
    expect(advanced).toBeLessThan(1.5 * steadySpeed * time[last]);
  });

  it("stops when it is asked to, with what it has", () => {
    let asked = 0;
    const march = marchSelfExcitation({
      bit,
      scaledWeight: 9,
      scaledSpeed: 6,
      duration: 1e6,
      shouldStop: () => ++asked >= 3,
    });
    expect(march.finished).toBe(false);
    expect(march.duration).toBeGreaterThan(1);
    expect(march.duration).toBeLessThan(1e4);
  });

  it("refuses a weight that the flats alone carry", () => {
    const march = (more: object) => () =>
      marchSelfExcitation({ bit, scaledWeight: 9, scaledSpeed: 6, duration: 10, ...more });
    expect(march({ scaledWeight: 2 })).toThrow("scaledWeight must be over the contact load of 2.8, got 2");
    expect(march({ scaledSpeed: 0 })).toThrow("scaledSpeed must be positive, got 0");
    expect(march({ timeStep: 0 })).toThrow("timeStep must be positive, got 0");
    expect(march({ twistDamping: -1 })).toThrow("twistDamping must not be negative, got -1");
  });
});

describe("steadySpeeds", () => {
  const input = { bit: scaled, weight: 90_000, slowestSpeed: 8, fastestSpeed: 24, count: 5, scaledDuration: 60 };

  it("tells of its progress and bounds each span by speeds it tried", () => {
    const told = [...steadySpeedsInSteps(input)].map(({ done, of }) => `${done}/${of}`);
    expect(told).toEqual(["1/5", "2/5", "3/5", "4/5", "5/5"]);
    const found = steadySpeeds(input);
    expect(found.tried.map(({ rotarySpeed }) => rotarySpeed)).toEqual([8, 12, 16, 20, 24]);
    const steady = found.tried.filter(({ regime }) => regime === "steady").map(({ rotarySpeed }) => rotarySpeed);
    expect(steady.length).toBeGreaterThan(0);
    expect(found.steady.flatMap((span) => [span.slowestSpeed, span.fastestSpeed])).toContain(steady[0]);
  });

  it("ends between two speeds or within a march when asked to, with what is whole", () => {
    let asked = 0;
    const found = steadySpeeds({ ...input, shouldStop: () => ++asked > 4 });
    expect(found.finished).toBe(false);
    expect(found.tried.length).toBeLessThan(5);
  });
});
