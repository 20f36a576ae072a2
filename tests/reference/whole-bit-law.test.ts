import {
  type BitLayout,
  bitConstantOfSpread,
  bitLaw,
  bitLawAtWeight,
  cuttingRatio,
  drillAtAdvance,
  drillAtWeight,
  drillingSpecificEnergy,
  drillingStrength,
  frictionLineOrigin,
  type RockResponse,
  traceEdges,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { holdSection, table } from "../support/checks-page.ts";
import { expectClose } from "../support/close-to.ts";
import { degree, inch, MPa, mm } from "../support/field-units.ts";
import { coveringCutters } from "../support/random-layout.ts";
import { straightBlades } from "../support/straight-blades.ts";

// Source of the closed forms: Detournay, Richard & Shepherd 2008, Int. J. Rock Mech. Min. Sci. 45:1347-1360, equations
// 12, 25, 28, 33, and Detournay & Defourny 1992 (recalled) for the friction line.
const rock: RockResponse = {
  specificEnergy: 171.4286 * MPa,
  contactStress: 60 * MPa,
  faceFriction: 18 * degree,
  flatFriction: 0.3,
  kappa: 5,
};
const holeRadius = (8.5 / 2) * inch;
const backRake = 15 * degree;
const zeta = cuttingRatio({ backRake, faceFriction: rock.faceFriction });

const energies = (state: ReturnType<typeof drillAtAdvance>, radius: number) => ({
  energy: drillingSpecificEnergy({ torque: state.bit.torque, advance: state.advance, holeRadius: radius }),
  strength: drillingStrength({ weight: state.bit.weight, advance: state.advance, holeRadius: radius }),
});

describe("straight blades with even flats are the closed form", () => {
  // Exact algebra on both sides, so the tolerance is that of the sums.
  const tolerance = 1e-9;

  for (const blades of [1, 3, 5]) {
    const flatLength = (2 * mm) / blades;
    const bit = { trace: straightBlades({ holeRadius, backRake, blades, flatLength }), response: rock };
    const blunt = { holeRadius, cuttingRatio: zeta, bluntLength: 2 * mm, bitConstant: bitConstantOfSpread(0) };
    const law = bitLaw(blunt, rock);

    it(`${blades} blades: same advance and torque at every weight of phases I and II`, () => {
      for (const share of [0.05, 0.5, 0.99, 1.01, 1.5, 4]) {
        const weight = share * law.kneeLoad * holeRadius;
        const closed = bitLawAtWeight(blunt, rock, weight);
        const summed = drillAtWeight(bit, weight);
        expectClose(summed.advance, closed.advance, 1e-8);
        expectClose(summed.bit.torque, closed.torque, 1e-8);
        expect(closed.phase).toBe(share < 1 ? "I" : "II");
      }
    });

    it(`${blades} blades: slope S* up to the knee at d* = l/κ, ζ ε beyond it, E on the friction line throughout`, () => {
      const loadAt = (advance: number) => drillAtAdvance(bit, advance).bit.weight / holeRadius;
      const knee = law.kneeAdvance;
      expectClose(loadAt(knee) / knee, law.strengthOfContact, tolerance);
      expectClose(loadAt(0.3 * knee) / (0.3 * knee), law.strengthOfContact, tolerance);
      expectClose((loadAt(3 * knee) - loadAt(2 * knee)) / knee, zeta * rock.specificEnergy, tolerance);
      for (const share of [0.2, 0.9, 1.1, 3, 20]) {
        const { energy, strength } = energies(drillAtAdvance(bit, share * knee), holeRadius);
        expectClose(energy, law.energyOrigin + rock.flatFriction * strength, tolerance);
      }
    });
  }
});

/**
 * A flat-profile bit of round cutters so worn and so close that only their chords touch rock. Flats differ along each
 * chord, so the knee is smeared; the edge in the rock is level, so nothing is lost sideways.
 */
const wornBit: BitLayout = {
  holeDiameter: 2 * holeRadius,
  cutters: coveringCutters(holeRadius, 19.05 * mm).map((cutter) => ({
    ...cutter,
    backRake,
    sideRake: 0,
    chamferWidth: 0,
    wornHeight: 2.5 * mm,
  })),
};

/** The same bit unworn: round edges leave a scalloped bottom. */
const roundBit: BitLayout = { ...wornBit, cutters: wornBit.cutters.map((cutter) => ({ ...cutter, wornHeight: 0 })) };

describe("round cutters on a flat profile keep to the friction line", () => {
  const advances = [0.1, 0.3, 1, 2, 4].map((d) => d * mm);
  const stateOf = (layout: BitLayout) => {
    const trace = traceEdges(layout);
    const covered = trace.firstPass.findIndex((k) => k > 0) - 1;
    return advances.map((advance) => {
      const state = drillAtAdvance({ trace, response: rock }, advance);
      const { energy, strength } = energies(state, holeRadius);
      // γ of this state, from where its own contact load sits.
      const contact = state.loads.contactNormal;
      const turning = state.loads.torque.map(
        (torque, i) => torque - (rock.specificEnergy * state.engagement.volume[i]) / (2 * Math.PI),
      );
      const load = contact.reduce((sum, value) => sum + value, 0);
      const lever = turning.reduce((sum, value) => sum + value, 0) / rock.flatFriction;
      const bitConstant = load > 0 ? (2 * lever) / (holeRadius * load) : 1;
      const origin = frictionLineOrigin({ ...rock, cuttingRatio: zeta, bitConstant });
      return { advance, energy, strength, origin, bitConstant, core: covered * trace.cellWidth };
    });
  };
  const worn = stateOf(wornBit);
  const round = stateOf(roundBit);
  const offLine = (points: typeof worn) =>
    points.map(
      ({ energy, strength, origin, bitConstant }) => energy / (origin + rock.flatFriction * bitConstant * strength) - 1,
    );

  it("worn to level chords: within 1 %", () => {
    // Left over: the thin core that no leaning face sweeps, which E and S count as cut.
    for (const difference of offLine(worn)) expect(Math.abs(difference)).toBeLessThan(0.01);
  });

  it("unworn and round: above the line by what scallops push sideways, no more than 3 %", () => {
    // On a scallop's flank part of the normal load acts across the bit and is no weight: S falls, E stays. The closed form
    // knows level edges only, so a round bit takes less weight for the same cut than ζ ε a d.
    for (const difference of offLine(round)) {
      expect(difference).toBeGreaterThan(-1e-3);
      expect(difference).toBeLessThan(0.03);
    }
    for (const { energy } of round) expectClose(energy, rock.specificEnergy, 0.01);
  });

  it("slope of phase II of the worn bit is ζ ε within 5 %", () => {
    // κ is set high so that the longest flats bear fully before the cut grows past the chords. The slope comes out low: a
    // deeper cut takes in more of the flanks beside the chords, which press sideways.
    const bit = { trace: traceEdges(wornBit), response: { ...rock, kappa: 20 } };
    const loadAt = (advance: number) => drillAtAdvance(bit, advance).bit.weight / holeRadius;
    expectClose((loadAt(2 * mm) - loadAt(1 * mm)) / mm, zeta * rock.specificEnergy, 0.05);
  });

  it("stands in the guide as found", () => {
    const rows = (name: string, points: typeof worn) =>
      points.map(({ advance, energy, strength, bitConstant }, i) => [
        name,
        (advance / mm).toFixed(1),
        (strength / MPa).toFixed(0),
        (energy / MPa).toFixed(0),
        bitConstant.toFixed(2),
        `${(100 * offLine(points)[i]).toFixed(1)} %`,
      ]);
    holdSection(
      "friction line",
      table([
        ["bit", "advance, mm/rev", "S, MPa", "E, MPa", "γ", "E against the line"],
        ...rows("worn to level chords", worn),
        ...rows("unworn, round", round),
      ]),
    );
  });
});
