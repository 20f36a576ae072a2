import { describe, expect, it } from "vitest";
import type { Band } from "../quantity/index.ts";
import type { Rock } from "./rock.ts";
import { rockById, rockIds, rockTable } from "./rock-table.ts";

const MET_BY_SHOPS = [
  ..."topsoil fill clay silt sand gravel boulders till chert claystone mudstone shale siltstone".split(" "),
  ..."soft-limestone limestone dolomite friable-sandstone sandstone hard-sandstone conglomerate coal".split(" "),
  ..."granite gneiss schist slate basalt quartzite marble gypsum anhydrite dacite tuff".split(" "),
];

const bandsOf = (rock: Rock): [string, Band][] =>
  Object.entries(rock).filter(
    (entry): entry is [string, Band] => typeof entry[1] === "object" && entry[1] !== null && "mid" in entry[1],
  );

describe("rock table", () => {
  it("has the ground that shops meet, each id once", () => {
    expect(MET_BY_SHOPS.filter((id) => !rockIds.includes(id))).toEqual([]);
    expect(new Set(rockIds).size).toBe(rockIds.length);
    expect(rockIds.every((id) => /^[a-z]+(-[a-z]+)*$/.test(id))).toBe(true);
  });

  it("names a source for every band", () => {
    for (const rock of rockTable) {
      const properties = bandsOf(rock).map(([property]) => property);
      expect(properties.length, rock.id).toBeGreaterThanOrEqual(13);
      expect(Object.keys(rock.sources).sort(), rock.id).toEqual([...properties].sort());
      for (const source of Object.values(rock.sources)) expect(source.cite.length, rock.id).toBeGreaterThan(10);
    }
  });

  it("keeps every band in the bounds of its quantity, so that no figure slipped by a power of ten", () => {
    const bounds: Readonly<Record<string, readonly [number, number]>> = {
      ucs: [1e4, 4e8],
      clastUcs: [1e7, 4e8],
      tensileStrength: [1e5, 4e7],
      frictionAngle: [0.15, 1.06],
      density: [900, 3200],
      quartzShare: [0, 1],
      equivalentQuartz: [0, 1],
      cerchar: [0, 6],
      flatFriction: [0.05, 1],
      faceFriction: [0.15, 0.5],
      kappa: [1, 10],
      specificEnergyRatio: [0.3, 3],
      contactStressRatio: [0.2, 4],
      thermalConductivity: [0.1, 8],
      thermalDiffusivity: [5e-8, 4e-6],
    };
    for (const rock of rockTable) {
      for (const [property, band] of bandsOf(rock)) {
        const [least, most] = bounds[property] ?? [Number.NaN, Number.NaN];
        expect(band.low, `${rock.id} ${property}`).toBeGreaterThanOrEqual(least);
        expect(band.high, `${rock.id} ${property}`).toBeLessThanOrEqual(most);
        expect(band.low <= band.mid && band.mid <= band.high, `${rock.id} ${property}`).toBe(true);
      }
    }
  });

  it("counts at least the quartz itself in the equivalent quartz", () => {
    for (const { id, quartzShare, equivalentQuartz } of rockTable) {
      expect(equivalentQuartz.mid, id).toBeGreaterThanOrEqual(quartzShare.mid);
    }
  });

  it("marks loose stones, cemented stones, chert and vein quartz as breaking cutters", () => {
    for (const id of ["gravel", "boulders", "till", "conglomerate", "chert", "quartzite"]) {
      expect(rockById(id).hazards, id).toContain("impact");
    }
    for (const id of ["shale", "limestone", "sandstone"]) expect(rockById(id).hazards, id).not.toContain("impact");
  });

  it("warns of dust wherever there is much quartz in solid rock", () => {
    const quartzRich = rockTable.filter((rock) => rock.family !== "soil" && rock.quartzShare.mid >= 0.5);
    expect(quartzRich.length).toBeGreaterThan(4);
    for (const rock of quartzRich) expect(rock.hazards, rock.id).toContain("silica-dust");
  });
});

describe("rockById", () => {
  it("finds a rock, the shop's own first", () => {
    expect(rockById("granite").family).toBe("igneous");
    const own = { ...rockById("shale"), name: "grey shale of the ridge" };
    expect(rockById("shale", [own]).name).toBe("grey shale of the ridge");
  });
  it("lists ids of like spelling for one it does not know", () => {
    expect(() => rockById("granit")).toThrow(/rockId "granit" is not in the rock table; near it: granite/);
    expect(() => rockById("limstone")).toThrow(/near it: limestone/);
  });
});
