import type { BodyMaterial } from "./body-for-ground.ts";
import type { ChamferChoice } from "./chamfer-for-ground.ts";
import type { BitChoice } from "./choose-bit.ts";
import type { RakeRange } from "./rakes-for-ground.ts";

/** What candidate bits differ in. */
export interface BitChoices {
  /** Trade code of the cutters. */
  readonly cutter: string;
  /** Number of wings [-]. */
  readonly wings: number;
  readonly backRake: RakeRange;
  readonly chamfer: ChamferChoice;
  readonly body: BodyMaterial;
}

/** One of the things that candidate bits differ in. */
export type ChoiceName = keyof BitChoices;

/** All of them, in the order in which they are told. */
export const CHOICE_NAMES = ["cutter", "wings", "backRake", "chamfer", "body"] as const satisfies readonly ChoiceName[];

/**
 * The choices of the rules of thumb.
 *
 * @source (c) each rule names its own
 */
export function choicesByRule({ cutter, wings, backRake, chamfer, body }: BitChoice): BitChoices {
  return {
    cutter: cutter.value.code,
    wings: wings.value.wings,
    backRake: backRake.value,
    chamfer: chamfer.value,
    body: body.value,
  };
}

const SAME_ANGLE = 1e-9;
const near = (a: number, b: number) => Math.abs(a - b) <= SAME_ANGLE;

/**
 * Whether two bits are alike in one choice.
 *
 * @source (d) comparison
 */
export function sameChoice(name: ChoiceName, a: BitChoices, b: BitChoices): boolean {
  switch (name) {
    case "backRake":
      return near(a.backRake.centre, b.backRake.centre) && near(a.backRake.gauge, b.backRake.gauge);
    case "chamfer":
      return near(a.chamfer.angle, b.chamfer.angle) && near(a.chamfer.width, b.chamfer.width);
    default:
      return a[name] === b[name];
  }
}

/**
 * Whether two bits are alike in all choices.
 *
 * @source (d) comparison
 */
export function sameChoices(a: BitChoices, b: BitChoices): boolean {
  return CHOICE_NAMES.every((name) => sameChoice(name, a, b));
}
