import type { PowerStation, QuantityKind, UnitSystem } from "@bitwright/traveler";
import { csvFigure } from "../table/csv-figure.ts";
import { csvText } from "../table/csv-text.ts";

const UNITS = {
  field: { power: "hp", "fuel flow": "gal/h", "fuel per length": "gal/ft", share: "%", duration: "h" },
  metric: { power: "kW", "fuel flow": "L/h", "fuel per length": "L/m", share: "%", duration: "h" },
} as const satisfies Record<UnitSystem, Partial<Record<QuantityKind, string>>>;

type Kind = keyof (typeof UNITS)["field"];

/** Every bed as CSV text: the parts of the engine's load, the load with its band, and the fuel with its band. */
export function powerCsv({ beds, ratedPower }: PowerStation, units: UnitSystem): string {
  const unit = UNITS[units];
  const head = (name: string, kind: Kind) => `${name} [${unit[kind]}]`;
  const cell = (kind: Kind, si: number | undefined) => csvFigure(kind, si, unit[kind]);
  return csvText([
    [
      "ground",
      head("turning", "power"),
      head("mud pump", "power"),
      head("compressor", "power"),
      head("pushing", "power"),
      head("engine itself", "power"),
      head("engine, least", "power"),
      head("engine", "power"),
      head("engine, most", "power"),
      head("engine rated", "power"),
      head("of its rating", "share"),
      head("fuel, least", "fuel flow"),
      head("fuel", "fuel flow"),
      head("fuel, most", "fuel flow"),
      head("fuel by length", "fuel per length"),
      head("on bottom", "duration"),
    ],
    ...beds.map(({ name, parts, enginePower, engineShare, fuelFlow, fuelPerLength, timeOnBottom }) => [
      name,
      cell("power", parts.rotaryPower),
      cell("power", parts.pumpPower),
      cell("power", parts.compressorPower),
      cell("power", parts.feedPower),
      cell("power", parts.ownPower),
      cell("power", enginePower.low),
      cell("power", enginePower.mid),
      cell("power", enginePower.high),
      cell("power", ratedPower),
      cell("share", engineShare.mid),
      cell("fuel flow", fuelFlow.low),
      cell("fuel flow", fuelFlow.mid),
      cell("fuel flow", fuelFlow.high),
      cell("fuel per length", fuelPerLength?.mid),
      cell("duration", timeOnBottom),
    ]),
  ]);
}
