import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { gpm } from "../../../../tests/support/field-units.ts";
import { usualBit } from "../../../../tests/support/usual-bit.ts";
import { cutterThermalResponse, FILM_COEFFICIENT_RANGE } from "../cutting/index.ts";
import { cutterFilms } from "./cutter-films.ts";
import { filmCoefficient } from "./film-coefficient.ts";

const water = { density: 1000, viscosity: 1e-3 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("filmCoefficient", () => {
  it("grows as the speed to 0.8 in turbulent flow and stays in its range", () => {
    const at = (speed: number) => filmCoefficient({ ...water, speed, hydraulicDiameter: 0.02 });
    expectClose(at(4) / at(2), 2 ** 0.8, 1e-9);
    expect(at(1e-6)).toBe(FILM_COEFFICIENT_RANGE.low);
    expect(at(1e4)).toBe(FILM_COEFFICIENT_RANGE.high);
  });

  it("never cools worse the faster the fluid", () => {
    fc.assert(
      fc.property(
        between(0.01, 50),
        between(0.005, 0.05),
        between(5e-4, 0.05),
        (speed, hydraulicDiameter, viscosity) => {
          const at = (factor: number) =>
            filmCoefficient({ density: 1050, viscosity, speed: factor * speed, hydraulicDiameter });
          expect(at(1.5)).toBeGreaterThanOrEqual(at(1));
        },
      ),
    );
  });

  it("helps little past 5 W/(cm²·K), where the carbide itself holds the heat", () => {
    const response = (coefficient: number) =>
      cutterThermalResponse({ flatArea: 9e-6, cutterConductivity: 100, film: { coefficient, area: 2.8e-4 } });
    expect(1 - response(1e5) / response(5e4)).toBeLessThan(0.03);
    expect(1 - response(1e4) / response(1e3)).toBeGreaterThan(0.5);
  });
});

describe("cutterFilms", () => {
  const wash = { layout: usualBit, flow: 150 * gpm, slotArea: 1.1e-2, wings: 5, fluid: water };

  it("washes all wings alike where nothing else is known, and says when some slots have no port", () => {
    const { films, slotSpeeds, findings } = cutterFilms(wash);
    expect(films.length).toBe(usualBit.cutters.length);
    expectClose(slotSpeeds[0], (150 * gpm) / 1.1e-2, 1e-9);
    expect(new Set(films.map(({ coefficient }) => coefficient)).size).toBe(1);
    expect(findings).toEqual([]);
    expect(cutterFilms({ ...wash, portCount: 3 }).findings[0].code).toBe("slots-without-port");
  });

  it("can be reckoned again from what its working lists", () => {
    const fluid = { density: 1100, viscosity: 0.005, conductivity: 0.5, heatCapacity: 3500 };
    const [{ inputs, value }] = cutterFilms({ ...wash, fluid }).working;
    const of = (symbol: string) => inputs.find((input) => input.symbol === symbol)?.value ?? expect.fail(symbol);
    const turbulent = 0.023 * ((of("ρ") * of("v") * of("D")) / of("η")) ** 0.8 * ((of("c") * of("η")) / of("k")) ** 0.4;
    expectClose(value, (Math.max(of("Nu_0"), turbulent) * of("k")) / of("D"), 1e-12);
    expect(of("c")).toBe(3500);
  });

  it("cools the cutters of a wing by the flow in its own slot", () => {
    const { films } = cutterFilms({ ...wash, flowShares: [0.4, 0.15, 0.15, 0.15, 0.15] });
    const best = Math.max(...films.map(({ coefficient }) => coefficient));
    usualBit.cutters.forEach(({ wing }, i) => {
      expect(films[i].coefficient === best).toBe(wing === 1);
    });
    expect(() => cutterFilms({ ...wash, flowShares: [1] })).toThrow("each of 5 wings, got 1");
  });
});
