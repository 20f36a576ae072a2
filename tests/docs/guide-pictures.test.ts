import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, dirname } from "node:path";
import {
  bandsSheets,
  choiceSheets,
  depthSheets,
  flowSheets,
  lifeSheets,
  mapSheets,
  powerSheets,
  type Sheet,
  sheetsOf,
  stabilitySheets,
} from "@bitwright/shop";
import { cardPrint } from "@bitwright/shop/print";
import {
  bandsStudy,
  choiceStudy,
  depthStudy,
  flowStudy,
  mapStudy,
  stabilityStudy,
  type Workup,
} from "@bitwright/traveler";
import { describe, expect, it } from "vitest";
import { projectFile } from "../support/command.ts";
import { type DEMOS, demoWorkup } from "../support/demo-workup.ts";

const options = { units: "field", program: "Bitwright" } as const;

/** Where the server of the shop would give the phone page. */
const CARD_LINK = "http://192.168.1.20:4173/api/travelers/ridge-road/sheets/card.html?units=field";

/** How the sheets of a command are made from a job, as the command makes them. */
const COMMANDS = {
  work: (workup: Workup) => sheetsOf(workup, options),
  print: (workup: Workup) => [{ name: "card.svg", text: cardPrint(workup, { ...options, link: CARD_LINK }).svg }],
  map: (workup: Workup) => mapSheets(workup, mapStudy(workup), options),
  depth: (workup: Workup) => depthSheets(workup, depthStudy(workup), options),
  power: (workup: Workup) => powerSheets(workup, options),
  stability: (workup: Workup) => stabilitySheets(workup, stabilityStudy(workup, { speeds: 2 }), options),
  bands: (workup: Workup) => bandsSheets(workup, bandsStudy(workup, { samples: 100 }), options),
  rank: (workup: Workup) => {
    const study = choiceStudy(workup);
    return study ? choiceSheets(workup, study, options) : [];
  },
  flow: (workup: Workup) => {
    const study = flowStudy(workup, { ports: { count: 3, diameter: (7 / 16) * 0.0254 }, pumps: 2 });
    return study ? flowSheets(workup, study, options) : [];
  },
  life: (workup: Workup) => lifeSheets(workup, workup.life, options),
} satisfies Record<string, (workup: Workup) => Sheet[]>;

interface Picture {
  readonly traveler: (typeof DEMOS)[number];
  readonly command: keyof typeof COMMANDS;
  readonly sheet: string;
  readonly page: string;
}

/**
 * The pictures of the guide are the drawings that the commands make of the examples. With BITWRIGHT_GOLDEN=write they are
 * written anew, to be looked at before they are committed.
 */
const PICTURES: Readonly<Record<string, Picture>> = {
  "house-well-face": { traveler: "house-well", command: "work", sheet: "face.svg", page: "README.md" },
  "house-well-profile": { traveler: "house-well", command: "work", sheet: "profile.svg", page: "README.md" },
  "house-well-card": { traveler: "house-well", command: "print", sheet: "card.svg", page: "README.md" },
  "measured-bit-profile": { traveler: "measured-bit", command: "work", sheet: "profile.svg", page: "measured-bit.md" },
  "house-well-map": { traveler: "house-well", command: "map", sheet: "map-4.svg", page: "studies.md" },
  "house-well-weight": { traveler: "house-well", command: "depth", sheet: "weight-by-depth.svg", page: "studies.md" },
  "house-well-power": { traveler: "house-well", command: "power", sheet: "power.svg", page: "studies.md" },
  "house-well-crossing": { traveler: "house-well", command: "stability", sheet: "crossing-2.svg", page: "studies.md" },
  "house-well-bands": { traveler: "house-well", command: "bands", sheet: "bands.svg", page: "studies.md" },
  "house-well-choice": { traveler: "house-well", command: "rank", sheet: "choice.svg", page: "studies.md" },
  "house-well-losses": { traveler: "house-well", command: "flow", sheet: "losses.svg", page: "studies.md" },
  "house-well-pump": { traveler: "house-well", command: "flow", sheet: "pump.svg", page: "studies.md" },
  "house-well-life": { traveler: "house-well", command: "life", sheet: "life.svg", page: "studies.md" },
};

describe.each(Object.entries(PICTURES))("%s", (name, { traveler, command, sheet, page }) => {
  const path = `docs/guide/pictures/${name}.svg`;

  it("is the drawing of today", () => {
    const drawn = COMMANDS[command](demoWorkup(traveler)).find((one) => one.name === sheet)?.text ?? "";
    expect(drawn).toContain("<svg");
    if (process.env.BITWRIGHT_GOLDEN === "write") {
      mkdirSync(dirname(projectFile(path)), { recursive: true });
      writeFileSync(projectFile(path), drawn);
    }
    const kept = existsSync(projectFile(path)) ? readFileSync(projectFile(path), "utf8") : "";
    // One truth value: a picture that changed is looked at, not read line by line in a terminal.
    expect(
      kept === drawn,
      "changed: write it with BITWRIGHT_GOLDEN=write npx vitest run tests/docs, and look at it",
    ).toBe(true);
  }, 180_000);

  it("stands on its page with words for those who cannot see it", () => {
    const text = readFileSync(projectFile(`docs/guide/${page}`), "utf8");
    const [, words = ""] = new RegExp(`!\\[([^\\]]*)\\]\\(pictures/${basename(path)}\\)`).exec(text) ?? [];
    expect(words.length).toBeGreaterThan(20);
  });
});
