import { PORT_GOALS, type PortGoal } from "@bitwright/engine";
import { figuresIn } from "@bitwright/shop";
import { type PortsStudy, portsStudy, type UnitSystem, workUp } from "@bitwright/traveler";
import { columns } from "../columns.ts";
import { Complaint } from "../complaint.ts";
import { readTraveler } from "../read-traveler.ts";
import type { Terminal } from "../terminal.ts";
import { wholeNumber } from "../whole-number.ts";

/** Options of `bitwright ports`. */
export interface PortsOptions {
  readonly goal?: string;
  readonly sets?: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

const USUAL_SETS = 6;
const MOST_SETS = 1000;

/** Sets of ports for the bit of a traveler, the best for the goal first. */
export function portsCommand(file: string, { goal, sets, json, units }: PortsOptions, terminal: Terminal): void {
  const most = wholeNumber("--sets", sets, USUAL_SETS, 1, MOST_SETS);
  const study = portsStudy(workUp(readTraveler(file)), goalOf(goal));
  const shown = { ...study, sets: study.sets.slice(0, most) };
  terminal.say(json ? JSON.stringify(shown, null, 2) : portsText(shown, units));
}

function goalOf(text = "cleaning"): PortGoal {
  const goal = PORT_GOALS.find((each) => each === text.replaceAll("-", " "));
  if (goal === undefined) {
    const known = PORT_GOALS.map((each) => each.replaceAll(" ", "-")).join(", ");
    throw new Complaint([`--goal: got "${text}"; give one of ${known}`]);
  }
  return goal;
}

function portsText({ goal, sets, none, slots, slotSpeed, pressureForBit, largestPort }: PortsStudy, units: UnitSystem) {
  const { of } = figuresIn(units);
  const room = largestPort === undefined ? "" : `, the body has room for ports of ${of("length", largestPort)}`;
  const parts = [`Ports for ${goal}: the pump has ${of("pressure", pressureForBit)} left for the bit${room}.`];
  if (none !== undefined) parts.push(none);
  if (sets.length > 0) {
    parts.push(
      columns(
        ["ports", "costs", "leaves", "speed", "impact", "slots washed", "plugs"],
        sets.map((set) => [
          `${set.count} of ${of("diameter", set.diameter)}`,
          of("pressure", set.pressureDrop),
          set.pressureLeft < 0 ? "too dear" : of("pressure", set.pressureLeft),
          `${of("speed", set.speed)}${set.speedInWindow ? "" : " !"}`,
          of("force", set.impact),
          `${set.washedSlots} of ${slots.length}`,
          set.plug.level,
        ]),
        [0, 6],
      ),
      `${sets[0].plug.reason}${sets.some(({ speedInWindow }) => !speedInWindow) ? " ! marks a speed outside what practice keeps to." : ""}`,
    );
  }
  if (slots.length > 0) {
    const widths = slots.map(({ footWidth, area, name }) => [name, of("length", footWidth), of("area", area)]);
    const speed = slotSpeed === undefined ? "" : `\nMean speed in the slots: ${of("speed", slotSpeed)}.`;
    parts.push(columns(["slot", "wide at the core", "area"], widths) + speed);
  }
  return parts.join("\n\n");
}
