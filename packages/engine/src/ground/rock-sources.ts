import { band, commonPractice, derivedFrom, mapBand, readIn, recalledFrom, type Source } from "../quantity/index.ts";
import type { SourcedBand } from "./rock.ts";

/** Strength and tensile ranges by rock name, read on a secondary page. */
export const ATTEWELL_FARMER = readIn("teaching list after Attewell & Farmer 1976, seen second-hand");

/** Strength ranges of a second list, read on a secondary page. */
export const DAM_FOUNDATIONS = readIn("dam-foundation strength table, seen second-hand");

/** Strength, density, friction, quartz of the common rocks. */
export const ROCK_MECHANICS_TEXTS = recalledFrom(
  "Goodman 1989, Introduction to Rock Mechanics; Lama & Vutukuri 1978; Attewell & Farmer 1976",
);

/** Strength of clays by consistency. */
export const SOIL_CONSISTENCY = recalledFrom("Terzaghi & Peck 1967, consistency of clays by unconfined strength");

/** The strong end of the sandstones. */
export const UPPER_SANDSTONE = derivedFrom("upper part of the sandstone ranges of both strength lists");

/** Figures set by likeness with a rock that is better known. */
export const BY_ANALOGY = commonPractice("estimate by analogy with like ground, no source: wide band");

const CERCHAR_MEMORY = recalledFrom("weak memory of typical CERCHAR values by rock: a default, not a reference");
const ROSIWAL = derivedFrom(
  "quartz share plus the softer minerals at their Rosiwal grinding hardness (feldspar about 0.3), weak memory",
);
/** Conductivity and diffusivity of the common rocks. */
export const ROCK_CONDUCTION = recalledFrom("Clark 1966; Carslaw & Jaeger 1959");
const FACE_FRICTION_MEMORY = recalledFrom("weak memory: 15 to 20 degrees in most rock");
const FLAT_FRICTION_MIXED = recalledFrom(
  "weak memory, two ranges that disagree: 0.05 to 0.15 for polished flats in water, 0.3 to 1.0 for blunt cutters in single-cutter tests",
);
const KAPPA_READ = readIn("Detournay, Richard & Shepherd 2008: 1 to 10, worked example 5, seen in a transcription");
const SPECIFIC_ENERGY_SCRATCH = recalledFrom(
  "Richard et al. 2012, scratch tests: specific energy near the strength; open 3.75 in bit tests agree within about 20 %",
);
const CONTACT_READ = readIn(
  "Detournay, Richard & Shepherd 2008: contact strength about the UCS, seen in a transcription",
);

const DEGREE = Math.PI / 180;

/**
 * Heat that a cubic metre of rock takes up per kelvin, used to turn conductivity into diffusivity [J/(m³ K)].
 *
 * @source (b) weak memory: 2.0 to 2.5 million for most rock
 */
const VOLUMETRIC_HEAT = 2.2e6;

/**
 * A band of pressures written in megapascal.
 *
 * @source (d) one megapascal is 1e6 Pa
 */
export function megapascals(low: number, mid: number, high: number, source: Source): SourcedBand {
  return { band: band(low * 1e6, mid * 1e6, high * 1e6), source };
}

/**
 * A band of angles written in degrees.
 *
 * @source (d) one degree is π/180 rad
 */
export function degrees(low: number, mid: number, high: number, source: Source): SourcedBand {
  return { band: band(low * DEGREE, mid * DEGREE, high * DEGREE), source };
}

/**
 * A band already in SI, with its source.
 *
 * @source (d) arrangement only
 */
export function sourced(low: number, mid: number, high: number, source: Source): SourcedBand {
  return { band: band(low, mid, high), source };
}

/**
 * A band of typical CERCHAR indices.
 *
 * @source (b) weak memory of typical values by rock
 */
export function cerchar(low: number, mid: number, high: number): SourcedBand {
  return { band: band(low, mid, high), source: CERCHAR_MEMORY };
}

/**
 * A band of equivalent quartz shares.
 *
 * @source (d) mineral shares by Rosiwal hardness, weak memory
 */
export function equivalentQuartz(low: number, mid: number, high: number): SourcedBand {
  return { band: band(low, mid, high), source: ROSIWAL };
}

/**
 * Conductivity band with the diffusivity that goes with it, conductivity over volumetric heat.
 *
 * @source (b) Clark 1966; Carslaw & Jaeger 1959, recalled; other rocks by analogy
 */
export function thermal(
  low: number,
  mid: number,
  high: number,
  source: Source = ROCK_CONDUCTION,
): Readonly<Record<"thermalConductivity" | "thermalDiffusivity", SourcedBand>> {
  const conductivity = band(low, mid, high);
  return {
    thermalConductivity: { band: conductivity, source },
    thermalDiffusivity: {
      band: mapBand(conductivity, (value) => value / VOLUMETRIC_HEAT),
      source: derivedFrom("conductivity over a volumetric heat of 2.2 MJ/(m³ K), weak memory"),
    },
  };
}

/**
 * How a rock answers a diamond cutter: the flat friction is set by rock, the rest is one band for all rock because no
 * better is known.
 *
 * @source (b) see the sources of each band
 */
export function cutterAnswer(
  flatFrictionMid: number,
): Readonly<
  Record<"flatFriction" | "faceFriction" | "kappa" | "specificEnergyRatio" | "contactStressRatio", SourcedBand>
> {
  return {
    flatFriction: { band: band(0.08, flatFrictionMid, 0.6), source: FLAT_FRICTION_MIXED },
    faceFriction: degrees(13, 18, 23, FACE_FRICTION_MEMORY),
    kappa: { band: band(1, 5, 10), source: KAPPA_READ },
    specificEnergyRatio: { band: band(0.8, 1, 1.25), source: SPECIFIC_ENERGY_SCRATCH },
    contactStressRatio: { band: band(0.5, 1, 2), source: CONTACT_READ },
  };
}

/**
 * The same for loose ground, where a strength says little about the work of digging.
 *
 * @source (c) estimate by analogy, no source
 */
export function looseCutterAnswer(
  flatFrictionMid: number,
): Readonly<
  Record<"flatFriction" | "faceFriction" | "kappa" | "specificEnergyRatio" | "contactStressRatio", SourcedBand>
> {
  return {
    ...cutterAnswer(flatFrictionMid),
    specificEnergyRatio: { band: band(0.5, 1, 2), source: BY_ANALOGY },
    contactStressRatio: { band: band(0.3, 1, 3), source: BY_ANALOGY },
  };
}
