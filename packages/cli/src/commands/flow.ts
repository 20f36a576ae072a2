import { figuresIn, findingLines, flowSheets, flowTable } from "@bitwright/shop";
import { type FlowChange, type FlowStudy, flowStudy, type UnitSystem, workUp } from "@bitwright/traveler";
import { Complaint } from "../complaint.ts";
import { optionQuantity } from "../option-quantity.ts";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { wholeNumber } from "../whole-number.ts";
import { writeSheets } from "../write-sheets.ts";

/** Options of `bitwright flow`. */
export interface FlowOptions {
  readonly ports?: string;
  readonly pumps?: string;
  readonly flow?: string;
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

const MOST_PUMPS = 6;
const MOST_PORTS = 24;
const WIDTH = 110;

/** The circuit of a traveler at the flow its pump gives, beside a changed one. */
export function flowCommand(file: string, options: FlowOptions, terminal: Terminal): void {
  const { out, json, units } = options;
  const change = changeOf(options);
  const workup = workUp(readTraveler(file));
  const study = flowStudy(workup, change);
  if (!study) {
    const { kind } = workup.inquiry.inquiry.fluid;
    const nothing = `This hole is drilled on ${kind}; only a liquid has a circuit to look at.`;
    terminal.say(json ? JSON.stringify({ findings: [], remark: nothing }, null, 2) : nothing);
    return;
  }
  const wrote = writeSheets(out, () => flowSheets(workup, study, { units, program: PROGRAM }));
  if (json) {
    terminal.say(JSON.stringify(study, null, 2));
    return;
  }
  terminal.say(flowText(study, units));
  if (wrote) terminal.say(wrote);
}

function changeOf({ ports, pumps, flow }: FlowOptions): FlowChange {
  return {
    ...(ports === undefined ? {} : { ports: portsOf(ports) }),
    ...(pumps === undefined ? {} : { pumps: wholeNumber("--pumps", pumps, 1, 1, MOST_PUMPS) }),
    ...(flow === undefined
      ? {}
      : { flow: optionQuantity("flow", "--flow", flow, { least: "1 gpm", most: "5000 gpm" }) }),
  };
}

/** `3 x 1/2 in`: how many, and the diameter of one. */
function portsOf(text: string): NonNullable<FlowChange["ports"]> {
  const [, count, diameter] = /^\s*(\d+)\s*[x×*]\s*(.+)$/i.exec(text) ?? [];
  if (count === undefined || diameter === undefined) {
    throw new Complaint([`--ports: got "${text}"; give how many and the diameter of one, for example "3 x 1/2 in"`]);
  }
  return {
    count: wholeNumber("--ports", count, 1, 1, MOST_PORTS),
    diameter: optionQuantity("diameter", "--ports", diameter, { least: "1/8 in", most: "6 in" }),
  };
}

function flowText(study: FlowStudy, units: UnitSystem): string {
  const figures = figuresIn(units);
  const { findings } = study;
  const said = findingLines(
    { findings: findings.map((finding) => ({ ...finding, station: "flow" as const })) },
    figures,
    WIDTH,
  );
  return [flowTable(study, figures).join("\n"), ...(findings.length > 0 ? [said.join("\n")] : [])].join("\n\n");
}
