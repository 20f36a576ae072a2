import {
  ATMOSPHERE,
  BARREL,
  CELSIUS_ZERO,
  CENTIPOISE,
  DEGREE,
  FAHRENHEIT_BELOW_ZERO,
  FOOT,
  FOOT_POUND,
  GALLON,
  HORSEPOWER,
  HOUR,
  INCH,
  MINUTE,
  POUND,
  POUND_FORCE,
  PSI,
  SPECIFIC_GRAVITY_ONE,
  STANDARD_GRAVITY,
  TURN,
} from "./factors.ts";

/** What is measured, whatever it is used for. A diameter and a depth are both lengths. */
export type Dimension =
  | "length"
  | "area"
  | "volume"
  | "mass"
  | "force"
  | "pressure"
  | "flow"
  | "air flow"
  | "density"
  | "torque"
  | "rotary speed"
  | "stroke rate"
  | "speed"
  | "advance"
  | "power"
  | "temperature"
  | "angle"
  | "share"
  | "ratio"
  | "viscosity"
  | "shear stress"
  | "linear mass"
  | "force per length"
  | "force per pressure"
  | "slowness"
  | "duration"
  | "volume per length"
  | "money"
  | "money per time"
  | "money per volume"
  | "money per length";

/** A unit as people write it. */
export interface Unit {
  /** How the program writes it: `ft-lbf`, `m³/h`. */
  readonly name: string;
  /** Other ways people write it, already in plain characters (`m3`, `deg`, spaces for dots and hyphens). */
  readonly alsoWritten: readonly string[];
  /** Size of one of it [coherent SI unit of the dimension]. */
  readonly factor: number;
  /** Added to a reading before the factor, for scales with a zero of their own [this unit]. */
  readonly zero: number;
  /** Whether it belongs to the field system of the trade, which writes a comma only between thousands. */
  readonly field: boolean;
}

const field = (name: string, factor: number, ...alsoWritten: string[]): Unit => ({
  name,
  alsoWritten,
  factor,
  zero: 0,
  field: true,
});
const metric = (name: string, factor: number, ...alsoWritten: string[]): Unit => ({
  ...field(name, factor, ...alsoWritten),
  field: false,
});

