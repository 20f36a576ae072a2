/** Confinement, abrasivity and the strength table against published values; sources beside each. */
import {
  abrasivityClass,
  cercharClass,
  confinedStrength,
  rockAbrasivityIndex,
  rockById,
  rockTable,
} from "@bitwright/engine";
import { describe, expect, it } from "vitest";
import { expectClose } from "../support/close-to.ts";
import { degree, MPa } from "../support/field-units.ts";

describe("confined strength (Caicedo, Calhoun & Ewy 2005, form recalled; values derived)", () => {
  it.each([
    { ucs: 50, pressure: 2, friction: 30, confined: 56 },
    { ucs: 80, pressure: 10, friction: 35, confined: 116.9017 },
  ])("$ucs MPa under $pressure MPa at $friction degrees", ({ ucs, pressure, friction, confined }) => {
    const strength = confinedStrength({
      ucs: ucs * MPa,
      pressureDifference: pressure * MPa,
      frictionAngle: friction * degree,
    });
    expectClose(strength / MPa, confined, 1e-5);
  });
});

describe("abrasivity", () => {
  it("rock abrasivity index and its class (Plinninger 2010, recalled)", () => {
    const index = rockAbrasivityIndex({ ucs: 150 * MPa, equivalentQuartz: 0.55 });
    expectClose(index, 82.5, 1e-3);
    expect(abrasivityClass(index)).toBe("very abrasive");
  });

  it("CERCHAR classes (ISRM 2014 limits recalled; test of ASTM D7625-10)", () => {
    expect([0.3, 0.7, 1.5, 2.5, 3.5, 4.5, 5.5].map(cercharClass)).toEqual([
      "extremely low",
      "very low",
      "low",
      "medium",
      "high",
      "very high",
      "extreme",
    ]);
  });
});

describe("strength ranges of the rock table", () => {
  /** MPa; A: teaching list after Attewell & Farmer 1976, B: dam-foundation table; both read second-hand. */
  const RANGES = [
    { id: "shale", low: 5, high: 100, source: "A" },
    { id: "siltstone", low: 24, high: 120, source: "B" },
    { id: "limestone", low: 30, high: 250, source: "A" },
    { id: "dolomite", low: 50, high: 150, source: "B" },
    { id: "sandstone", low: 20, high: 170, source: "A" },
    { id: "granite", low: 100, high: 250, source: "A" },
    { id: "basalt", low: 100, high: 300, source: "A" },
    { id: "quartzite", low: 150, high: 300, source: "A" },
    { id: "slate", low: 100, high: 200, source: "A" },
    { id: "gneiss", low: 80, high: 330, source: "B" },
  ];

  it.each(RANGES)("$id as in list $source", ({ id, low, high }) => {
    const { ucs } = rockById(id);
    expectClose(ucs.low / MPa, low, 1e-9);
    expectClose(ucs.high / MPa, high, 1e-9);
  });

  it("hold the rocks of the bit tests: Sierra White granite 150 MPa (Ye & Ghassemi 2018) and 193, Berea sandstone 49", () => {
    for (const tested of [150, 193]) {
      expect(rockById("granite").ucs.low).toBeLessThan(tested * MPa);
      expect(rockById("granite").ucs.high).toBeGreaterThan(tested * MPa);
    }
    expect(rockById("sandstone").ucs.low).toBeLessThan(49 * MPa);
    expect(rockById("sandstone").ucs.high).toBeGreaterThan(49 * MPa);
  });
});

describe("friction of a flat in water (carbide on rock, Wear 253:1219, 2002: order only)", () => {
  it("is highest on granite and lowest on quartzite", () => {
    const friction = (id: string) => rockById(id).flatFriction.mid;
    for (const rock of rockTable) {
      expect(friction("granite"), rock.id).toBeGreaterThanOrEqual(rock.flatFriction.mid);
      expect(friction("quartzite"), rock.id).toBeLessThanOrEqual(rock.flatFriction.mid);
    }
  });
});
