import type { SpeedWindow } from "@bitwright/engine";
import { LIMIT_NAMES, mapSheets } from "@bitwright/shop";
import {
  type BedMap,
  formatQuantity,
  type MapStudy,
  mapStudy,
  type QuantityKind,
  type UnitSystem,
  workUp,
} from "@bitwright/traveler";
import { columns } from "../columns.ts";
import { Complaint } from "../complaint.ts";
import { noSuchBed } from "../no-such-bed.ts";
import { optionRotarySpeed } from "../option-quantity.ts";
import { PROGRAM } from "../program.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { writeSheets } from "../write-sheets.ts";

/** Options of `bitwright map`. */
export interface MapOptions {
  readonly bed?: string;
  /** Speeds to keep out of, each as `84-92` in turns per minute. */
  readonly avoid?: readonly string[];
  readonly out?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

/** Weight against speed for the beds of a traveler: tables on the terminal, a map of each bed in a folder. */
export function mapCommand(file: string, { bed, avoid, out, json, units }: MapOptions, terminal: Terminal): void {
  const windows = (avoid ?? []).map(speedWindow);
  const workup = workUp(readTraveler(file));
  const study = mapStudy(workup, { avoid: windows, ...(bed === undefined ? {} : { bed }) });
  if (study.beds.length === 0 && bed !== undefined) throw noSuchBed(bed, workup.cut.beds);
  const wrote = writeSheets(out, () => mapSheets(workup, study, { units, program: PROGRAM }));
  if (json) {
    terminal.say(JSON.stringify(study, null, 2));
    return;
  }
  if (study.beds.length === 0) terminal.say("No bed of this hole is drilled with this bit.");
  terminal.say([...study.beds.map((one) => bedText(one, units)), ...remarks(study)].join("\n\n"));
  if (wrote) terminal.say(wrote);
}

/** Speeds to keep out of, as they were given: `84-92`. */
function speedWindow(text: string): SpeedWindow {
  const [, from, to] = /^\s*([\d.]+)\s*-\s*([\d.]+)\s*(?:rpm)?\s*$/.exec(text) ?? [];
  if (from === undefined || to === undefined) {
    throw new Complaint([`--avoid: got "${text}"; give two speeds in turns per minute, 84-92`]);
  }
  const [low, high] = [optionRotarySpeed("--avoid", from), optionRotarySpeed("--avoid", to)];
  if (!(low < high)) throw new Complaint([`--avoid: got "${text}"; the slower speed goes first`]);
  return { from: low, to: high, why: "as given" };
}

function bedText(
  { name, rock, top, bottom, map, run, rule, rulePoint, rulePasses, inside }: BedMap,
  units: UnitSystem,
): string {
  const figure = (kind: QuantityKind, si: number) => formatQuantity(kind, si, units, { figures: 3 });
  const row = (what: string, point: { weight: number; rotarySpeed: number; rate: number }, ends: string) => [
    what,
    figure("force", point.weight),
    figure("rotary speed", point.rotarySpeed),
    figure("rate", point.rate),
    ends,
  ];
  const points = [
    ...(map.best ? [row("best inside all limits", map.best, LIMIT_NAMES[map.best.binds])] : []),
    row("on the card", run, ""),
    rulePoint
      ? row(
          "rule of thumb",
          rulePoint,
          rulePasses.length > 0
            ? `passes ${rulePasses.map((limit) => LIMIT_NAMES[limit]).join(", ")}`
            : "inside all limits",
        )
      : [
          "rule of thumb",
          figure("force", rule.weight.mid),
          figure("rotary speed", rule.rotarySpeed.mid),
          "",
          "the bit buries",
        ],
    ...inside.map((point) =>
      row(
        "most weight",
        point,
        point.keptOut === undefined
          ? LIMIT_NAMES[point.binds]
          : `${LIMIT_NAMES[point.binds]}; keep out: ${point.keptOut}`,
      ),
    ),
  ];
  const range = `${figure("force", rule.weight.low)} to ${figure("force", rule.weight.high)} at ${figure("rotary speed", rule.rotarySpeed.low)} to ${figure("rotary speed", rule.rotarySpeed.high)}`;
  return [
    `${name}, ${figure("depth", top)} to ${figure("depth", bottom)}, taken as ${rock}`,
    columns(["", "weight on bit", "rotary", "rate", "held by"], points, [0, 4]),
    `The rule of thumb (common practice) is a box: ${range}.`,
  ].join("\n");
}

/** What is to be remarked, said once for all beds that it holds for. */
function remarks({ beds }: MapStudy): string[] {
  const said = new Map<string, string[]>();
  for (const { name, findings } of beds) {
    for (const { severity, message } of findings) {
      const key = `${severity.toUpperCase()}\n${message}`;
      said.set(key, [...(said.get(key) ?? []), name]);
    }
  }
  return [...said].map(([key, names]) => {
    const [severity, message] = key.split("\n");
    return `${severity} ${names.join("; ")}: ${message}`;
  });
}
