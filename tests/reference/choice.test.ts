/**
 * Choice by computing against what the trade knows of bits, none of which is typed in: a larger bevel is slower and tougher,
 * a lower rake faster, a sixth wing takes from slots and ports, the outer cutters do most of the work, and more weight than
 * the heat allows wears the diamond by heat. Common practice, no source; directions, no figures. The cost of a ranked bit is worked
 * once more by hand, and the staged search is held to the whole one.
 */
import {
  type BitLayout,
  bedCrossing,
  criticalWeights,
  drillAtWeight,
  FILM_COEFFICIENT_RANGE,
  life,
  steadyDrilling,
  traceEdges,
  usualCoolingFilm,
  WEAR_QUICKENS_TEMPERATURE,
} from "@bitwright/engine";
import { type ChoiceStudy, choiceStudy, parseTraveler, type Workup, workUp } from "@bitwright/traveler";
import { beforeAll, describe, expect, it } from "vitest";
import { holdSection, table } from "../support/checks-page.ts";
import { expectClose } from "../support/close-to.ts";
import { DEMOS, demoWorkup } from "../support/demo-workup.ts";
import { degree, foot, mm, rpm } from "../support/field-units.ts";
import { soundTraveler } from "../support/sound-traveler.ts";

const workups = new Map<string, Workup>();
beforeAll(() => {
  for (const name of DEMOS) workups.set(name, demoWorkup(name));
});
const workupOf = (name: string) => workups.get(name) ?? expect.fail(`no ${name}`);

/** The bit of a workup, as if it were new, with every cutter changed alike. */
function changed({ bit }: Workup, change: (cutter: BitLayout["cutters"][number]) => object): BitLayout {
  return {
    ...bit.layout,
    cutters: bit.layout.cutters.map((cutter) => ({ ...cutter, wornHeight: 0, ...change(cutter) })),
  };
}

