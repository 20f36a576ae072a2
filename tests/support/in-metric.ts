import { foot, gpm, inch, poundForce, poundPer100SquareFeet, poundPerFoot, ppg, psi } from "./field-units.ts";

/** Field units of the demo travelers: the metric unit that takes their place, and how much of it they are. */
const METRIC: Readonly<Record<string, readonly [string, number]>> = {
  ft: ["m", foot],
  in: ["mm", inch * 1000],
  lbf: ["N", poundForce],
  psi: ["kPa", psi / 1000],
  gpm: ["L/min", gpm * 60_000],
  ppg: ["kg/m3", ppg],
  "lb/ft": ["kg/m", poundPerFoot],
  "ft-lbf": ["N m", poundForce * foot],
  "lbf/psi": ["N/kPa", (poundForce / psi) * 1000],
  "lbf/100ft2": ["Pa", poundPer100SquareFeet],
  "ft/h": ["m/h", foot],
};

/** A document with every quantity in field units typed in metric ones, to all the digits a number has. */
export function inMetric(node: unknown): unknown {
  if (typeof node === "string") return quantityInMetric(node);
  if (Array.isArray(node)) return node.map(inMetric);
  if (node === null || typeof node !== "object") return node;
  // What a person wrote as words stays as it is.
  const words = new Set(["name", "notes", "phrase", "connection", "preset", "source"]);
  return Object.fromEntries(
    Object.entries(node).map(([key, value]) => [key, words.has(key) ? value : inMetric(value)]),
  );
}

function quantityInMetric(text: string): string {
  const parts = /^(?:(\d+) )?(\d+(?:\.\d+)?)(?:\/(\d+))? (\S+)$/.exec(text);
  const metric = parts ? METRIC[parts[4]] : undefined;
  if (!parts || !metric) return text;
  const [, whole = "0", top, bottom = "1"] = parts;
  return `${(Number(whole) + Number(top) / Number(bottom)) * metric[1]} ${metric[0]}`;
}
