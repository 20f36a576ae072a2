import type { BitLayout, PlacedCutter } from "@bitwright/engine";
import { type Problem, problem } from "../document/problem.ts";
import { isJsonObject, type JsonObject, type NumberRule, numberField } from "./number-field.ts";

/** A file's content, or everything that is wrong with it. */
export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const TURN = 2 * Math.PI;

const HOLE: NumberRule = { unit: "m", least: 0.01, most: 2 };

/** The numbers of one cutter, in SI and in the bit frame; those with `otherwise` may be left out. */
const CUTTER = {
  radius: { unit: "m", least: 0, most: 1 },
  azimuth: { unit: "rad", least: -2 * TURN, most: 2 * TURN },
  height: { unit: "m", least: -1, most: 1 },
  profileAngle: { unit: "rad", least: -Math.PI / 2, most: Math.PI },
  backRake: { unit: "rad", least: -1.2, most: 1.2 },
  sideRake: { unit: "rad", least: -1.2, most: 1.2 },
  faceDiameter: { unit: "m", least: 0.001, most: 0.1 },
  wing: { unit: "-", least: 0, most: 40, otherwise: 0 },
  length: { unit: "m", least: 0.001, most: 0.1, otherwise: 0.008 },
  chamferWidth: { unit: "m", least: 0, most: 0.005, otherwise: 0 },
  chamferAngle: { unit: "rad", least: 0, most: 1.5, otherwise: 0 },
  wornHeight: { unit: "m", least: 0, most: 0.1, otherwise: 0 },
} as const satisfies Record<keyof PlacedCutter, NumberRule>;

/**
 * Reads a layout file: `{ holeDiameter, cutters: [{ radius, azimuth, height, profileAngle, backRake, sideRake,
 * faceDiameter }] }` in metres and radians, in the bit frame. A cutter may also carry `wing`, `length`, `chamferWidth`,
 * `chamferAngle` and `wornHeight`; left out they are 0, the length 8 mm. Other fields are let pass.
 */
export function readLayoutFile(json: unknown): Read<BitLayout> {
  if (!isJsonObject(json)) return refuse("layout", json, "give an object with holeDiameter and cutters");
  const problems: Problem[] = [];
  const holeDiameter = numberField(json, "holeDiameter", HOLE, { path: "", problems });
  const rows = json.cutters;
  if (!Array.isArray(rows) || rows.length === 0) {
    problems.push(problem({ field: "cutters", got: shown(rows), expected: "give a list of one cutter or more" }));
    return { ok: false, problems };
  }
  const cutters = rows.map((row: unknown, index) => {
    const path = `cutters[${index}]`;
    if (isJsonObject(row)) return readCutter(row, path, problems);
    problems.push(problem({ field: path, got: shown(row), expected: "give an object with the cutter's pose" }));
    return undefined;
  });
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, value: { holeDiameter, cutters: cutters.filter((cutter) => cutter !== undefined) } };
}

function readCutter(row: JsonObject, path: string, problems: Problem[]): PlacedCutter {
  const at = { path, problems };
  const field = (name: keyof PlacedCutter) => numberField(row, name, CUTTER[name], at);
  const cutter: PlacedCutter = {
    wing: field("wing"),
    radius: field("radius"),
    azimuth: field("azimuth"),
    height: field("height"),
    profileAngle: field("profileAngle"),
    backRake: field("backRake"),
    sideRake: field("sideRake"),
    faceDiameter: field("faceDiameter"),
    length: field("length"),
    chamferWidth: field("chamferWidth"),
    chamferAngle: field("chamferAngle"),
    wornHeight: field("wornHeight"),
  };
  if (cutter.wornHeight >= cutter.faceDiameter) {
    problems.push(
      problem({
        field: `${path}.wornHeight`,
        got: String(cutter.wornHeight),
        expected: `give a number in m below the face diameter ${cutter.faceDiameter}`,
      }),
    );
  }
  return cutter;
}

function refuse(field: string, got: unknown, expected: string): { ok: false; problems: Problem[] } {
  return { ok: false, problems: [problem({ field, got: shown(got), expected })] };
}

function shown(value: unknown): string {
  const text = value === undefined ? "nothing" : JSON.stringify(value);
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
}
