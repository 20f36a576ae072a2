import type { RockResponse } from "@bitwright/engine";
import { type Problem, problem } from "../document/problem.ts";
import type { Read } from "./layout-file.ts";
import { isJsonObject, type NumberRule, numberField } from "./number-field.ts";

const ROCK = {
  specificEnergy: { unit: "Pa", least: 1e3, most: 2e9 },
  contactStress: { unit: "Pa", least: 0, most: 5e9 },
  faceFriction: { unit: "rad", least: 0, most: 1.2 },
  flatFriction: { unit: "-", least: 0, most: 3 },
  kappa: { unit: "-", least: 0, most: 100 },
} as const satisfies Record<keyof RockResponse, NumberRule>;

/**
 * Reads a rock file: `{ specificEnergy, contactStress, faceFriction, flatFriction, kappa }` in Pa, rad and pure numbers.
 * Every field is needed; other fields are let pass.
 */
export function readRockFile(json: unknown): Read<RockResponse> {
  const problems: Problem[] = [];
  if (!isJsonObject(json)) {
    const expected = `give an object with ${Object.keys(ROCK).join(", ")}`;
    return { ok: false, problems: [problem({ field: "rock", got: JSON.stringify(json) ?? "nothing", expected })] };
  }
  const field = (name: keyof RockResponse) => numberField(json, name, ROCK[name], { path: "", problems });
  const rock: RockResponse = {
    specificEnergy: field("specificEnergy"),
    contactStress: field("contactStress"),
    faceFriction: field("faceFriction"),
    flatFriction: field("flatFriction"),
    kappa: field("kappa"),
  };
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: rock };
}
