import { type Finding, gravestFirst, runToEnd, type Working } from "../quantity/index.ts";
import type { LifeFigures } from "./life-figures.ts";
import { lifeFindings } from "./life-findings.ts";
import type { LifeInput } from "./life-input.ts";
import { lifeMarch, type MarchedLife } from "./life-march.ts";
import { lifeWorking } from "./life-working.ts";

/** The life of a bit in its ground. */
export interface Life extends LifeFigures {
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/**
 * The life of a bit: wear marched through its beds, hole after hole, to the first limit.
 *
 * @throws RangeError when the beds, holes or coefficients are not sound
 * @source (b) Archard 1953; Glowka & Stone 1985; Detournay & Defourny 1992, all recalled; the coefficient has no source
 */
export function life(input: LifeInput): Life {
  return lifeOf(input, runToEnd(lifeMarch(input)));
}

/**
 * The life that a march has come to, with its remarks and workings: for callers that drive the march themselves.
 *
 * @source (d) from the steps of the march
 */
export function lifeOf(input: LifeInput, march: MarchedLife): Life {
  const last = march.steps.at(-1);
  const figures: LifeFigures = { ...march, footage: last?.footage ?? 0, timeOnBottom: last?.timeOnBottom ?? 0 };
  return {
    ...figures,
    findings: gravestFirst(lifeFindings(input, figures)),
    working: lifeWorking(input, figures),
  };
}
