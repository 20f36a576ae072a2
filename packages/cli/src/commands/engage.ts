import { engage, traceEdges, uncutRings } from "@bitwright/engine";
import { formatQuantity, readLayoutFile, type UnitSystem } from "@bitwright/traveler";
import { columns } from "../columns.ts";
import { complaintAbout } from "../complaint.ts";
import { readJson } from "../files.ts";
import { optionQuantity } from "../option-quantity.ts";
import type { Terminal } from "../terminal.ts";

/** Options of `bitwright engage`. */
export interface EngageOptions {
  readonly advance: string;
  readonly json?: boolean;
  readonly units: UnitSystem;
}

/** What each cutter of a layout file takes at an advance per revolution. */
export function engageCommand(file: string, options: EngageOptions, terminal: Terminal): void {
  const read = readLayoutFile(readJson(file));
  if (!read.ok) throw complaintAbout(file, read.problems);
  const advance = optionQuantity("length", "--advance", options.advance, { least: "0 mm", most: "100 mm" });
  const layout = read.value;
  const trace = traceEdges(layout);
  const { area, volume } = engage(trace, advance);
  const result = {
    advance,
    holeArea: Math.PI * trace.holeRadius ** 2,
    totalVolumePerRevolution: volume.reduce((sum, one) => sum + one, 0),
    uncutRings: uncutRings(layout),
    cutters: layout.cutters.map((_, index) => ({
      index,
      areaOfCut: area[index],
      volumePerRevolution: volume[index],
    })),
  };
  if (options.json) {
    terminal.say(JSON.stringify(result, null, 2));
    return;
  }
  const { units } = options;
  const length = (si: number) => formatQuantity("length", si, units);
  terminal.say(
    `Advance ${length(advance)} per revolution, hole ${formatQuantity("diameter", layout.holeDiameter, units)}`,
  );
  terminal.say(
    columns(
      ["cutter", "radius", "area of cut", "volume per rev", "share"],
      result.cutters.map(({ index, areaOfCut, volumePerRevolution }) => [
        String(index + 1),
        length(layout.cutters[index].radius),
        formatQuantity("area", areaOfCut, units),
        formatQuantity("cut volume", volumePerRevolution, units),
        formatQuantity("share", volumePerRevolution / result.totalVolumePerRevolution || 0, units),
      ]),
    ),
  );
  const hole = result.holeArea * advance;
  terminal.say(
    `Together ${formatQuantity("cut volume", result.totalVolumePerRevolution, units)} of the hole's ${formatQuantity("cut volume", hole, units)} per revolution.`,
  );
  for (const [from, to] of result.uncutRings) terminal.say(`Uncut ring from ${length(from)} to ${length(to)} radius.`);
}
