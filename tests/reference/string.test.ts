/**
 * Published and derived checks of the string room. Source kinds beside each: (a) read, (b) published and recalled,
 * (d) derived. Field figures are turned into SI here.
 */
import {
  advancePerRevolution,
  balanceDepth,
  buoyancyFactor,
  collarLengthNeeded,
  DRILL_COLLARS,
  DRILL_PIPES,
  feedForce,
  hangingWeight,
  makeUpTorque,
  pinForBitSize,
  plainEndWeight,
  REGULAR_CONNECTIONS,
  type RegularThread,
  rotaryPower,
  USABLE_COLLAR_SHARE,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { foot, footPerHour, footPound, horsepower, inch, poundForce, ppg, rpm } from "../support/field-units.ts";

const poundForcePerFoot = poundForce / foot;

describe("pipe and collars", () => {
  it.each([
    // pipe.plain-end, (d) on sizes recalled from API 5DP / RP 7G; 2.67 in the printed form is 2.6725 rounded
    [2.375, 1.815, 6.26, 0.28],
    [2.875, 2.441, 6.16, 0.217],
    [2.875, 2.151, 9.72, 0.362],
    [3.5, 2.992, 8.81, 0.254],
    [3.5, 2.764, 12.31, 0.368],
    [4.5, 3.826, 14.98, 0.337],
  ])("%d x %d in pipe without joints", (outer, bore, weight, wall) => {
    const size = { outerDiameter: outer * inch, bore: bore * inch };
    expectClose(plainEndWeight(size) / poundForcePerFoot, weight, 2e-3);
    const listed = DRILL_PIPES.find((p) => Math.abs(p.bore - size.bore) < 1e-9);
    expectClose(((listed?.outerDiameter ?? 0) - (listed?.bore ?? 0)) / 2 / inch, wall, 2e-3);
  });

  it.each([
    // collar.weight, (d); the printed figures carry 2.67 for 2.6725 and are rounded, so 1.5e-3 instead of 1e-3
    [4.75, 46.7],
    [6, 82.6],
    [6.25, 90.8],
  ])("%d x 2 1/4 in collar", (outer, weight) => {
    const listed = DRILL_COLLARS.find((c) => Math.abs(c.outerDiameter - outer * inch) < 1e-9);
    expectClose((listed?.linearWeight ?? 0) / poundForcePerFoot, weight, 1.5e-3);
  });

  it("2 3/8 in pipe with its joints", () => {
    // pipe.with-joints, (a) Lyons, Guo & Seidel 2001
    const listed = DRILL_PIPES.find((p) => Math.abs(p.outerDiameter - 2.375 * inch) < 1e-9);
    expectClose((listed?.jointedWeight ?? 0) / poundForcePerFoot, 6.99, 5e-3);
  });
});

describe("buoyancy and balance", () => {
  it("350,000 lbf in 13 ppg", () => {
    // buoyancy.factor, (a) Lyons, Carter & Lapeyrouse 2012 p. 24
    expectClose(buoyancyFactor(13 * ppg), 0.8015, 5e-4);
    expectClose(350 * buoyancyFactor(13 * ppg), 280.5, 5e-4);
  });

  it.each([
    // buoyancy.more, (d)
    [8.6, 0.869],
    [10, 0.847],
  ])("factor in %d ppg", (mud, factor) => {
    expectClose(buoyancyFactor(mud * ppg), factor, 1e-3);
  });

  it("length of collars for 6,125 lbf", () => {
    // collar.length, (d)
    const length = collarLengthNeeded({
      weight: 6125 * poundForce,
      linearWeight: 46.8 * poundForcePerFoot,
      fluidDensity: 8.6 * ppg,
      usableShare: USABLE_COLLAR_SHARE.mid,
    });
    expectClose(length / foot, 177, 3e-3);
  });

  it.each([
    // balance.depth, (d): 1,000 lbf for each inch of bit from pipe alone, in 8.6 ppg
    [10.4, [567.27, 677.96, 871.66]],
    [13.3, [443.58, 530.13, 681.6]],
    [16.6, [355.4, 424.74, 546.1]],
  ])("depth at which %d lb/ft pipe alone gives 1,000 lb/in on 5 1/8, 6 1/8 and 7 7/8 in", (pipe, depths) => {
    for (const [i, bit] of [5.125, 6.125, 7.875].entries()) {
      const depth = balanceDepth({
        makeUp: { pipe: { jointLength: 20 * foot, linearWeight: pipe * poundForcePerFoot } },
        fluidDensity: 8.6 * ppg,
        targetWeight: 1000 * bit * poundForce,
      });
      expectClose(depth / foot, depths[i], 5e-4);
    }
  });

  it("pull-down left to give with 60 ft of collars and 240 ft of pipe", () => {
    // balance.pulldown, (d)
    const weight = hangingWeight({
      makeUp: {
        collars: { length: 60 * foot, linearWeight: 46.8 * poundForcePerFoot },
        pipe: { jointLength: 20 * foot, linearWeight: 13.3 * poundForcePerFoot },
      },
      fluidDensity: 8.6 * ppg,
      length: 300 * foot,
    });
    expectClose(weight / poundForce, 5212, 1e-3);
    const pull = feedForce({ targetWeight: 6125 * poundForce, hangingWeight: weight });
    expectClose(pull / poundForce, 913, 1e-3);
  });
});

describe("turning", () => {
  it("1,500 lbf·ft at 90 rpm", () => {
    // rotary.power, (d)
    expectClose(rotaryPower({ torque: 1500 * footPound, rotarySpeed: 90 * rpm }) / horsepower, 25.7, 1e-3);
  });

  it.each([
    // advance.per-rev, (d), three blades
    [60, 80, 0.15, 0.05],
    [100, 90, 0.222, 0.074],
    [200, 90, 0.444, 0.148],
  ])("advance for each turn at %d ft/h and %d rpm", (rate, speed, advance, perBlade) => {
    const each = advancePerRevolution({ rate: rate * footPerHour, rotarySpeed: speed * rpm });
    expectClose(each / inch, advance, 3e-3);
    expectClose(each / 3 / inch, perBlade, 3e-3);
  });
});

describe("regular connections", () => {
  // reg.table, (b) API Spec 7-2 / 7-1 dimensions recalled; not for machining until read in the standard
  it.each([
    ["2 3/8 REG", 2.36537, 2.625, 1.875, 3, 2.6875],
    ["2 7/8 REG", 2.74037, 3, 2.125, 3.5, 3.0625],
    ["3 1/2 REG", 3.23987, 3.5, 2.5625, 3.75, 3.5625],
    ["4 1/2 REG", 4.36487, 4.625, 3.5625, 4.25, 4.6875],
  ])("%s sizes, and its taper over the pin's length", (thread, pitch, large, small, length, counterbore) => {
    const joint = REGULAR_CONNECTIONS.find((c) => c.thread === thread);
    expectClose((joint?.pitchDiameter ?? 0) / inch, pitch, 1e-6);
    expectClose((joint?.pinLargeDiameter ?? 0) / inch, large, 1e-6);
    expectClose((joint?.pinSmallDiameter ?? 0) / inch, small, 1e-6);
    expectClose((joint?.pinLength ?? 0) / inch, length, 1e-6);
    expectClose((joint?.boxCounterbore ?? 0) / inch, counterbore, 1e-6);
    // reg.taper, (d): small + taper x length = large
    const { pinSmallDiameter = 0, taper = 0, pinLength = 0 } = joint ?? {};
    expectClose((pinSmallDiameter + taper * pinLength) / inch, large, 1e-6);
  });

  // makeup.*, (a) API RP 7G values seen in a trade reprint, the standard itself not read
  const makeUps: readonly (readonly [RegularThread, number, number, number, number])[] = [
    ["2 3/8 REG", 3, 1970, 2280, 2450],
    ["2 3/8 REG", 3.125, 2660, 3100, 3300],
    ["2 3/8 REG", 3.25, 3400, 3950, 4200],
    ["2 7/8 REG", 3.5, 3380, 3950, 4200],
    ["2 7/8 REG", 3.75, 5080, 5900, 6300],
    ["3 1/2 REG", 4.125, 5700, 6600, 7000],
    ["3 1/2 REG", 4.25, 6940, 8050, 8550],
    ["3 1/2 REG", 4.5, 8400, 9850, 10500],
    ["4 1/2 REG", 5.5, 13700, 16600, 17000],
    ["4 1/2 REG", 5.75, 18100, 21100, 22400],
    ["4 1/2 REG", 6, 18550, 21600, 22900],
    ["6 5/8 REG", 7.5, 40670, 47300, 50200],
    ["6 5/8 REG", 7.75, 41050, 47800, 50750],
  ];
  it.each(makeUps)("make-up torque of %s on a %d in sub", (thread, sub, least, normal, most) => {
    const row = makeUpTorque({ thread, subDiameter: sub * inch });
    expectClose((row?.least ?? 0) / footPound, least, 1e-12);
    expectClose((row?.normal ?? 0) / footPound, normal, 1e-12);
    expectClose((row?.most ?? 0) / footPound, most, 1e-12);
    expectClose((row?.subDiameter ?? 0) / inch, sub, 1e-12);
  });

  it.each([
    // makeup.*, notes: these rows hold for larger subs as well
    ["2 7/8 REG", 3.75],
    ["3 1/2 REG", 4.5],
    ["4 1/2 REG", 6],
    ["6 5/8 REG", 7.75],
  ] as const)("the last row of %s holds for larger subs", (thread, sub) => {
    const row = makeUpTorque({ thread, subDiameter: (sub + 1) * inch });
    expect(row?.andLarger).toBe(true);
    expectClose((row?.subDiameter ?? 0) / inch, sub, 1e-12);
  });

  it.each([
    // pin.by-size.*, (b) API Spec 7-1 size bands recalled; smaller bands agree with a trade reprint
    [3.75, "2 3/8 REG"],
    [4.75, "2 7/8 REG"],
    [6.125, "3 1/2 REG"],
    [7.875, "4 1/2 REG"],
    [9.875, "6 5/8 REG"],
  ])("pin of a %d in bit", (bit, thread) => {
    expect(pinForBitSize(bit * inch)).toEqual({ decision: "settled", thread });
  });

  it("pin of a 5 1/8 in bit is asked for: sources disagree", () => {
    // pin.by-size.5.125, (b) API Spec 7-1 recalled against a trade reprint; must never be decided silently
    expect(pinForBitSize(5.125 * inch)).toEqual({ decision: "ask", candidates: ["2 7/8 REG", "3 1/2 REG"] });
  });
});
