import type { Dimension } from "./unit-table.ts";

/** The two systems a person may read results in. */
export type UnitSystem = "field" | "metric";

/** What a kind of quantity is called, how it is written and in which units it is shown. */
interface KindFacts {
  readonly dimension: Dimension;
  /** The kind with its article, for messages: `a length`. */
  readonly noun: string;
  /** Ways to write one, for messages; the parser reads them all. */
  readonly examples: readonly [string, ...string[]];
  /** Units shown in each system, small to large; a value is shown in the largest that leaves one or more of it. */
  readonly shown: Readonly<Record<UnitSystem, readonly [string, ...string[]]>>;
  /** Whether a value below zero makes sense. */
  readonly signed?: boolean;
  /** Whether a bare number is a full answer. */
  readonly bare?: boolean;
}

const kind = (facts: KindFacts): KindFacts => facts;

/** Every kind of quantity that a field of the traveler or a figure of the results can have. */
export const QUANTITY_KINDS = {
  depth: kind({
    dimension: "length",
    noun: "a length",
    examples: ["300 ft", "91.5 m"],
    shown: { field: ["ft"], metric: ["m"] },
  }),
  diameter: kind({
    dimension: "length",
    noun: "a length",
    examples: ["6 1/8 in", "155.6 mm"],
    shown: { field: ["in"], metric: ["mm"] },
  }),
  length: kind({
    dimension: "length",
    noun: "a length",
    examples: ["0.016 in", "0.4 mm"],
    shown: { field: ["in"], metric: ["mm"] },
  }),
  area: kind({
    dimension: "area",
    noun: "an area",
    examples: ["0.59 in2", "380 mm2"],
    shown: { field: ["in²"], metric: ["mm²"] },
  }),
  volume: kind({
    dimension: "volume",
    noun: "a volume",
    examples: ["400 gal", "1500 L"],
    shown: { field: ["gal"], metric: ["L", "m³"] },
  }),
  "cut volume": kind({
    dimension: "volume",
    noun: "a volume",
    examples: ["0.4 in3", "6 cm3"],
    shown: { field: ["in³"], metric: ["cm³"] },
  }),
  mass: kind({
    dimension: "mass",
    noun: "a mass",
    examples: ["45 lb", "20 kg"],
    shown: { field: ["lb"], metric: ["kg"] },
  }),
  force: kind({
    dimension: "force",
    noun: "a force",
    examples: ["6000 lbf", "27 kN"],
    shown: { field: ["lbf"], metric: ["N", "kN"] },
  }),
  pressure: kind({
    dimension: "pressure",
    noun: "a pressure",
    examples: ["250 psi", "17 bar"],
    shown: { field: ["psi"], metric: ["kPa", "MPa"] },
  }),
  strength: kind({
    dimension: "pressure",
    noun: "a strength",
    examples: ["8700 psi", "60 MPa"],
    shown: { field: ["psi"], metric: ["MPa"] },
  }),
  flow: kind({
    dimension: "flow",
    noun: "a flow",
    examples: ["150 gpm", "570 L/min"],
    shown: { field: ["gpm"], metric: ["L/min"] },
  }),
  "air flow": kind({
    dimension: "air flow",
    noun: "an air flow",
    examples: ["750 cfm", "21 m3/min"],
    shown: { field: ["cfm"], metric: ["m³/min"] },
  }),
  density: kind({
    dimension: "density",
    noun: "a density",
    examples: ["8.6 ppg", "1030 kg/m3"],
    shown: { field: ["ppg"], metric: ["kg/m³"] },
  }),
  torque: kind({
    dimension: "torque",
    noun: "a torque",
    examples: ["4500 ft-lbf", "6.1 kN m"],
    shown: { field: ["ft-lbf"], metric: ["N m", "kN m"] },
  }),
  "rotary speed": kind({
    dimension: "rotary speed",
    noun: "a rotary speed",
    examples: ["90 rpm"],
    shown: { field: ["rpm"], metric: ["rpm"] },
  }),
  "stroke rate": kind({
    dimension: "stroke rate",
    noun: "a stroke rate",
    examples: ["60 spm"],
    shown: { field: ["spm"], metric: ["spm"] },
  }),
  speed: kind({
    dimension: "speed",
    noun: "a speed",
    examples: ["80 ft/s", "24 m/s"],
    shown: { field: ["ft/s"], metric: ["m/s"] },
  }),
  "uphole speed": kind({
    dimension: "speed",
    noun: "a speed",
    examples: ["120 ft/min", "0.6 m/s"],
    shown: { field: ["ft/min"], metric: ["m/s"] },
  }),
  rate: kind({
    dimension: "speed",
    noun: "a rate of drilling",
    examples: ["60 ft/h", "18 m/h"],
    shown: { field: ["ft/h"], metric: ["m/h"] },
  }),
  advance: kind({
    dimension: "advance",
    noun: "an advance per revolution",
    examples: ["0.08 in/rev", "2 mm/rev"],
    shown: { field: ["in/rev"], metric: ["mm/rev"] },
  }),
  power: kind({
    dimension: "power",
    noun: "a power",
    examples: ["60 hp", "45 kW"],
    shown: { field: ["hp"], metric: ["W", "kW"] },
  }),
  temperature: kind({
    dimension: "temperature",
    noun: "a temperature",
    examples: ["60 degF", "15 °C"],
    shown: { field: ["°F"], metric: ["°C"] },
    signed: true,
  }),
  angle: kind({
    dimension: "angle",
    noun: "an angle",
    examples: ["15 deg", "0.26 rad"],
    shown: { field: ["deg"], metric: ["deg"] },
    signed: true,
  }),
  share: kind({
    dimension: "share",
    noun: "a share",
    examples: ["10 %", "0.1"],
    shown: { field: ["%"], metric: ["%"] },
    bare: true,
  }),
  ratio: kind({
    dimension: "ratio",
    noun: "a plain number",
    examples: ["0.3", "5"],
    shown: { field: ["-"], metric: ["-"] },
    bare: true,
  }),
  viscosity: kind({
    dimension: "viscosity",
    noun: "a viscosity",
    examples: ["8 cP", "0.008 Pa s"],
    shown: { field: ["cP"], metric: ["cP"] },
  }),
  "yield point": kind({
    dimension: "shear stress",
    noun: "a yield point",
    examples: ["8 lbf/100ft2", "3.8 Pa"],
    shown: { field: ["lbf/100 ft²"], metric: ["Pa"] },
  }),
  "linear mass": kind({
    dimension: "linear mass",
    noun: "a weight per length",
    examples: ["13.3 lb/ft", "19.8 kg/m"],
    shown: { field: ["lb/ft"], metric: ["kg/m"] },
  }),
  "force per length": kind({
    dimension: "force per length",
    noun: "a force per length",
    examples: ["1000 lb/in", "175 N/mm"],
    shown: { field: ["lbf/in"], metric: ["N/mm"] },
  }),
  "force per pressure": kind({
    dimension: "force per pressure",
    noun: "a force per pressure",
    examples: ["7.5 lbf/psi", "4.8 N/kPa"],
    shown: { field: ["lbf/psi"], metric: ["N/kPa"] },
  }),
  "transit time": kind({
    dimension: "slowness",
    noun: "a transit time",
    examples: ["80 us/ft", "262 us/m"],
    shown: { field: ["µs/ft"], metric: ["µs/m"] },
  }),
  duration: kind({
    dimension: "duration",
    noun: "a time",
    examples: ["1 h 30 min", "90 min"],
    shown: { field: ["s", "min", "h"], metric: ["s", "min", "h"] },
  }),
  "fuel flow": kind({
    dimension: "flow",
    noun: "a flow",
    examples: ["7 gal/h", "26 L/h"],
    shown: { field: ["gal/h"], metric: ["L/h"] },
  }),
  "fuel per length": kind({
    dimension: "volume per length",
    noun: "a volume for each length",
    examples: ["0.08 gal/ft", "1 L/m"],
    shown: { field: ["gal/ft"], metric: ["L/m"] },
  }),
  price: kind({
    dimension: "money",
    noun: "a price in the currency of the job",
    examples: ["25", "650"],
    shown: { field: ["-"], metric: ["-"] },
    bare: true,
  }),
  "price of time": kind({
    dimension: "money per time",
    noun: "a price for each time in the currency of the job",
    examples: ["350 /h", "2800 /d"],
    shown: { field: ["/h"], metric: ["/h"] },
  }),
  "price of volume": kind({
    dimension: "money per volume",
    noun: "a price for each volume in the currency of the job",
    examples: ["4 /gal", "1.05 /L"],
    shown: { field: ["/gal"], metric: ["/L"] },
  }),
  "price of length": kind({
    dimension: "money per length",
    noun: "a price for each length in the currency of the job",
    examples: ["0.5 /ft", "1.6 /m"],
    shown: { field: ["/ft"], metric: ["/m"] },
  }),
} as const;

/** The name of a kind of quantity. */
export type QuantityKind = keyof typeof QUANTITY_KINDS;

/** The facts of a kind, with the absent marks readable. */
export function kindFacts(name: QuantityKind): KindFacts {
  return QUANTITY_KINDS[name];
}

/** Noun with article of each dimension, for a line that says what was given instead. */
export function dimensionNoun(dimension: Dimension): string {
  const first = Object.values<KindFacts>(QUANTITY_KINDS).find((facts) => facts.dimension === dimension);
  return first?.noun ?? `a ${dimension}`;
}
