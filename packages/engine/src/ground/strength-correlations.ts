import { commonPractice, readIn, recalledFrom, type Source } from "../quantity/index.ts";

/** What a log or a core test gives: sonic slowness, stiffness, porosity, or the speed of the sound wave. */
export type LogInputKind = "slowness" | "youngsModulus" | "porosity" | "velocity";

/** SI unit of each kind of input. */
export const LOG_INPUT_UNITS: Readonly<Record<LogInputKind, string>> = {
  slowness: "s/m",
  youngsModulus: "Pa",
  porosity: "-",
  velocity: "m/s",
};

/** One reading, with the second figure that a few correlations need. */
export interface LogReading {
  /** Slowness [s/m], Young's modulus [Pa], porosity [-] or velocity [m/s], as the correlation asks. */
  readonly value: number;
  /** Share of clay in the rock [-]; only for the shaly sandstone correlation, default 0. */
  readonly clayShare?: number;
  /** Bulk density [kg/m³]; only for the strong sandstone correlation. */
  readonly density?: number;
}

/** A published relation between a log reading and strength, good for one kind of rock. */
export interface StrengthCorrelation {
  /** Kebab-case name by which a bed refers to it. */
  readonly id: string;
  /** The rock it was made on, in words. */
  readonly madeOn: string;
  /** Rocks of the table it may be used for. */
  readonly rockIds: readonly string[];
  readonly input: LogInputKind;
  /** Lowest reading it is good for [SI unit of the input]. */
  readonly lowest: number;
  /** Highest reading it is good for [SI unit of the input]. */
  readonly highest: number;
  /** Where the two limits come from. */
  readonly rangeSource: Source;
  /** The relation as published, strength in MPa. */
  readonly relation: string;
  /** Needs the bulk density beside the reading. */
  readonly needsDensity?: boolean;
  readonly source: Source;
  /** Strength from a reading, SI in and out [Pa]. */
  readonly strength: (reading: LogReading) => number;
}

const MPA = 1e6;
const GPA = 1e9;
const MICROSECOND_PER_FOOT = 1e-6 / 0.3048;

const ROCK_PHYSICS = readIn(
  "Mavko, Mukerji & Dvorkin, Rock Physics Handbook, tables 7.14.2-3; Zhang, Applied Petroleum Geomechanics",
);
const GEOMECHANICS = readIn("Zhang, Applied Petroleum Geomechanics");
const CHANG = recalledFrom("Chang, Zoback & Khaksar 2006, table 1");
const USUAL_READINGS = commonPractice("no range stated with the relation: readings usual in this rock");
const STATED = readIn("range stated with the relation");

const SANDSTONES = ["sandstone", "hard-sandstone", "friable-sandstone"];
const WEAK_SANDSTONES = ["friable-sandstone", "sandstone"];
const SHALES = ["shale", "mudstone", "claystone"];
const CARBONATES = ["limestone", "dolomite", "soft-limestone"];

/** Limits of a correlation on sonic slowness, given in microseconds per foot [µs/ft]. */
function sonic(lowest: number, highest: number, formula: (microsecondsPerFoot: number) => number) {
  return {
    input: "slowness",
    lowest: lowest * MICROSECOND_PER_FOOT,
    highest: highest * MICROSECOND_PER_FOOT,
    strength: ({ value }: LogReading) => formula(value / MICROSECOND_PER_FOOT) * MPA,
  } as const;
}

/** Limits of a correlation on Young's modulus, given in gigapascal [GPa]. */
function modulus(lowest: number, highest: number, formula: (gigapascals: number) => number) {
  return {
    input: "youngsModulus",
    lowest: lowest * GPA,
    highest: highest * GPA,
    strength: ({ value }: LogReading) => formula(value / GPA) * MPA,
  } as const;
}

/** Limits of a correlation on porosity, as a share [-]. */
function porosity(lowest: number, highest: number, formula: (share: number, clayShare: number) => number) {
  return {
    input: "porosity",
    lowest,
    highest,
    strength: ({ value, clayShare = 0 }: LogReading) => formula(value, clayShare) * MPA,
  } as const;
}