describe.each(DEMOS)("what the trade knows of bits, on the bit of %s", (name) => {
  /** Bevels that rub: slighter ones cut as a part of the face (docs/decisions/2026-11-25-slight-bevels.md). */
  const bevels = [20, 25, 30, 45].map((angle) => ({ chamferAngle: angle * degree, chamferWidth: 0.5 * mm }));

  it("a larger bevel is slower under the same weight, in every bed", () => {
    const workup = workupOf(name);
    for (const { ground, weight } of workup.cut.beds) {
      const advances = bevels.map((bevel) => {
        const trace = traceEdges(changed(workup, () => bevel));
        return drillAtWeight({ trace, response: ground.response.mid }, weight).advance;
      });
      for (let k = 1; k < advances.length; k++) expect(advances[k]).toBeLessThan(advances[k - 1]);
    }
  });

  it("and tougher: the hardest pressed cutter takes less going into the harder bed, under the same weight", () => {
    const workup = workupOf(name);
    const { beds } = workup.cut;
    const into = beds.findIndex(
      ({ ground }, at) =>
        at > 0 && ground.response.mid.specificEnergy > 1.2 * beds[at - 1].ground.response.mid.specificEnergy,
    );
    expect(into).toBeGreaterThan(0);
    const [above, below] = [beds[into - 1], beds[into]];
    const peaks = bevels.map((bevel) => {
      const trace = traceEdges(changed(workup, () => bevel));
      const { weight } = above;
      return bedCrossing({ trace, above: above.ground.response.mid, below: below.ground.response.mid, weight }).peak
        .force;
    });
    for (let k = 1; k < peaks.length; k++) expect(peaks[k]).toBeLessThan(peaks[k - 1]);
  });

  it("a lower back rake is faster under the same weight, in every bed", () => {
    const workup = workupOf(name);
    for (const { ground, weight } of workup.cut.beds) {
      const advances = [-5, 0, 5].map((more) => {
        const layout = changed(workup, ({ backRake }) => ({ backRake: backRake + more * degree }));
        return drillAtWeight({ trace: traceEdges(layout), response: ground.response.mid }, weight).advance;
      });
      expect(advances[1]).toBeLessThan(advances[0]);
      expect(advances[2]).toBeLessThan(advances[1]);
    }
  });

  it("the outer cutters do most of the work", () => {
    const workup = workupOf(name);
    const { cutters } = workup.bit.layout;
    const radii = cutters.map(({ radius }) => radius).sort((a, b) => a - b);
    const middle = radii[Math.floor(radii.length / 2)];
    for (const { drilling } of workup.cut.beds) {
      const work = (outer: boolean) =>
        drilling.cutters
          .filter((_, at) => cutters[at].radius >= middle === outer)
          .reduce((sum, { power }) => sum + power, 0);
      // Half of the cutters, two thirds of the work and more.
      expect(work(true)).toBeGreaterThan(2 * work(false));
    }
  });

  it("more weight than the heat allows wears the diamond faster than its load does, less does not", () => {
    const workup = workupOf(name);
    const { inquiry, cut, life: station } = workup;
    const hardest = cut.beds.reduce((most, one) =>
      one.ground.response.mid.specificEnergy > most.ground.response.mid.specificEnergy ? one : most,
    );
    const bed = station.beds[cut.beds.indexOf(hardest)] ?? expect.fail("no bed");
    // A quarter of every face gone, hardly any flow, which is the low end of what cools a cutter, three times the usual speed.
    const layout = changed(workup, ({ faceDiameter }) => ({ wornHeight: faceDiameter / 4 }));
    const films = layout.cutters.map(({ faceDiameter }) => ({
      ...usualCoolingFilm(faceDiameter),
      coefficient: FILM_COEFFICIENT_RANGE.low,
    }));
    const rotarySpeed = 300 * rpm;
    const { temperature: fluidTemperature } = inquiry.inquiry.fluid;
    const heat = { rock: bed.rock, fluidTemperature, film: films };
    const [critical] = criticalWeights({
      trace: traceEdges(layout),
      response: bed.response,
      heat,
      temperature: WEAR_QUICKENS_TEMPERATURE,
      rotarySpeeds: [rotarySpeed],
    });
    const allowed = critical?.weight ?? expect.fail("no weight gets it so hot");
    /** What wears off in the first foot, with the law's quickening by heat and without. */
    const wornIn = (weight: number, multipleAtLimit?: number) =>
      life({
        layout,
        beds: [{ ...bed, bottom: bed.top + foot, limits: {}, rotarySpeed, weight }],
        fluidTemperature,
        films,
        ...(multipleAtLimit === undefined ? {} : { multipleAtLimit }),
      }).wornVolumes.reduce((sum, volume) => sum + volume, 0);
    const codes = (weight: number) =>
      steadyDrilling({ layout, response: bed.response, weight, rotarySpeed, heat }).findings.map(({ code }) => code);
    expect(codes(1.2 * allowed)).toContain("wear-quickens");
    expect(wornIn(1.2 * allowed)).toBeGreaterThan(1.01 * wornIn(1.2 * allowed, 1));
    expect(codes(0.9 * allowed)).not.toContain("wear-quickens");
    expectClose(wornIn(0.9 * allowed), wornIn(0.9 * allowed, 1), 1e-9);
  });
});

