import {
  drillAtAdvance,
  EDGE_ROUNDING,
  edgeWearRates,
  type GaugePads,
  grindingRatio,
  type Life,
  type LifeBed,
  type LifeInput,
  levelEdgeWear,
  life,
  practiceRotarySpeed,
  stateInBed,
  traceEdges,
  WEAR_POINTS,
  wornVolume,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { holdSection, table } from "../support/checks-page.ts";
import { expectClose } from "../support/close-to.ts";
import { degree, foot, footPerHour, inch, mm, rpm } from "../support/field-units.ts";
import { lifeOverWear } from "../support/life-over-wear.ts";
import { turned } from "../support/random-layout.ts";
import { usualBed, usualBit, usualLife, usualPads } from "../support/usual-bit.ts";

const holeArea = (Math.PI / 4) * usualBit.holeDiameter ** 2;
const total = (row: ArrayLike<number>) => Array.from(row).reduce((sum, value) => sum + value, 0);

/** A bed of one rock, turned as fast as the trade turns in ground of that strength. */
function ground(id: string): LifeBed {
  const bed = usualBed(id);
  return { ...bed, rotarySpeed: practiceRotarySpeed(bed.response.specificEnergy) };
}

const lived = (bed: LifeBed, more: Partial<LifeInput> = {}): Life => life(usualLife([bed], more));

// wear.g-ratio: derived.
it("rock drilled for each volume of diamond", () => {
  expectClose(grindingRatio({ rockVolume: 2e-6 * 3600, wornVolume: 0.05e-6 }), 144_000, 1e-6);
});

describe("life of the usual 6 1/8 in bit at a thousand pounds an inch", () => {
  const rocks = ["friable-sandstone", "shale", "limestone", "sandstone", "hard-sandstone", "granite"] as const;
  const feet = (of: Life) => of.footage / foot;
  const lives = new Map(rocks.map((id) => [id, lifeOverWear(usualLife([ground(id)]))]));
  const likely = (id: (typeof rocks)[number]): Life => {
    const found = lives.get(id);
    if (!found) throw new Error(`no life in ${id}`);
    return found.likely;
  };

  // Facts of the trade: a friendly sandstone allows tens of thousands of feet, a granite hundreds at most.
  it("tens of thousands of feet in a friendly sandstone, hundreds at most in granite", () => {
    expect(feet(likely("friable-sandstone"))).toBeGreaterThan(10_000);
    expect(feet(likely("friable-sandstone"))).toBeLessThan(100_000);
    expect(feet(likely("granite"))).toBeLessThan(1_000);
  });

  // Facts of the trade: PDC suits shale, limestone and sandstone, not hard abrasive sandstone and granite.
  it("shale and limestone outlast sandstone, sandstone outlasts cemented sandstone and granite", () => {
    expect(feet(likely("shale"))).toBeGreaterThan(feet(likely("sandstone")));
    expect(feet(likely("limestone"))).toBeGreaterThan(feet(likely("sandstone")));
    expect(feet(likely("sandstone"))).toBeGreaterThan(3 * feet(likely("hard-sandstone")));
    expect(feet(likely("sandstone"))).toBeGreaterThan(3 * feet(likely("granite")));
  });

  it("as the checks page shows it", () => {
    const whole = (value: number) => Number(value.toPrecision(2)).toLocaleString("en-US");
    const rows = rocks.map((id) => {
      const { short, likely: mid, long } = lives.get(id) ?? expect.fail(id);
      const first = mid.steps[0];
      const last = mid.steps[mid.steps.length - 1];
      return [
        ground(id).name,
        whole(feet(mid)),
        `${whole(feet(short))} to ${whole(feet(long))}`,
        mid.end.by,
        `${(first.rate / footPerHour).toFixed(0)} to ${(last.rate / footPerHour).toFixed(0)}`,
        `${mid.worn.innerGrade.toFixed(1)}, ${mid.worn.outerGrade.toFixed(1)}`,
        (last.hottestTemperature - 273.15).toFixed(0),
        grindingRatio({ rockVolume: holeArea * mid.footage, wornVolume: total(mid.wornVolumes) }).toExponential(0),
      ];
    });
    holdSection(
      "lives",
      table([
        ["rock", "feet", "over the band of the coefficient", "ended by", "rate, ft/h", "grades", "hottest, °C", "G"],
        ...rows,
      ]),
    );
  });
});

describe("what holds the gauge of that bit", () => {
  const feet = ({ footage }: Life) => footage / foot;
  const rocks = ["friable-sandstone", "sandstone", "granite"] as const;
  const { gaugePads: _, ...bare } = usualLife([]);
  const faces: readonly (readonly [name: string, GaugePads | undefined])[] = [
    ["none", undefined],
    ...(["hardfacing", "carbide", "diamond"] as const).map(
      (protection) => [`${protection}, 3/4 in`, { ...usualPads, protection }] as const,
    ),
    ["carbide, 2 in", { ...usualPads, length: 2 * inch }],
  ];
  const by = new Map(
    rocks.map((id) => [
      id,
      faces.map(([, gaugePads]) => life({ ...bare, beds: [ground(id)], ...(gaugePads ? { gaugePads } : {}) })),
    ]),
  );

  // Fact of the trade: granite allows hundreds of feet at most. That holds also where diamond pads keep the gauge.
  it("no pads of any kind get a thousand feet out of granite", () => {
    for (const of of by.get("granite") ?? expect.fail()) expect(feet(of)).toBeLessThan(1_000);
  });

  // Remedies of the trade for a worn gauge: harder pads, longer pads.
  it("the remedies of the trade keep it longer: a pad at all, a harder one, a longer one", () => {
    for (const lives of by.values()) {
      const [none, welded, carbide, diamond, long] = lives.map(feet);
      expect(welded).toBeGreaterThan(none);
      expect(carbide).toBeGreaterThan(welded);
      expect(diamond).toBeGreaterThan(carbide);
      expect(long).toBeGreaterThan(carbide);
    }
  });

  it("as the checks page shows it", () => {
    const whole = (value: number) => Number(value.toPrecision(2)).toLocaleString("en-US");
    const rows = rocks.map((id) => [
      ground(id).name,
      ...(by.get(id) ?? expect.fail(id)).map((of) => `${whole(feet(of))}, ${of.end.by}`),
    ]);
    holdSection("gauge pads", table([["rock, feet and end", ...faces.map(([name]) => name)], ...rows]));
  });
});

describe("what wear answers to", () => {
  const sandstone = ground("sandstone");

  it("more abrasive ground, shorter life, in step", () => {
    const [once, twice] = [1, 2].map((times) => lived({ ...sandstone, cerchar: times * sandstone.cerchar }).footage);
    // Cold wear alone would give a half; the flats of the longer life run no hotter.
    expectClose(twice / once, 0.5, 0.03);
  });

  it("more weight, more worn off in a time; and yet less for each foot while it cuts deeper", () => {
    const limestone = { ...ground("limestone"), limits: {} };
    const states = [0.5, 1, 2].map((times) => {
      const wear = usualBit.cutters.map(({ faceDiameter }) => levelEdgeWear({ faceDiameter, wornHeight: 0.5 * mm }));
      return stateInBed(
        {
          trace: traceEdges(usualBit, { wear }),
          fluidTemperature: 288,
          tableLimit: 1023.15,
          wearCoefficient: 2e-16,
          multipleAtLimit: 20,
        },
        { ...limestone, weight: times * limestone.weight },
      );
    });
    const perTime = states.map(({ wear, rate }) => total(wear.volumePerLength) * rate);
    const perFoot = states.map(({ wear }) => total(wear.volumePerLength));
    expect(perTime[1]).toBeGreaterThan(perTime[0]);
    expect(perTime[2]).toBeGreaterThan(perTime[1]);
    expect(perFoot[2]).toBeLessThan(perFoot[0]);
  });

  it("hotter flats, faster wear", () => {
    const hot = { ...ground("granite"), rotarySpeed: 160 * rpm };
    const wear = usualBit.cutters.map(({ faceDiameter }) => levelEdgeWear({ faceDiameter, wornHeight: 2 * mm }));
    const never = { grade: 8, undergauge: 1, rate: 1e-9, temperature: 5000 };
    const [cool, warm] = [1, 0.05].map((cooling) => {
      const input = usualLife([{ ...hot, bottom: 3 }], { holes: 1, wear, ends: never });
      return life({
        ...input,
        films: input.films?.map(({ coefficient, area }) => ({ coefficient: cooling * coefficient, area })) ?? [],
      });
    });
    expect(warm.steps[0].hottestTemperature).toBeGreaterThan(cool.steps[0].hottestTemperature + 50);
    expect(total(warm.wornVolumes)).toBeGreaterThan(1.2 * total(cool.wornVolumes));
  });

  it("a cutter that is worn ahead hands its cut, its load and its wear to those beside it", () => {
    const limestone = ground("limestone");
    // Two cutters of the shoulder share a track: what one does not take, the other must.
    const [one, other] = [10, 11];
    expectClose(usualBit.cutters[one].radius, usualBit.cutters[other].radius, 1e-9);
    const advance = 4 * mm;
    const at = (wornHeight: number) => {
      const wear = usualBit.cutters.map(({ faceDiameter }, i) =>
        levelEdgeWear({ faceDiameter, wornHeight: i === one ? wornHeight : 0.3 * mm }),
      );
      const trace = traceEdges(usualBit, { wear });
      const { response } = limestone;
      const state = drillAtAdvance({ trace, response }, advance);
      const coefficients = usualBit.cutters.map(() => 2e-16);
      const { lowering } = edgeWearRates({ trace, response, state, coefficients });
      return { area: state.engagement.area, load: state.loads.tangential, lowering };
    };
    const even = at(0.3 * mm);
    const ahead = at(1.2 * mm);
    expect(ahead.area[one]).toBeLessThan(0.8 * even.area[one]);
    expect(ahead.area[other]).toBeGreaterThan(1.1 * even.area[other]);
    expect(ahead.load[other]).toBeGreaterThan(1.1 * even.load[other]);
    expectClose(total(ahead.area), total(even.area), 1e-9);
    expect(total(ahead.lowering[one])).toBeLessThan(total(even.lowering[one]));
    // And in the march the others catch up: the lead shrinks.
    const wear = usualBit.cutters.map(({ faceDiameter }, i) =>
      levelEdgeWear({ faceDiameter, wornHeight: i === one ? 1.2 * mm : 0 }),
    );
    const { steps } = life(usualLife([limestone], { wear, holes: 40 }));
    const lead = ({ wornHeights }: { readonly wornHeights: readonly number[] }) =>
      wornHeights[one] - wornHeights[other];
    expect(lead(steps[steps.length - 1])).toBeLessThan(0.7 * lead(steps[0]));
  });

  it("turning the bit about its axis changes no life", () => {
    const short = { holes: 5 } as const;
    const [one, other] = [usualBit, turned(usualBit, 1.234)].map((layout) => lived(sandstone, { ...short, layout }));
    expectClose(other.timeOnBottom, one.timeOnBottom, 1e-6);
    expectClose(other.worn.outerGrade, one.worn.outerGrade, 1e-6);
  });
});

describe("the march", () => {
  // Archard's volume against the volume of the worn shapes, edge rounding counted, on a bit without bevels or side rake.
  it("takes off the edges what the law says it takes", () => {
    const plain = {
      ...usualBit,
      cutters: usualBit.cutters.map((cutter) => ({ ...cutter, chamferWidth: 0, sideRake: 0 })),
    };
    const limestone = ground("limestone");
    // No pads, and an end at 3.9 mm: more than half of it is what side force takes off the gauge beside the cut, so that
    // the edges by themselves have lost a sixteenth of an inch of diameter.
    const input = usualLife([limestone], { layout: plain, largestChange: 0.02 * mm, ends: { undergauge: 3.9 * mm } });
    const { gaugePads: _, ...bare } = input;
    const of = life(bare);
    expectClose(of.worn.undergauge - 2 * of.sideLoss, 1.6 * mm, 0.05);
    const worn = plain.cutters.map((cutter, i) => {
      const wear = of.wear[i];
      const point = (Math.PI / (WEAR_POINTS - 1)) * (cutter.faceDiameter / 2);
      const strip = wear.reduce((sum, height, j) => sum + height * Math.sin(j * degree) * point, 0);
      return wornVolume({ ...cutter, wear }) + strip * EDGE_ROUNDING * Math.cos(cutter.backRake);
    });
    // Cutters that look at the wall go on wearing past the last cell, where the law's sum does not see them.
    plain.cutters.forEach(({ profileAngle }, i) => {
      expectClose(of.wornVolumes[i], worn[i], profileAngle < 45 * degree ? 0.06 : 0.2);
    });
    expectClose(total(of.wornVolumes), total(worn), 0.08);
  });

  it("comes to rest as steps and cells shrink", () => {
    const rocks = ["limestone", "granite"] as const;
    const run = (id: (typeof rocks)[number], largestChange: number, cell: number) =>
      lived(ground(id), { largestChange, cells: Math.round(usualBit.holeDiameter / 2 / cell) });
    const rows: string[][] = [];
    for (const id of rocks) {
      const fine = run(id, 0.0125 * mm, 0.1 * mm);
      const off = ({ footage }: Life) => footage / fine.footage - 1;
      const steps = [0.4, 0.2, 0.1, 0.05, 0.025].map((change) => ({
        change,
        off: off(run(id, change * mm, 0.1 * mm)),
      }));
      const cells = [0.4, 0.2, 0.05].map((cell) => ({ cell, off: off(run(id, 0.1 * mm, cell * mm)) }));
      for (const each of steps) if (each.change <= 0.1) expect(Math.abs(each.off)).toBeLessThan(0.03);
      for (const each of cells) if (each.cell <= 0.2) expect(Math.abs(each.off)).toBeLessThan(0.2);
      const percent = (value: number) => `${(100 * value).toFixed(1)} %`;
      rows.push([id, ...steps.map((each) => percent(each.off)), ...cells.map((each) => percent(each.off))]);
    }
    holdSection(
      "life convergence",
      table([
        [
          "rock",
          ...[0.4, 0.2, 0.1, 0.05, 0.025].map((s) => `step ${s} mm`),
          ...[0.4, 0.2, 0.05].map((c) => `cell ${c} mm`),
        ],
        ...rows,
      ]),
    );
  });
});
