import { commonPractice, derivedFrom, type Finding, recalledFrom } from "../quantity/index.ts";
import type { StringFigures, StringStationInput } from "./string-state.ts";

/**
 * Share of the critical speed from which it is worth a word [-].
 *
 * @source (c) common practice, no source
 */
const NEAR_CRITICAL_SHARE = 0.85;

/**
 * Twist from which a string lets go hard enough to be worth a word: a turn [rad].
 *
 * @source (c) common practice, no source
 */
const MUCH_TWIST = 2 * Math.PI;

/** What is to be said of a collar to be added, the twist of the string and the speed at which its joints whip. */
export function motionFindings(input: StringStationInput, figures: StringFigures): Finding[] {
  return [...collarFindings(input, figures), ...twistFindings(figures), ...criticalFindings(input, figures)];
}

function collarFindings({ depth }: StringStationInput, { collar }: StringFigures): Finding[] {
  if (!collar) return [];
  const message =
    "So much collar in the place of pipe gives the rig the weight wanted from where this bit starts. It counts only once it is in the hole; where it is longer than the hole so far, start with less weight.";
  const source = derivedFrom("balance of forces along the string");
  const held = { value: collar.collarLength, limit: depth, unit: "m", source };
  return [{ code: "string.collar-needed", severity: "note", where: "feed", message, ...held }];
}

function twistFindings({ twist }: StringFigures): Finding[] {
  if (twist === undefined || twist <= MUCH_TWIST) return [];
  const message =
    "The string winds up by more than a turn at the torque of drilling. Let it unwind off bottom before the brake or the tongs come off.";
  const held = { value: twist, limit: MUCH_TWIST, unit: "rad", source: commonPractice() };
  return [{ code: "string.wound-up", severity: "note", where: "rotary", message, ...held }];
}

function criticalFindings({ rotarySpeed }: StringStationInput, { criticalSpeed }: StringFigures): Finding[] {
  if (rotarySpeed === undefined || criticalSpeed === undefined) return [];
  if (rotarySpeed < NEAR_CRITICAL_SHARE * criticalSpeed) return [];
  const message =
    "The speed planned is near or over that at which joints of this pipe whip between their tool joints; a recalled relation for straight pipe in air. Watch the string at the table and keep off speeds at which it shakes.";
  const held = { value: rotarySpeed, limit: criticalSpeed, unit: "rad/s", source: recalledFrom("API RP 7G") };
  return [{ code: "string.critical-speed", severity: "note", where: "rotary", message, ...held }];
}
