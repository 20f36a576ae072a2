import {
  type BitLayout,
  bitBody,
  catalogCutter,
  exactBand,
  type GaugePads,
  generateLayout,
  type LifeBed,
  type LifeInput,
  practiceWeight,
  rockById,
  rockResponse,
  usualCoolingFilm,
  usualRakes,
} from "@bitwright/engine";
import { degree, foot, footPerHour, inch, MPa, mm, rpm } from "./field-units.ts";

/** The usual 6 1/8 in bit of a water-well shop: five wings of three 1308 cutters with a 16° bevel. */
export const usualBit: BitLayout = generateLayout({
  holeDiameter: 6.125 * inch,
  profile: { shape: "step" },
  wings: { wings: 5, cuttersPerWing: 3 },
  cutter: catalogCutter("1308", { chamferAngle: 16 * degree }),
  rakes: usualRakes(),
  material: "steel",
}).layout;

/** One rock as a bed of 100 ft, drilled at the weight and within the rate that the trade calls usual. */
export function usualBed(id: string, { strength, turns = 90 }: { strength?: number; turns?: number } = {}): LifeBed {
  const rock = rockById(id);
  const confinedStrength = exactBand(strength === undefined ? rock.ucs.mid : strength * MPa);
  return {
    name: rock.name,
    top: 0,
    bottom: 100 * foot,
    response: rockResponse({ rock, confinedStrength }).mid,
    cerchar: rock.cerchar.mid,
    rock: { conductivity: rock.thermalConductivity.mid, diffusivity: rock.thermalDiffusivity.mid },
    weight: practiceWeight(usualBit.holeDiameter),
    rotarySpeed: turns * rpm,
    // What pump and crew keep up with; faster is not drilled, however soft the ground.
    limits: { rate: 150 * footPerHour },
  };
}

const usualBody = bitBody({ layout: usualBit, material: "steel", ports: { count: 5, diameter: 10 * mm } });

/** Three quarters of an inch of pad on each wing, set with carbide. */
export const usualPads: GaugePads = {
  count: usualBody.wings,
  length: 0.75 * inch,
  width: usualBody.wingThickness,
  protection: "carbide",
};

/** The usual bit in beds, new, cooled and as far out of its wings as usual. */
export function usualLife(beds: readonly LifeBed[], more: Partial<LifeInput> = {}): LifeInput {
  return {
    layout: usualBit,
    beds,
    holes: 10_000,
    fluidTemperature: 288,
    films: usualBit.cutters.map(({ faceDiameter }) => usualCoolingFilm(faceDiameter)),
    exposure: usualBody.exposure,
    gaugePads: usualPads,
    ...more,
  };
}