/** Wave speed in km/s from microseconds per foot: 304.8 mm in a foot. */
const kilometresPerSecond = (microsecondsPerFoot: number) => 304.8 / microsecondsPerFoot;

/**
 * All log correlations the program knows. A scatter of a factor two either way is normal for every one of them.
 *
 * @source (a) most read in Mavko, Mukerji & Dvorkin or Zhang; each carries its own in `source`
 */
export const strengthCorrelations: readonly StrengthCorrelation[] = [
  {
    id: "sonic-sandstone-bowen",
    madeOn: "fine sandstone, Bowen Basin",
    rockIds: SANDSTONES,
    ...sonic(50, 140, (dt) => 1200 * Math.exp(-0.036 * dt)),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 1200 exp(-0.036 Δt), Δt in µs/ft",
    source: readIn("McNally 1987, in Mavko, Mukerji & Dvorkin, tables 7.14.2-3"),
  },
  {
    id: "sonic-sandstone-gulf-weak",
    madeOn: "weak Gulf Coast sandstone",
    rockIds: WEAK_SANDSTONES,
    ...sonic(60, 160, (dt) => 1.4138e7 / dt ** 3),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 1.4138e7 Δt^-3, Δt in µs/ft",
    source: CHANG,
  },
  {
    id: "sonic-sandstone-gulf-north-sea",
    madeOn: "sandstone, Gulf of Mexico and North Sea",
    rockIds: WEAK_SANDSTONES,
    ...sonic(55, 150, (dt) => 156318 / dt ** 2.064),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 156318 Δt^-2.064, Δt in µs/ft",
    source: GEOMECHANICS,
  },
  {
    id: "sonic-sandstone-weak",
    madeOn: "weak sandstone",
    rockIds: WEAK_SANDSTONES,
    ...sonic(55, 150, (dt) => 0.68 * kilometresPerSecond(dt) ** 2.5),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 0.68 (304.8/Δt)^2.5, Δt in µs/ft",
    source: GEOMECHANICS,
  },
  {
    id: "sonic-shale-north-sea",
    madeOn: "North Sea Tertiary shale",
    rockIds: SHALES,
    ...sonic(60, 170, (dt) => 0.77 * kilometresPerSecond(dt) ** 2.93),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 0.77 (304.8/Δt)^2.93, Δt in µs/ft",
    source: readIn("Horsrud 2001, in Mavko, Mukerji & Dvorkin, tables 7.14.2-3"),
  },
  {
    id: "sonic-shale-gulf-pliocene",
    madeOn: "Gulf of Mexico shale, Pliocene and younger",
    rockIds: SHALES,
    ...sonic(60, 170, (dt) => 0.43 * kilometresPerSecond(dt) ** 3.2),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 0.43 (304.8/Δt)^3.2, Δt in µs/ft",
    source: ROCK_PHYSICS,
  },
  {
    id: "sonic-shale-world",
    madeOn: "shale, worldwide",
    rockIds: SHALES,
    ...sonic(55, 170, (dt) => 1.35 * kilometresPerSecond(dt) ** 2.6),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 1.35 (304.8/Δt)^2.6, Δt in µs/ft",
    source: ROCK_PHYSICS,
  },
  {
    id: "sonic-shale-gulf",
    madeOn: "Gulf of Mexico shale",
    rockIds: SHALES,
    ...sonic(60, 170, (dt) => 0.5 * kilometresPerSecond(dt) ** 3),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 0.5 (304.8/Δt)^3, Δt in µs/ft",
    source: ROCK_PHYSICS,
  },
  {
    id: "sonic-shale-tertiary",
    madeOn: "Tertiary shale",
    rockIds: SHALES,
    ...sonic(60, 170, (dt) => 10 * (kilometresPerSecond(dt) - 1)),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 10 (304.8/Δt - 1), Δt in µs/ft",
    source: readIn("Lal 1999, in Mavko, Mukerji & Dvorkin, tables 7.14.2-3"),
  },
  {
    id: "sonic-carbonate-militzer-stoll",
    madeOn: "limestone and dolomite",
    rockIds: CARBONATES,
    ...sonic(43, 120, (dt) => (7682 / dt) ** 1.82 / 145),
    rangeSource: USUAL_READINGS,
    relation: "UCS = (7682/Δt)^1.82 / 145, Δt in µs/ft",
    source: readIn("Militzer & Stoll, in Mavko, Mukerji & Dvorkin, tables 7.14.2-3"),
  },
  {
    id: "sonic-carbonate-golubev-rabinovich",
    madeOn: "limestone and dolomite",
    rockIds: CARBONATES,
    ...sonic(43, 120, (dt) => 10 ** (2.44 + 109.14 / dt) / 145),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 10^(2.44 + 109.14/Δt) / 145, Δt in µs/ft",
    source: readIn("Golubev & Rabinovich, in Mavko, Mukerji & Dvorkin, tables 7.14.2-3"),
  },
  {
    id: "modulus-limestone",
    madeOn: "limestone",
    rockIds: ["limestone", "soft-limestone"],
    ...modulus(5, 90, (e) => 13.8 * e ** 0.51),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 13.8 E^0.51, E in GPa",
    source: ROCK_PHYSICS,
  },
  {
    id: "modulus-dolomite",
    madeOn: "dolomite",
    rockIds: ["dolomite"],
    ...modulus(10, 90, (e) => 25.1 * e ** 0.34),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 25.1 E^0.34, E in GPa",
    source: ROCK_PHYSICS,
  },
  {
    id: "modulus-shale-strong",
    madeOn: "strong shale",
    rockIds: ["shale"],
    ...modulus(5, 60, (e) => 7.22 * e ** 0.712),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 7.22 E^0.712, E in GPa",
    source: ROCK_PHYSICS,
  },
  {
    id: "modulus-shale-tertiary",
    madeOn: "weak Tertiary shale",
    rockIds: SHALES,
    // Made on weak shale and not to be carried further: at 6 GPa it already gives 41 MPa.
    ...modulus(0.1, 6, (e) => 7.97 * e ** 0.91),
    rangeSource: commonPractice("the source warns against use past weak shale; the figure of 6 GPa is ours"),
    relation: "UCS = 7.97 E^0.91, E in GPa",
    source: ROCK_PHYSICS,
  },
  {
    id: "modulus-sandstone",
    madeOn: "sandstone",
    rockIds: SANDSTONES,
    ...modulus(1, 60, (e) => 46.2 * Math.exp(0.027 * e)),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 46.2 exp(0.027 E), E in GPa",
    source: CHANG,
  },
  {
    id: "modulus-sandstone-weak",
    madeOn: "weak sandstone",
    rockIds: WEAK_SANDSTONES,
    ...modulus(0.5, 20, (e) => 2.28 + 4.1089 * e),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 2.28 + 4.1089 E, E in GPa",
    source: ROCK_PHYSICS,
  },
  {
    id: "modulus-sandstone-gulf",
    madeOn: "Gulf of Mexico sandstone",
    rockIds: SANDSTONES,
    ...modulus(1, 60, (e) => 14.86 * e ** 0.464),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 14.86 E^0.464, E in GPa",
    source: ROCK_PHYSICS,
  },
  {
    id: "porosity-sandstone-clean",
    madeOn: "clean well-consolidated sandstone",
    rockIds: SANDSTONES,
    ...porosity(0, 0.3, (share) => 254 * (1 - 2.7 * share) ** 2),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 254 (1 - 2.7 φ)²",
    source: readIn("Vernik, Bruno & Bovberg 1993, seen second-hand"),
  },
  {
    id: "porosity-sandstone-shaly",
    madeOn: "shaly sandstone",
    rockIds: SANDSTONES,
    ...porosity(0, 0.3, (share, clayShare) => (254 - 204 * clayShare) * (1 - 2.7 * share) ** 2),
    rangeSource: USUAL_READINGS,
    relation: "UCS = (254 - 204 clay share) (1 - 2.7 φ)²",
    source: readIn("Vernik, Bruno & Bovberg 1993, seen second-hand"),
  },
  {
    id: "porosity-sandstone",
    madeOn: "sandstone",
    rockIds: SANDSTONES,
    ...porosity(0.002, 0.3, (share) => 277 * Math.exp(-10 * share)),
    rangeSource: CHANG,
    relation: "UCS = 277 exp(-10 φ)",
    source: CHANG,
  },
  {
    id: "porosity-carbonate-276",
    madeOn: "limestone and dolomite",
    rockIds: CARBONATES,
    ...porosity(0, 0.25, (share) => 276 * (1 - 3 * share) ** 2),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 276 (1 - 3 φ)²",
    source: ROCK_PHYSICS,
  },
  {
    id: "porosity-carbonate-144",
    madeOn: "limestone and dolomite",
    rockIds: CARBONATES,
    ...porosity(0.05, 0.2, (share) => 143.8 * Math.exp(-6.95 * share)),
    rangeSource: CHANG,
    relation: "UCS = 143.8 exp(-6.95 φ)",
    source: ROCK_PHYSICS,
  },
  {
    id: "porosity-carbonate-136",
    madeOn: "limestone and dolomite",
    rockIds: CARBONATES,
    ...porosity(0, 0.2, (share) => 135.9 * Math.exp(-4.8 * share)),
    rangeSource: CHANG,
    relation: "UCS = 135.9 exp(-4.8 φ)",
    source: ROCK_PHYSICS,
  },
  {
    id: "porosity-shale",
    madeOn: "shale",
    rockIds: SHALES,
    ...porosity(0.05, 0.5, (share) => 2.922 * share ** -0.96),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 2.922 φ^-0.96",
    source: ROCK_PHYSICS,
  },
  {
    id: "porosity-shale-tight",
    madeOn: "shale of low porosity",
    rockIds: SHALES,
    ...porosity(0.01, 0.1, (share) => 1.001 * share ** -1.143),
    rangeSource: STATED,
    relation: "UCS = 1.001 φ^-1.143, φ below 0.1",
    source: ROCK_PHYSICS,
  },
  {
    id: "porosity-shale-loose",
    madeOn: "shale of high porosity",
    rockIds: SHALES,
    ...porosity(0.27, 0.6, (share) => 0.286 * share ** -1.762),
    rangeSource: STATED,
    relation: "UCS = 0.286 φ^-1.762, φ above 0.27",
    source: ROCK_PHYSICS,
  },
  {
    id: "porosity-chalk",
    madeOn: "chalk",
    rockIds: ["soft-limestone"],
    ...porosity(0.05, 0.5, (share) => 174 * Math.exp(-7.57 * share)),
    rangeSource: USUAL_READINGS,
    relation: "UCS = 174 exp(-7.57 φ)",
    source: ROCK_PHYSICS,
  },
  {
    id: "velocity-limestone",
    madeOn: "limestone",
    rockIds: ["limestone"],
    input: "velocity",
    lowest: 3500,
    highest: 6500,
    rangeSource: USUAL_READINGS,
    relation: "UCS = 3.67 Vp^2.14, Vp in km/s",
    source: readIn("Zhang, Applied Petroleum Geomechanics; its author (Najibi et al. 2015) from memory"),
    strength: ({ value }) => 3.67 * (value / 1000) ** 2.14 * MPA,
  },
  {
    id: "velocity-sandstone-strong",
    madeOn: "very strong sandstone",
    rockIds: ["hard-sandstone", "sandstone"],
    input: "velocity",
    lowest: 3500,
    highest: 6000,
    rangeSource: USUAL_READINGS,
    relation: "UCS = 42.1 exp(1.9e-11 ρ Vp²), ρ in kg/m³, Vp in m/s",
    needsDensity: true,
    source: readIn("Mavko, Mukerji & Dvorkin, tables 7.14.2-3; the exponent 1.9e-11 recalled"),
    strength: ({ value, density = Number.NaN }) => 42.1 * Math.exp(1.9e-11 * density * value ** 2) * MPA,
  },
];
