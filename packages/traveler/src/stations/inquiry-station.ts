import { commonPractice, enteredBy, type Finding } from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";
import { formatQuantity, type QuantityKind } from "../quantity/index.ts";
import type { BedCut } from "./cut-station.ts";

/** Remarks on what was asked: what was set by hand, and how the driller's aims stand to what was computed. */
export function inquiryFindings(traveler: ResolvedTraveler, beds: readonly BedCut[]): Finding[] {
  return [...traveler.findings, ...byHand(traveler), ...aims(traveler, beds), ...presentTool(traveler, beds)];
}

interface SetByHand {
  readonly field: string;
  readonly what: string;
  readonly kind: QuantityKind;
  readonly value: number | undefined;
  readonly unit: string;
}

function byHand({ overrides }: ResolvedTraveler): Finding[] {
  const { weight, rotarySpeed, flow, limits } = overrides;
  const set: readonly SetByHand[] = [
    { field: "weight", what: "weight on the bit", kind: "force", value: weight, unit: "N" },
    { field: "rotarySpeed", what: "rotary speed", kind: "rotary speed", value: rotarySpeed, unit: "rad/s" },
    { field: "flow", what: "flow", kind: "flow", value: flow, unit: "m³/s" },
    { field: "limits.coolingFlow", what: "least flow to cool", kind: "flow", value: limits.coolingFlow, unit: "m³/s" },
    {
      field: "limits.upholeSpeed",
      what: "least uphole speed",
      kind: "uphole speed",
      value: limits.upholeSpeed,
      unit: "m/s",
    },
    { field: "limits.cuttingsShare", what: "cuttings share", kind: "share", value: limits.cuttingsShare, unit: "-" },
    { field: "limits.rate", what: "largest rate", kind: "rate", value: limits.rate, unit: "m/s" },
    { field: "limits.torque", what: "largest torque", kind: "torque", value: limits.torque, unit: "N·m" },
  ];
  const figures = set.flatMap(({ field, what, kind, value, unit }): Finding[] => {
    if (value === undefined) return [];
    const path = `overrides.${field}`;
    const message = `Set by hand: ${what} ${formatQuantity(kind, value, "field")}. Everything below is worked with it.`;
    return [{ code: "set-by-hand", severity: "note", where: path, message, value, unit, source: enteredBy(path) }];
  });
  const rocks = Object.keys(overrides.rocks).map((id): Finding => {
    const path = `overrides.rocks.${id}`;
    const message = `Set by hand: properties of ${id}. Every bed of it is worked with them.`;
    return { code: "set-by-hand", severity: "note", where: path, message, source: enteredBy(path) };
  });
  return [...figures, ...rocks];
}

function aims({ inquiry }: ResolvedTraveler, beds: readonly BedCut[]): Finding[] {
  const { weight, rotarySpeed, rate } = inquiry.targets;
  const source = enteredBy("inquiry.targets");
  return beds.flatMap(({ bed, run, rate: computed }): Finding[] => {
    const found: Finding[] = [];
    if (weight !== undefined && weight > run.computed.weight) {
      const message = "The driller means to run more weight than the limits let through here. Say so on the phone.";
      const figures = { value: weight, limit: run.computed.weight, unit: "N", source };
      found.push({ code: "aim-over-weight", severity: "caution", where: bed.name, message, ...figures });
    }
    if (rate !== undefined && rate > computed.high) {
      const message = "The rate hoped for is over the high side of what is computed here.";
      const figures = { value: rate, limit: computed.high, unit: "m/s", source };
      found.push({ code: "aim-over-rate", severity: "note", where: bed.name, message, ...figures });
    }
    if (rotarySpeed !== undefined && rotarySpeed > run.practice.rotarySpeedBand.high) {
      const message = "The driller means to turn faster than the rule of thumb for this ground.";
      const figures = { value: rotarySpeed, limit: run.practice.rotarySpeedBand.high, unit: "rad/s" };
      found.push({
        code: "aim-over-speed",
        severity: "caution",
        where: bed.name,
        message,
        ...figures,
        source: commonPractice(),
      });
    }
    return found;
  });
}

function presentTool({ inquiry }: ResolvedTraveler, beds: readonly BedCut[]): Finding[] {
  const { presentTool: tool } = inquiry;
  if (tool?.rate === undefined || beds.length === 0) return [];
  const footage = beds.reduce((sum, { bed }) => sum + bed.bottom - bed.top, 0);
  const hours = beds.reduce((sum, { bed, rate }) => sum + (bed.bottom - bed.top) / rate.mid, 0);
  return [
    {
      code: "rate-beside-present-tool",
      severity: "note",
      where: `present tool: ${tool.kind}`,
      message:
        "Mean rate computed for this bit over its stretch, beside that of the tool in use now; connections and trips not counted.",
      value: footage / hours,
      limit: tool.rate,
      unit: "m/s",
      source: enteredBy("inquiry.presentTool.rate"),
    },
  ];
}
