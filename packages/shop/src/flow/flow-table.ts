import { type FlowCase, type FlowStudy, lossesInOrder } from "@bitwright/traveler";
import type { Figures } from "../summary/figures.ts";
import { textTable } from "../summary/text-table.ts";

/** The flow of a circuit in words: what sets it. */
export const HOLD_WORDS: Readonly<Record<FlowCase["heldBy"], string>> = {
  "flow asked": "the flow asked",
  "pressure rating": "held by the pump's pressure rating",
  "pump curve": "where pump and circuit cross",
  "end of the pump curve": "the end of the pump's curve",
  "nothing moves": "nothing moves; figures of the flow asked",
};

/** The ports of a case in words: `3 ports of 1/2 in`. */
export function portsInWords({ ports }: Pick<FlowCase, "ports">, figures: Figures): string {
  return `${ports.count} ${ports.count === 1 ? "port" : "ports"} of ${figures.of("diameter", ports.diameter)}`;
}

/** How many pumps stand side by side, in words. */
export function pumpsInWords({ pumps }: Pick<FlowCase, "pumps">): string {
  return pumps === 1 ? "one pump" : `${pumps} pumps`;
}

/** The case in a few words: what it has for pumps and ports. */
export function caseInWords(one: FlowCase, figures: Figures): string {
  return `${pumpsInWords(one)}, ${portsInWords(one, figures)}`;
}

type Row = readonly [name: string, of: (one: FlowCase) => string];

/** The present circuit, beside the changed one where there is one: flow, losses by part, and what the flow does. */
export function flowTable({ present, changed }: Pick<FlowStudy, "present" | "changed">, figures: Figures): string[] {
  const cases = [present, ...(changed ? [changed] : [])];
  const names = lossesInOrder(present.circuit).map(({ name, part }) => ({ name, part }));
  const rows: Row[] = [
    ["pumps", ({ pumps }) => String(pumps)],
    ["ports", (one) => portsInWords(one, figures)],
    ["flow asked", ({ asked }) => figures.of("flow", asked)],
    ["flow that the pump gives", ({ flow }) => figures.of("flow", flow)],
    ["", ({ heldBy }) => HOLD_WORDS[heldBy]],
    ["pump pressure", ({ circuit }) => figures.of("pressure", circuit.pumpPressure)],
    ...names.map(
      ({ name, part }, k): Row => [
        `  ${part === "annulus" ? `annulus, ${name}` : name}`,
        ({ circuit }) => figures.of("pressure", lossesInOrder(circuit)[k].loss),
      ],
    ),
    ["share at the ports", ({ circuit }) => figures.of("share", circuit.shareAtPorts)],
    ["uphole speed at the slowest", ({ circuit }) => figures.of("uphole speed", circuit.slowestAnnulus.speed)],
    ["port speed", ({ circuit }) => figures.of("speed", circuit.ports.speed)],
    ["hydraulic power at the ports", ({ circuit }) => figures.of("power", circuit.ports.power)],
    ["impact of the jets", ({ circuit }) => figures.of("force", circuit.ports.impactForce)],
    [
      "rate that the flow cleans",
      ({ circuit: { cleaning } }) => figures.range("rate", cleaning.rateCeiling.low, cleaning.rateCeiling.high),
    ],
  ];
  return textTable(
    ["", "now", ...(changed ? ["changed"] : [])],
    rows.map(([name, of]) => [name, ...cases.map(of)]),
  );
}
