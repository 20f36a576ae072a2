import { type FlowCase, type FlowStudy, lossesInOrder, type QuantityKind, type UnitSystem } from "@bitwright/traveler";
import { csvFigure } from "../table/csv-figure.ts";
import { csvText } from "../table/csv-text.ts";

const UNITS = {
  field: {
    flow: "gpm",
    pressure: "psi",
    "uphole speed": "ft/min",
    speed: "ft/s",
    power: "hp",
    force: "lbf",
    rate: "ft/h",
    diameter: "in",
  },
  metric: {
    flow: "L/min",
    pressure: "kPa",
    "uphole speed": "m/s",
    speed: "m/s",
    power: "kW",
    force: "N",
    rate: "m/h",
    diameter: "mm",
  },
} as const satisfies Record<UnitSystem, Partial<Record<QuantityKind, string>>>;

type Kind = keyof (typeof UNITS)["field"];

/** The figures of the present circuit and of the changed one as CSV text, a figure in each row. */
export function flowCsv({ present, changed }: Pick<FlowStudy, "present" | "changed">, units: UnitSystem): string {
  const cases = [present, ...(changed ? [changed] : [])];
  const unit = UNITS[units];
  const row = (name: string, kind: Kind, of: (one: FlowCase) => number) => [
    name,
    unit[kind],
    ...cases.map((one) => csvFigure(kind, of(one), unit[kind])),
  ];
  const plain = (name: string, of: (one: FlowCase) => string | number) => [
    name,
    "-",
    ...cases.map((one) => String(of(one))),
  ];
  return csvText([
    ["figure", "unit", "now", ...(changed ? ["changed"] : [])],
    plain("pumps", ({ pumps }) => pumps),
    plain("ports", ({ ports }) => ports.count),
    row("port diameter", "diameter", ({ ports }) => ports.diameter),
    row("flow asked", "flow", ({ asked }) => asked),
    row("flow that the pump gives", "flow", ({ flow }) => flow),
    plain("flow held by", ({ heldBy }) => heldBy),
    row("pump pressure", "pressure", ({ circuit }) => circuit.pumpPressure),
    ...lossesInOrder(present.circuit).map(({ name, part }, k) =>
      row(
        part === "annulus" ? `loss in the annulus: ${name}` : `loss: ${name}`,
        "pressure",
        ({ circuit }) => lossesInOrder(circuit)[k].loss,
      ),
    ),
    row("uphole speed at the slowest", "uphole speed", ({ circuit }) => circuit.slowestAnnulus.speed),
    row("port speed", "speed", ({ circuit }) => circuit.ports.speed),
    row("hydraulic power at the ports", "power", ({ circuit }) => circuit.ports.power),
    row("impact of the jets", "force", ({ circuit }) => circuit.ports.impactForce),
    row("rate that the flow cleans, least", "rate", ({ circuit }) => circuit.cleaning.rateCeiling.low),
    row("rate that the flow cleans, most", "rate", ({ circuit }) => circuit.cleaning.rateCeiling.high),
  ]);
}

/** The curves of circuit and pump as CSV text, point after point. */
export function flowCurvesCsv({ present, changed }: Pick<FlowStudy, "present" | "changed">, units: UnitSystem): string {
  const { flow: flowUnit, pressure: pressureUnit } = UNITS[units];
  const rows = (name: string, curve: FlowCase["pumpCurve"]) =>
    curve.map(({ flow, pressure }) => [
      name,
      csvFigure("flow", flow, flowUnit),
      csvFigure("pressure", pressure, pressureUnit),
    ]);
  return csvText([
    ["curve", `flow [${flowUnit}]`, `pressure [${pressureUnit}]`],
    ...rows("circuit now", present.circuitCurve),
    ...rows("pump now", present.pumpCurve),
    ...(changed ? [...rows("circuit changed", changed.circuitCurve), ...rows("pump changed", changed.pumpCurve)] : []),
  ]);
}