describe("docs/guide/checks.md", () => {
  it("tells how much each of these moves", () => {
    const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
    const rows = DEMOS.map((name) => {
      const workup = workupOf(name);
      const { beds } = workup.cut;
      const advance = (layout: BitLayout, { ground, weight }: (typeof beds)[number]) =>
        drillAtWeight({ trace: traceEdges(layout), response: ground.response.mid }, weight).advance;
      const over = (layout: BitLayout, plain: BitLayout) =>
        mean(beds.map((bed) => advance(layout, bed) / advance(plain, bed) - 1));
      const bevelled = (angle: number) =>
        changed(workup, () => ({ chamferAngle: angle * degree, chamferWidth: 0.5 * mm }));
      const raked = (more: number) => changed(workup, ({ backRake }) => ({ backRake: backRake + more * degree }));
      const outer = beds.map(({ drilling }) => {
        const { cutters } = workup.bit.layout;
        const radii = cutters.map(({ radius }) => radius).sort((a, b) => a - b);
        const middle = radii[Math.floor(radii.length / 2)];
        const work = drilling.cutters.map(({ power }) => power);
        const all = work.reduce((sum, power) => sum + power, 0);
        return work.reduce((sum, power, at) => sum + (cutters[at].radius >= middle ? power : 0), 0) / all;
      });
      return [
        name,
        percent(over(bevelled(45), bevelled(20))),
        percent(over(raked(-5), raked(0))),
        percent(over(raked(5), raked(0))),
        percent(mean(outer)),
      ];
    });
    holdSection(
      "choice",
      table([
        [
          "demo",
          "rate, 45° bevel against 20°",
          "rate, 5° less rake",
          "rate, 5° more rake",
          "work of the outer half of the cutters",
        ],
        ...rows,
      ]),
    );
  });
});

describe("a sixth wing", () => {
  it("takes from slots and from ports", () => {
    const withWings = (wings: number) => {
      const traveler = soundTraveler();
      const read = parseTraveler({ ...traveler, bit: { spec: { cutter: "1308", wings } } });
      if (!read.ok) throw new Error("the sound traveler is not sound");
      return workUp(read).bit.review.body;
    };
    const [five, six] = [withWings(5), withWings(6)];
    expect(six.slotArea).toBeLessThan(five.slotArea ?? 0);
    expect(six.largestPort).toBeLessThan(five.largestPort ?? 0);
  });
});

describe("candidates of a loop hole, ranked", () => {
  const limits = { wings: [4, 5] };
  let staged: ChoiceStudy;
  let whole: ChoiceStudy;
  beforeAll(() => {
    const workup = workupOf("loop-hole");
    staged = choiceStudy(workup, { limits }) ?? expect.fail("nothing is drilled");
    whole = choiceStudy(workup, { limits, whole: true }) ?? expect.fail("nothing is drilled");
  }, 120_000);

  it("the staged search finds the bit that the whole one finds, and looks at fewer", () => {
    expect(whole.looked).toBe(2 * 3 * 4);
    expect(staged.looked).toBeLessThan(whole.looked);
    const [found, best] = [staged, whole].map(({ ranking }) => ranking.ranked[0].candidate);
    expect(found.choices).toEqual(best.choices);
    expect(found.figures).toEqual(best.figures);
    const cheapest = best.figures.costPerLength.mid;
    // What it left out costs more, and no more than the allowance says is any choice seen to take off.
    for (const { candidate } of whole.ranking.ranked) {
      expect(candidate.figures.costPerLength.mid).toBeGreaterThanOrEqual(cheapest);
    }
  });

  it("cost what bit, time, trips and connections come to", () => {
    for (const { candidate } of whole.ranking.ranked) {
      const { bitPrice, pulledAt, timeOnBottom, costPerLength, cutters } = candidate.figures;
      // 600 $ for a 6 in body with the cross-section; 25 $ a cutter, 10 $ to seat it; 110 $ of hardfacing.
      expectClose(bitPrice, 600 * (4.75 / 6) ** 2 + 35 * cutters + 110, 1e-9);
      // 350 $/h and 7 gal/h at 4 $; 1.5 h for each hole from 54 to 300 ft, 2 min for each joint of 10 ft.
      const perHour = 350 + 28;
      const hours = timeOnBottom / 3600;
      const feet = pulledAt / foot;
      const cost = bitPrice / feet + perHour * (hours / feet + 1.5 / 246 + 2 / 60 / 10);
      expectClose(costPerLength.mid * foot, cost, 1e-9);
    }
  });

  it("cost less the slower bits wear", () => {
    for (const { candidate } of whole.ranking.ranked) {
      const { low, mid, high } = candidate.figures.costPerLength;
      expect(low).toBeLessThan(mid);
      expect(mid).toBeLessThan(high);
    }
  });
});
