import { type Band, band, enteredBy, mapBand } from "../quantity/index.ts";
import { bandProduct } from "./band-product.ts";
import type { Bed } from "./bed.ts";
import { bedFindings } from "./bed-findings.ts";
import { bedWorking } from "./bed-working.ts";
import { bottomHolePressureDifference } from "./bottom-hole-pressure-difference.ts";
import { classifyGround } from "./classify-ground.ts";
import { confinedStrength } from "./confined-strength.ts";
import type { Abrasivity, GroundBed, Stringer } from "./ground-bed.ts";
import type { Rock } from "./rock.ts";
import { abrasivityClass, cercharClass, rockAbrasivityIndex } from "./rock-abrasivity.ts";
import { rockResponse } from "./rock-response.ts";
import { rockById } from "./rock-table.ts";
import { strengthInState } from "./strength-in-state.ts";
import { unnamedGround } from "./unnamed-ground.ts";

/** One bed and the fluid over it. */
export interface WorkedBedInput {
  readonly bed: Bed;
  /** Density of the drilling fluid [kg/m³]. */
  readonly fluidDensity: number;
  /** Depth of the standing water level [m]. */
  readonly waterLevel: number;
  /** Depth of the top of the fluid in the hole [m]. */
  readonly fluidLevel: number;
  readonly shopRocks: readonly Rock[];
}

/**
 * The least strength worked with: a cutter meets some resistance even in running sand [Pa].
 *
 * @source (c) strength of very soft mud, no source
 */
export const LEAST_STRENGTH = 1e4;

/**
 * One bed worked up: rock, strength as it lies, answer to a cutter, abrasivity, hazards.
 *
 * @throws RangeError when the rock id is not known
 * @source (d) the relations named in its workings
 */
export function workedBed({ bed, fluidDensity, waterLevel, fluidLevel, shopRocks }: WorkedBedInput): GroundBed {
  const reading = bed.phrase === undefined ? undefined : classifyGround(bed.phrase);
  const rockId = bed.rockId ?? reading?.rockId;
  const rock = rockId === undefined ? unnamedGround : rockById(rockId, shopRocks);
  const rockFrom = bed.rockId !== undefined ? "entered" : rockId !== undefined ? "phrase" : "not named";
  const modifiers = reading?.modifiers ?? [];
  const ucs = bed.ucs ?? strengthInState({ rock, modifiers });
  const ucsSource = bed.ucs === undefined ? rock.sources.ucs : (bed.ucsSource ?? enteredBy(`strength of ${bed.name}`));
  const midDepth = (bed.top + bed.bottom) / 2;
  const pressureDifference = bottomHolePressureDifference({ depth: midDepth, fluidDensity, waterLevel, fluidLevel });
  const confined = confinedBand({ ucs, frictionAngle: rock.frictionAngle, pressureDifference });
  const response = rockResponse({ rock, confinedStrength: confined });
  const abrasivity = abrasivityOf(rock, ucs);
  const hazards = [...new Set([...rock.hazards, ...(reading?.hazards ?? []), ...(bed.hazards ?? [])])];
  const stringer = strongestOf(
    (reading?.stringers ?? []).map((id) => stringerOf(rockById(id, shopRocks), pressureDifference)),
  );
  const known = { bed, rock, rockFrom, midDepth, pressureDifference, ucs, ucsSource, response, abrasivity } as const;
  const result = {
    ...known,
    ...(reading ? { reading } : {}),
    confinedStrength: confined,
    hazards,
    ...(stringer ? { stringer } : {}),
  };
  return {
    ...result,
    findings: bedFindings(result),
    working: bedWorking(result, { fluidDensity, waterLevel, fluidLevel }),
  };
}

interface ConfinedBandInput {
  readonly ucs: Band;
  readonly frictionAngle: Band;
  /** Pressure at the bottom above that of the ground water [Pa]. */
  readonly pressureDifference: number;
}

function confinedBand({ ucs, frictionAngle, pressureDifference }: ConfinedBandInput): Band {
  const at = (side: keyof Band) =>
    Math.max(
      LEAST_STRENGTH,
      confinedStrength({ ucs: ucs[side], frictionAngle: frictionAngle[side], pressureDifference }),
    );
  return band(at("low"), at("mid"), at("high"));
}

function stringerOf(rock: Rock, pressureDifference: number): Stringer {
  const confined = confinedBand({ ucs: rock.ucs, frictionAngle: rock.frictionAngle, pressureDifference });
  return { rock, confinedStrength: confined, response: rockResponse({ rock, confinedStrength: confined }) };
}

function strongestOf(stringers: readonly Stringer[]): Stringer | undefined {
  return stringers.reduce<Stringer | undefined>(
    (most, one) => (most && most.confinedStrength.mid >= one.confinedStrength.mid ? most : one),
    undefined,
  );
}

function abrasivityOf(rock: Rock, ucs: Band): Abrasivity {
  const grinding = mapBand(rock.clastUcs ?? ucs, (strength) =>
    rockAbrasivityIndex({ ucs: strength, equivalentQuartz: 1 }),
  );
  const index = bandProduct(grinding, rock.equivalentQuartz);
  return {
    index,
    class: abrasivityClass(index.mid),
    cerchar: rock.cerchar,
    cercharClass: cercharClass(rock.cerchar.mid),
  };
}
