import {
  drillAtWeight,
  drillingSpecificEnergy,
  drillingStrength,
  mechanicalSpecificEnergy,
  rateOfPenetration,
  traceEdges,
} from "@bitwright/engine";
import { formatQuantity, readLayoutFile, readRockFile, type UnitSystem } from "@bitwright/traveler";
import { columns } from "../columns.ts";
import { Complaint, complaintAbout } from "../complaint.ts";
import { readJson } from "../files.ts";
import { optionQuantity, optionRotarySpeed } from "../option-quantity.ts";
import type { Terminal } from "../terminal.ts";

/** Options of `bitwright drill`. */
export interface DrillOptions {
  readonly rock: string;
  readonly weight: string;
  readonly rpm: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

/** Rate, torque and forces of a layout in a rock under a weight. */
export function drillCommand(file: string, options: DrillOptions, terminal: Terminal): void {
  const layout = readLayoutFile(readJson(file));
  if (!layout.ok) throw complaintAbout(file, layout.problems);
  const rock = readRockFile(readJson(options.rock));
  if (!rock.ok) throw complaintAbout(options.rock, rock.problems);
  const weight = optionQuantity("force", "--weight", options.weight, { least: "1 N", most: "1000 kN" });
  const rotarySpeed = optionRotarySpeed("--rpm", options.rpm);
  const trace = traceEdges(layout.value);
  const holeRadius = trace.holeRadius;
  const { advance, bit, loads, engagement } = stateAt(() => drillAtWeight({ trace, response: rock.value }, weight));
  const rate = rateOfPenetration({ advance, rotarySpeed });
  const result = {
    advance,
    rate,
    rotarySpeed,
    weight: bit.weight,
    weightCutting: bit.cuttingWeight,
    weightContact: bit.contactWeight,
    torque: bit.torque,
    power: bit.torque * rotarySpeed,
    E: drillingSpecificEnergy({ torque: bit.torque, advance, holeRadius }),
    S: drillingStrength({ weight: bit.weight, advance, holeRadius }),
    MSE: mechanicalSpecificEnergy({ weight: bit.weight, torque: bit.torque, rotarySpeed, rate, holeRadius }),
    lateralForce: bit.lateralForce,
    lateralAzimuth: bit.lateralAzimuth,
    lateralShare: bit.lateralShare,
    cutters: layout.value.cutters.map((_, index) => ({
      index,
      areaOfCut: engagement.area[index],
      tangential: loads.tangential[index],
      axial: loads.cuttingAxial[index] + loads.contactAxial[index],
      radial: loads.radial[index],
      cuttingNormal: loads.cuttingNormal[index],
      contactNormal: loads.contactNormal[index],
      torque: loads.torque[index],
    })),
  };
  if (options.json) {
    terminal.say(JSON.stringify(result, null, 2));
    return;
  }
  const { units } = options;
  const force = (si: number) => formatQuantity("force", si, units);
  const stress = (si: number) => formatQuantity("strength", si, units);
  const share = (si: number) => formatQuantity("share", si, units);
  terminal.say(
    [
      `Weight ${force(result.weight)}: ${force(result.weightCutting)} cuts, ${force(result.weightContact)} rubs`,
      `Advance ${formatQuantity("length", advance, units)} per revolution, ${formatQuantity("rate", rate, units)} at ${formatQuantity("rotary speed", rotarySpeed, units)}`,
      `Torque ${formatQuantity("torque", result.torque, units)}, rotary power ${formatQuantity("power", result.power, units)}`,
      `E ${stress(result.E)}, S ${stress(result.S)}, MSE ${stress(result.MSE)}`,
      `Side force ${force(result.lateralForce)}, ${share(result.lateralShare)} of the weight`,
      "",
      columns(
        ["cutter", "radius", "area of cut", "drag", "axial", "outward"],
        result.cutters.map((cutter) => [
          String(cutter.index + 1),
          formatQuantity("length", layout.value.cutters[cutter.index].radius, units),
          formatQuantity("area", cutter.areaOfCut, units),
          force(cutter.tangential),
          force(cutter.axial),
          force(cutter.radial),
        ]),
      ),
    ].join("\n"),
  );
}

/** A layout that touches nothing carries no weight: say so instead of failing. */
function stateAt<T>(solve: () => T): T {
  try {
    return solve();
  } catch (error) {
    if (error instanceof RangeError) throw new Complaint([`this layout cannot carry that weight: ${error.message}`]);
    throw error;
  }
}
