import { type BitChoices, CHOICE_NAMES, sameChoice } from "@bitwright/engine";
import type { JobChoices } from "./choice-options.ts";

/** What decides most comes first: size and wings together, then rake, bevel, body. */
export function stagesOf({ options }: JobChoices): Partial<BitChoices>[][] {
  const { cutter, wings, backRake, chamfer, body } = options;
  return [
    cutter.flatMap((size) => wings.map((count) => ({ cutter: size, wings: count }))),
    backRake.map((rake) => ({ backRake: rake })),
    chamfer.map((bevel) => ({ chamfer: bevel })),
    body.map((material) => ({ body: material })),
  ];
}

/** The option of each stage that the rules have; the first where they have none of them. */
export function startOf(stages: readonly (readonly Partial<BitChoices>[])[], rules: BitChoices): number[] {
  return stages.map((stage) =>
    Math.max(
      0,
      stage.findIndex((part) => partOf(part, rules)),
    ),
  );
}

function partOf(part: Partial<BitChoices>, whole: BitChoices): boolean {
  const names = CHOICE_NAMES.filter((name) => name in part);
  return names.every((name) => sameChoice(name, { ...whole, ...part }, whole));
}

/** Whether a bit is one of those that there are to choose from. */
export function isAmong(choices: BitChoices, options: JobChoices["options"]): boolean {
  return CHOICE_NAMES.every((name) =>
    options[name].some((option) => sameChoice(name, choices, { ...choices, [name]: option })),
  );
}
