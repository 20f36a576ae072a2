import { Command, CommanderError } from "commander";
import { checkCommand } from "./commands/check.ts";
import { drillCommand } from "./commands/drill.ts";
import { engageCommand } from "./commands/engage.ts";
import { groundCommand } from "./commands/ground.ts";
import { layoutCommand } from "./commands/layout.ts";
import { schemaCommand } from "./commands/schema.ts";
import { workCommand } from "./commands/work.ts";
import { Complaint } from "./complaint.ts";
import { optionUnits } from "./option-quantity.ts";
import { processTerminal, type Terminal } from "./terminal.ts";

const BAD_INPUT = 2;

/** Runs one command; gives the status the process ends with: 0 done, 1 a fault of the program, 2 bad input. */
export async function run(words: readonly string[], terminal: Terminal = processTerminal): Promise<number> {
  const program = bitwright(terminal);
  try {
    await program.parseAsync(words, { from: "user" });
    return 0;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : BAD_INPUT;
    if (error instanceof Complaint) {
      for (const line of error.lines) terminal.complain(line);
      return BAD_INPUT;
    }
    terminal.complain(
      `This is a fault of the program, not of the input: ${error instanceof Error ? error.stack : error}`,
    );
    return 1;
  }
}

function bitwright(terminal: Terminal): Command {
  const program = new Command("bitwright")
    .description("The traveler of a PDC drag bit: from the driller's call to the card.")
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.say(text.trimEnd()),
      writeErr: (text) => terminal.complain(text.trimEnd()),
      // "(Did you mean --out?)" goes on the line it belongs to.
      outputError: (text, write) => write(text.trimEnd().replace(/\n\(/g, " (")),
    });
  const plainCommand = (name: string, does: string) => program.command(name).description(does);
  const command = (name: string, does: string) =>
    plainCommand(name, does)
      .option("--units <system>", "units to print in: field or metric", optionUnits, "field")
      .option("--json", "print JSON in SI instead of text");
  command("work", "work a traveler up: fit, bit, cut, string, flow, card")
    .argument("<traveler>", "traveler file")
    .option("--out <folder>", "write workup.json, drawings, card and cutter table there")
    .action((file, options) => workCommand(file, options, terminal));
  command("check", "read a traveler and name every problem and every assumed value")
    .argument("<traveler>", "traveler file")
    .action((file, options) => checkCommand(file, options, terminal));
  plainCommand("layout", "print the cutter layout of a traveler as JSON, in metres and radians")
    .argument("<traveler>", "traveler file")
    .option("--json", "taken for the sake of habit: the layout is always JSON in SI")
    .action((file) => layoutCommand(file, terminal));
  command("engage", "what each cutter of a layout takes at an advance per revolution")
    .argument("<layout>", "layout file")
    .requiredOption("--advance <length>", "advance per revolution, for example 2mm or 0.08in")
    .action((file, options) => engageCommand(file, options, terminal));
  command("drill", "rate, torque and forces of a layout in a rock")
    .argument("<layout>", "layout file")
    .requiredOption("--rock <file>", "rock file: specificEnergy, contactStress, faceFriction, flatFriction, kappa")
    .requiredOption("--weight <force>", "weight on bit, for example 20kN or 4500lbf")
    .requiredOption("--rpm <speed>", "turns per minute")
    .action((file, options) => drillCommand(file, options, terminal));
  groundCommand(
    plainCommand("ground", "turn a field file (CSV or LAS) into the ground section of a traveler"),
    terminal,
  );
  plainCommand("schema", "print the JSON Schema of the traveler")
    .option("--json", "taken for the sake of habit: the schema is always JSON")
    .action(() => schemaCommand(terminal));
  return program;
}
