import {
  BACK_RAKE_STEP,
  type BitChoices,
  backRakeFrom,
  CHOICE_NAMES,
  type ChoiceName,
  COUNTING_SHARE,
  catalogCutter,
  choicesByRule,
  cutterSizesThatFit,
  cuttersOnWing,
  portsForPump,
  tradeBevels,
} from "@bitwright/engine";
import type { ResolvedBitSpec, ResolvedTraveler } from "../document/resolved-traveler.ts";
import { type AdviceStation, pumpForBit } from "../stations/advice-station.ts";
import { pressureForBit } from "../stations/flow-station.ts";

/** The options of each choice. */
export type ChoiceOptions = { readonly [Name in ChoiceName]: readonly BitChoices[Name][] };

/** Options that a person narrows the choice to. */
export type ChoiceLimits = Partial<Pick<ChoiceOptions, "cutter" | "wings" | "chamfer" | "body">>;

/** What there is to choose from for a job. */
export interface JobChoices {
  readonly options: ChoiceOptions;
  /** Choices that the traveler names: they are kept. */
  readonly kept: readonly ChoiceName[];
  /** What the rules of thumb would choose, where the traveler leaves it to them. */
  readonly rules: BitChoices;
}

/** Fewest and most wings that are tried: those of the trade [-]. */
const WINGS = [3, 4, 5, 6] as const;

/**
 * The bits there are to choose from: sizes of which enough fit side by side, three to six wings, the rule's back rake and a
 * step to either side, the bevels of the trade, steel or matrix. What the traveler names of its bit is kept as it is.
 */
export function choicesOfJob(
  { inquiry, bit }: Pick<ResolvedTraveler, "inquiry" | "bit">,
  advice: AdviceStation,
  limits: ChoiceLimits = {},
): JobChoices {
  const byRule = choicesByRule(advice.bit);
  const asked = askedChoices(bit.kind === "spec" ? bit : undefined, advice);
  const rules = { ...byRule, ...asked };
  const sizes = cutterSizesThatFit(inquiry.bitHole.diameter).map(({ code }) => code);
  const { centre } = byRule.backRake;
  const all: ChoiceOptions = {
    cutter: [...new Set([byRule.cutter, ...sizes])],
    wings: WINGS,
    backRake: [centre - BACK_RAKE_STEP, centre, centre + BACK_RAKE_STEP].filter((rake) => rake >= 0).map(backRakeFrom),
    chamfer: tradeBevels(),
    body: ["steel", "matrix"],
  };
  const kept = CHOICE_NAMES.filter((name) => name in asked);
  const options = Object.fromEntries(
    CHOICE_NAMES.map((name) => [
      name,
      name in asked ? [rules[name]] : (limits[name as keyof ChoiceLimits] ?? all[name]),
    ]),
  ) as unknown as ChoiceOptions;
  return { options, kept, rules };
}

function askedChoices(bit: ResolvedBitSpec | undefined, { bit: rules }: AdviceStation): Partial<BitChoices> {
  if (!bit) return {};
  const { cutter, wings, backRake, chamferAngle, chamferWidth, body } = bit;
  const angle = chamferAngle ?? rules.chamfer.value.angle;
  return {
    ...(cutter === undefined ? {} : { cutter }),
    ...(wings === undefined ? {} : { wings }),
    ...(backRake === undefined ? {} : { backRake }),
    ...(chamferAngle === undefined && chamferWidth === undefined
      ? {}
      : { chamfer: { angle, width: chamferWidth ?? (angle > 0 ? rules.chamfer.value.width : 0) } }),
    ...(body === undefined ? {} : { body }),
  };
}

/**
 * A candidate as a person would write it in the traveler: its choices, with the cutters on a wing and the ports that go with
 * them; the rest as the traveler has it.
 */
export function specOf(traveler: ResolvedTraveler, advice: AdviceStation, choices: BitChoices): ResolvedBitSpec {
  const { bit, inquiry, lists } = traveler;
  const { bitHole, fluid } = inquiry;
  const asked: ResolvedBitSpec = bit.kind === "spec" ? bit : { kind: "spec", diameter: bit.diameter };
  const { cutter, wings, backRake, chamfer, body } = choices;
  const own = lists.cutters.find(({ code }) => code === cutter);
  const { faceDiameter } = own ?? catalogCutter(cutter);
  const cuttersPerWing =
    asked.cuttersPerWing ?? cuttersOnWing({ holeDiameter: asked.diameter, cutterDiameter: faceDiameter, wings });
  const ports =
    asked.ports ??
    portsForPump({
      holeDiameter: bitHole.diameter,
      wings,
      fluid: fluid.kind,
      density: fluid.density,
      sticky: advice.bit.mix.stickyShare >= COUNTING_SHARE,
      ...pumpForBit(inquiry, pressureForBit(traveler)),
    }).value;
  return {
    ...asked,
    cutter,
    wings,
    cuttersPerWing,
    backRake,
    chamferAngle: chamfer.angle,
    chamferWidth: chamfer.width,
    body,
    ports,
  };
}