/** Every unit that is read and written, by dimension. The factors come from definitions alone. */
export const UNIT_TABLE: Readonly<Record<Dimension, readonly Unit[]>> = {
  length: [
    field("in", INCH, '"', "inch", "inches"),
    field("ft", FOOT, "'", "foot", "feet"),
    metric("mm", 1e-3, "millimetre", "millimeter"),
    metric("cm", 1e-2),
    metric("m", 1, "metre", "meter", "metres", "meters"),
    metric("km", 1e3),
    metric("µm", 1e-6, "micron", "microns"),
  ],
  area: [
    field("in²", INCH ** 2, "sq in"),
    field("ft²", FOOT ** 2, "sq ft"),
    metric("mm²", 1e-6),
    metric("cm²", 1e-4),
    metric("m²", 1),
  ],
  volume: [
    field("gal", GALLON, "us gal", "gallon", "gallons"),
    field("bbl", BARREL),
    field("in³", INCH ** 3, "cu in"),
    field("ft³", FOOT ** 3, "cu ft"),
    metric("L", 1e-3, "litre", "liter", "litres", "liters"),
    metric("m³", 1),
    metric("cm³", 1e-6, "cc"),
    metric("mm³", 1e-9),
  ],
  mass: [
    field("lb", POUND, "lbm", "lbs", "pound", "pounds"),
    metric("kg", 1),
    metric("g", 1e-3),
    metric("t", 1e3, "tonne", "tonnes"),
  ],
  force: [
    field("lbf", POUND_FORCE, "lb", "lbs", "pounds", "pound"),
    field("klbf", 1000 * POUND_FORCE, "klb", "klbs", "kip", "kips"),
    metric("N", 1),
    metric("kN", 1e3),
    metric("MN", 1e6),
    metric("daN", 10),
    metric("kgf", STANDARD_GRAVITY),
  ],
  pressure: [
    field("psi", PSI, "lbf/in2", "lb/in2", "psig"),
    field("ksi", 1000 * PSI, "kpsi"),
    field("lbf/ft²", POUND_FORCE / FOOT ** 2, "psf"),
    metric("Pa", 1),
    metric("kPa", 1e3),
    metric("MPa", 1e6, "N/mm2"),
    metric("GPa", 1e9),
    metric("bar", 1e5),
    metric("mbar", 100),
    metric("atm", ATMOSPHERE),
    metric("kgf/cm²", STANDARD_GRAVITY / 1e-4, "kg/cm2"),
  ],
  flow: [
    field("gpm", GALLON / MINUTE, "us gpm", "gal/min", "us gal/min"),
    field("bbl/min", BARREL / MINUTE),
    field("gal/h", GALLON / HOUR, "gph", "gal/hr"),
    metric("L/min", 1e-3 / MINUTE, "lpm"),
    metric("L/s", 1e-3, "lps"),
    metric("L/h", 1e-3 / HOUR, "l/hr"),
    metric("m³/h", 1 / HOUR, "m3/hr"),
    metric("m³/min", 1 / MINUTE),
    metric("m³/s", 1),
  ],
  "air flow": [
    field("cfm", FOOT ** 3 / MINUTE, "scfm", "ft3/min", "cu ft/min"),
    metric("m³/min", 1 / MINUTE),
    metric("m³/h", 1 / HOUR, "m3/hr"),
    metric("m³/s", 1),
    metric("L/s", 1e-3),
    metric("L/min", 1e-3 / MINUTE, "lpm"),
  ],
  density: [
    field("ppg", POUND / GALLON, "lb/gal", "lbm/gal"),
    field("lb/ft³", POUND / FOOT ** 3, "pcf", "lbm/ft3"),
    metric("sg", SPECIFIC_GRAVITY_ONE),
    metric("kg/m³", 1),
    metric("g/cm³", 1e3, "g/cc", "kg/L", "t/m3"),
  ],
  torque: [
    field("ft-lbf", FOOT_POUND, "lbf ft", "ft lb", "lb ft", "ft lbs", "foot pounds"),
    field("kft-lbf", 1000 * FOOT_POUND, "klbf ft", "kft lb", "kip ft"),
    field("in-lbf", INCH * POUND_FORCE, "lbf in", "in lb", "lb in"),
    metric("N m", 1, "Nm"),
    metric("kN m", 1e3, "kNm"),
    metric("kgf m", STANDARD_GRAVITY),
  ],
  "rotary speed": [
    field("rpm", TURN / MINUTE, "rev/min", "r/min"),
    metric("rev/s", TURN, "r/s", "rps"),
    metric("rad/s", 1),
  ],
  "stroke rate": [
    field("spm", 1 / MINUTE, "strokes/min", "strokes a minute", "strokes per minute", "1/min"),
    metric("1/s", 1, "strokes/s"),
  ],
  speed: [
    field("ft/min", FOOT / MINUTE, "fpm"),
    field("ft/s", FOOT, "fps", "ft/sec"),
    field("ft/h", FOOT / HOUR, "fph", "ft/hr", "ft/hour"),
    field("in/min", INCH / MINUTE),
    metric("m/s", 1, "m/sec"),
    metric("m/min", 1 / MINUTE),
    metric("m/h", 1 / HOUR, "m/hr"),
    metric("mm/s", 1e-3),
    metric("mm/min", 1e-3 / MINUTE),
  ],
  advance: [field("in/rev", INCH, "in", '"'), metric("mm/rev", 1e-3, "mm"), metric("m/rev", 1, "m")],
  power: [field("hp", HORSEPOWER, "bhp"), metric("kW", 1e3), metric("W", 1)],
  temperature: [
    { ...field("°F", 5 / 9, "degF", "F"), zero: FAHRENHEIT_BELOW_ZERO },
    { ...metric("°C", 1, "degC", "C"), zero: CELSIUS_ZERO },
    metric("K", 1),
  ],
  angle: [metric("deg", DEGREE, "degree", "degrees"), metric("rad", 1, "radian", "radians"), metric("mrad", 1e-3)],
  share: [metric("%", 0.01, "percent", "pct"), metric("-", 1)],
  ratio: [metric("-", 1)],
  viscosity: [metric("cP", CENTIPOISE, "cp", "mPa s", "mPas"), metric("Pa s", 1, "Pas"), metric("P", 100 * CENTIPOISE)],
  "shear stress": [
    field("lbf/100 ft²", POUND_FORCE / (100 * FOOT ** 2), "lbf/100ft2", "lb/100 ft2", "lb/100ft2"),
    metric("Pa", 1),
    metric("kPa", 1e3),
  ],
  "linear mass": [field("lb/ft", POUND / FOOT, "lbm/ft", "lbs/ft", "ppf"), metric("kg/m", 1)],
  "force per length": [
    field("lbf/in", POUND_FORCE / INCH, "lb/in", "lbs/in"),
    metric("N/mm", 1e3),
    metric("kN/m", 1e3),
    metric("N/m", 1),
  ],
  "force per pressure": [
    field("lbf/psi", INCH ** 2, "lb/psi", "lbs/psi", "in2"),
    metric("N/kPa", 1e-3),
    metric("N/bar", 1e-5),
    metric("kN/bar", 1e-2),
    metric("kN/MPa", 1e-3),
    metric("N/Pa", 1, "m2"),
    metric("cm²", 1e-4),
  ],
  slowness: [field("µs/ft", 1e-6 / FOOT, "usec/ft"), metric("µs/m", 1e-6, "usec/m"), metric("s/m", 1)],
  duration: [
    metric("d", 24 * HOUR, "day", "days"),
    metric("h", HOUR, "hr", "hrs", "hour", "hours"),
    metric("min", MINUTE, "minute", "minutes"),
    metric("s", 1, "sec", "second", "seconds"),
  ],
  "volume per length": [field("gal/ft", GALLON / FOOT, "gal per foot"), metric("L/m", 1e-3), metric("m³/m", 1)],
  // Money is in the currency of the document, which no unit names.
  money: [metric("-", 1)],
  "money per time": [
    field("/h", 1 / HOUR, "/hr", "/hour", "an hour"),
    metric("/d", 1 / (24 * HOUR), "/day", "a day"),
    metric("/s", 1),
  ],
  "money per volume": [field("/gal", 1 / GALLON, "/us gal", "/gallon"), metric("/L", 1e3, "/litre"), metric("/m³", 1)],
  "money per length": [field("/ft", 1 / FOOT, "/foot", "a foot"), metric("/m", 1)],
};
