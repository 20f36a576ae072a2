import { parseQuantity, type QuantityKind, type QuantityLimits, type UnitSystem } from "@bitwright/traveler";
import { Complaint } from "./complaint.ts";

/** The SI value of a quantity given on the command line, `--weight 20kN`. */
export function optionQuantity(kind: QuantityKind, option: string, text: string, limits: QuantityLimits = {}): number {
  const parsed = parseQuantity(kind, text, option, limits);
  if (!parsed.ok) throw new Complaint([parsed.problem.message]);
  return parsed.value.si;
}

/** The SI value of a rotary speed given on the command line; a bare number is in turns per minute, as the option says. */
export function optionRotarySpeed(option: string, text: string): number {
  const inRpm = /^[\d.,\s]+$/.test(text) ? `${text.trim()} rpm` : text;
  return optionQuantity("rotary speed", option, inRpm, { least: "1 rpm", most: "1000 rpm" });
}

/** The unit system named on the command line. */
export function optionUnits(text: string): UnitSystem {
  if (text === "field" || text === "metric") return text;
  throw new Complaint([`--units: got "${text}"; give field or metric`]);
}
