import { Command, CommanderError } from "commander";
import { backupCommand, restoreCommand } from "./commands/backup.ts";
import { bandsCommand } from "./commands/bands.ts";
import { checkCommand } from "./commands/check.ts";
import { depthCommand } from "./commands/depth.ts";
import { drillCommand } from "./commands/drill.ts";
import { engageCommand } from "./commands/engage.ts";
import { flowCommand } from "./commands/flow.ts";
import { groundCommand } from "./commands/ground.ts";
import { layoutCommand } from "./commands/layout.ts";
import { lifeCommand } from "./commands/life.ts";
import { mapCommand } from "./commands/map.ts";
import { portsCommand } from "./commands/ports.ts";
import { powerCommand } from "./commands/power.ts";
import { rankCommand } from "./commands/rank.ts";
import { schemaCommand } from "./commands/schema.ts";
import { serveCommand } from "./commands/serve.ts";
import { DATA_OPTION, shopCommands } from "./commands/shop.ts";
import { solveLayoutCommand } from "./commands/solve-layout.ts";
import { stabilityCommand } from "./commands/stability.ts";
import { workCommand } from "./commands/work.ts";
import { Complaint } from "./complaint.ts";
import { optionCardLink } from "./option-card-link.ts";
import { optionUnits } from "./option-quantity.ts";
import { processTerminal, type Terminal } from "./terminal.ts";

const BAD_INPUT = 2;

const gather = (value: string, before: readonly string[]) => [...before, value];

