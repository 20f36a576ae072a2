import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { mm, rpm } from "../../../../tests/support/field-units.ts";
import { usualBed, usualBit } from "../../../../tests/support/usual-bit.ts";
import {
  contactTemperatures,
  drillAtWeight,
  traceEdges,
  usualCoolingFilm,
  WEAR_QUICKENS_TEMPERATURE,
} from "../cutting/index.ts";
import { criticalWeights } from "./critical-weight.ts";

const { response, rock } = usualBed("granite");
const fluidTemperature = 288;
const rotarySpeeds = [60, 90, 120, 200].map((turns) => turns * rpm);
const traceOf = (wornHeight: number) =>
  traceEdges({ ...usualBit, cutters: usualBit.cutters.map((cutter) => ({ ...cutter, wornHeight })) }, { cells: 260 });
const worn = traceOf(2.5 * mm);
const curve = (trace = worn, cooling = 1, temperature = WEAR_QUICKENS_TEMPERATURE) => {
  const film = usualBit.cutters.map(({ faceDiameter }) => {
    const { coefficient, area } = usualCoolingFilm(faceDiameter);
    return { coefficient: cooling * coefficient, area };
  });
  return criticalWeights({ trace, response, heat: { rock, fluidTemperature, film }, rotarySpeeds, temperature });
};

describe("criticalWeights", () => {
  it("gives the weight at which the hottest cutter really is that hot", () => {
    for (const { weight = Number.NaN, rotarySpeed, cutter = 0 } of curve(worn, 0.1)) {
      const { loads } = drillAtWeight({ trace: worn, response }, weight);
      const film = usualBit.cutters.map(({ faceDiameter }) => ({
        ...usualCoolingFilm(faceDiameter),
        coefficient: 1e3,
      }));
      const temperatures = contactTemperatures(loads, {
        response,
        rotarySpeed,
        heat: { rock, fluidTemperature, film },
      });
      expectClose(Math.max(...temperatures), WEAR_QUICKENS_TEMPERATURE, 1e-6);
      expectClose(temperatures[cutter - 1], WEAR_QUICKENS_TEMPERATURE, 1e-6);
    }
  });

  it("allows less weight the faster the bit turns, and less with less flow", () => {
    const weights = curve(worn, 0.1).map(({ weight }) => weight ?? Number.POSITIVE_INFINITY);
    for (let k = 1; k < weights.length; k++) expect(weights[k]).toBeLessThan(weights[k - 1]);
    curve(worn, 1).forEach(({ weight = Number.POSITIVE_INFINITY }, k) => {
      expect(weight).toBeGreaterThan(weights[k]);
    });
  });

  it("allows more weight to 750 °C than to 350 °C, and none at all hurts a bit whose flats cannot get so hot", () => {
    const [to350, to750] = [WEAR_QUICKENS_TEMPERATURE, 1023.15].map((temperature) => curve(worn, 0.1, temperature));
    to750.forEach(({ weight = Number.POSITIVE_INFINITY }, k) => {
      expect(weight).toBeGreaterThan(to350[k].weight ?? 0);
    });
    expect(curve(traceOf(0.05 * mm)).every(({ weight }) => weight === undefined)).toBe(true);
  });

  it("refuses a temperature that is not over the fluid's", () => {
    expect(() => curve(worn, 1, 280)).toThrow("temperature over the fluid must be positive");
  });
});