/** Runs one command; gives the status the process ends with: 0 done, 1 a fault of the program, 2 bad input. */
export async function run(words: readonly string[], terminal: Terminal = processTerminal): Promise<number> {
  let status = 0;
  const program = bitwright(terminal, (ended) => {
    status = ended;
  });
  try {
    await program.parseAsync(words, { from: "user" });
    return status;
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

/** `endWith` hears the status of a long command that was stopped early. */
function bitwright(terminal: Terminal, endWith: (status: number) => void): Command {
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
    .option("--out <folder>", "write workup.json, drawings, card (PDF, phone page, text) and cutter table there")
    .option("--card-link <url>", "address of the card for a phone, printed on card.pdf as a QR code", optionCardLink)
    .action((file, options) => workCommand(file, options, terminal));
  command("check", "read a traveler and name every problem and every assumed value")
    .argument("<traveler>", "traveler file")
    .action((file, options) => checkCommand(file, options, terminal));
  plainCommand("layout", "print the cutter layout of a traveler as JSON, in metres and radians")
    .argument("<traveler>", "traveler file")
    .option("--json", "taken for the sake of habit: the layout is always JSON in SI")
    .action((file) => layoutCommand(file, terminal));
  command("map", "weight against rotary speed for each bed, with every limit and the best point")
    .argument("<traveler>", "traveler file")
    .option("--bed <name>", "only this bed")
    .option("--avoid <rpm-rpm>", "rotary speeds to keep out of, 84-92; repeat for each", gather, [])
    .option("--out <folder>", "write a map of each bed and its table there")
    .action((file, options) => mapCommand(file, options, terminal));
  command("depth", "weight, feed and gauge joint by joint, and the rate that the flow cleans")
    .argument("<traveler>", "traveler file")
    .option("--out <folder>", "write both drawings and the table there")
    .action((file, options) => depthCommand(file, options, terminal));
  command("power", "what each bed asks of the rig's engine, and the fuel it burns")
    .argument("<traveler>", "traveler file")
    .option("--out <folder>", "write the drawing and its table there")
    .action((file, options) => powerCommand(file, options, terminal));
  command("stability", "balance, rubbing, boundaries crossed, and the speeds at which the string lets the bit be")
    .argument("<traveler>", "traveler file")
    .option("--bed <name>", "only this bed")
    .option("--speeds <count>", "rotary speeds to try in each bed")
    .option("--out <folder>", "write the drawings and tables there")
    .action(async (file, options) => endWith(await stabilityCommand(file, options, terminal)));
  command(
    "flow",
    "where the pump's pressure goes and the flow it gives; what other ports, another flow or a second pump do",
  )
    .argument("<traveler>", "traveler file")
    .option("--ports <count x diameter>", 'other ports: "3 x 1/2 in"')
    .option("--pumps <count>", "so many pumps of this kind side by side")
    .option("--flow <flow>", "flow asked of all pumps together: 180gpm")
    .option("--out <folder>", "write both pictures and their tables there")
    .action((file, options) => flowCommand(file, options, terminal));
  command("bands", "spread of rate, weight and torque over what is not known of the ground")
    .argument("<traveler>", "traveler file")
    .option("--bed <name>", "only this bed")
    .option("--samples <count>", "draws for each bed")
    .option("--seed <number>", "the same seed gives the same draws")
    .option("--out <folder>", "write the picture and its table there")
    .action(async (file, options) => endWith(await bandsCommand(file, options, terminal)));
  command("life", "how far the bit goes in this ground, hole after hole, and what ends it")
    .argument("<traveler>", "traveler file")
    .option("--holes <count>", "most holes of this column to drill")
    .option("--wear <factor>", "wear coefficient as a multiple of the default")
    .option("--samples <count>", "lives to draw over what is not known of wear and ground; 40 tell enough")
    .option("--seed <number>", "the same seed gives the same draws")
    .option("--out <folder>", "write the picture, the curves and the march there")
    .action(async (file, options) => endWith(await lifeCommand(file, options, terminal)));
  command("rank", "candidate bits by what a length of hole costs with them, beside the rules of thumb")
    .argument("<traveler>", "traveler file")
    .option("--cutter <codes>", "only these cutters: 1308,1608")
    .option("--wings <counts>", "only so many wings: 4,5 or 3-6")
    .option("--bevel <degrees>", "only these bevels: 16,20")
    .option("--body <materials>", "only these bodies: steel,matrix")
    .option("--all", "look at every combination; left out, a staged search looks at those that can be the cheapest")
    .option("--out <folder>", "write the picture, the table of candidates and the first as a specification there")
    .action(async (file, options) => endWith(await rankCommand(file, options, terminal)));
  command("ports", "sets of ports in stock sizes for a goal, with what each costs in pressure")
    .argument("<traveler>", "traveler file")
    .option("--goal <goal>", "cooling, cleaning, plug-resistance or impact")
    .option("--sets <count>", "most sets to print")
    .action((file, options) => portsCommand(file, options, terminal));
  command("solve-layout", "layouts that are even and steady at once, to choose from")
    .argument("<traveler>", "traveler file")
    .option("--measure <area|work|wear>", "what is to be even over the cutters")
    .option("--candidates <count>", "layouts to try")
    .option("--seed <number>", "the same seed gives the same layouts")
    .option("--threads <count>", "threads to search on")
    .option("--out <folder>", "write the picture of the choices, their layouts and the drawings of the best there")
    .action(async (file, options) => endWith(await solveLayoutCommand(file, options, terminal)));
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
  shopCommands(
    plainCommand("shop", "keep travelers with every version: list, save, show, history, attach, take"),
    terminal,
  );
  plainCommand("serve", "serve the shop to a browser on this machine: screens and API")
    .option("--data <place>", DATA_OPTION)
    .option("--port <number>", "port to listen on; 7417, or the next that is free, where not given")
    .option("--host <address>", "loopback address to listen on", "127.0.0.1")
    .option("--by <who>", "who saves; the user of this machine where not given")
    .option("--no-examples", "leave an empty shop empty")
    .action((options) => serveCommand(options, terminal));
  plainCommand("backup", "write the whole shop into one new zip file")
    .argument("<file>", "new file, such as shop.zip")
    .option("--data <place>", DATA_OPTION)
    .action((file, options) => backupCommand(file, options, terminal));
  plainCommand("restore", "fill an empty shop from a backup")
    .argument("<file>", "backup of a shop")
    .option("--data <place>", DATA_OPTION)
    .action((file, options) => restoreCommand(file, options, terminal));
  plainCommand("schema", "print the JSON Schema of the traveler")
    .option("--json", "taken for the sake of habit: the schema is always JSON")
    .action(() => schemaCommand(terminal));
  return program;
}
