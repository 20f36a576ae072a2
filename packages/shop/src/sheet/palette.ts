/** Ink of lines, numbers and words. */
export const INK = "#1b2229";
/** Captions and scale ticks: still 7:1 against white. */
export const SOFT_INK = "#4a545e";
export const PAPER = "#ffffff";
export const ROCK = "#f3f0ea";

/** Blue is the bit: from the tint of a wing to the diamond face. Each step is darker, so a grey print keeps the order. */
export const STEEL = {
  tint: "#e6edf5",
  edge: "#8fa9c6",
  carbide: "#b9cbdf",
  line: "#44678f",
  face: "#1f4069",
} as const;

/** Orange is what is cut: five steps of one hue, light to dark, told apart in grey as well. */
export const CUT_RAMP = ["#fdeedd", "#f9cf9e", "#efa255", "#cb6f1d", "#8a4206"] as const;

/** The step of the ramp for a share of the largest, 0 to 1. */
export function rampStep(share: number): number {
  return Math.max(0, Math.min(CUT_RAMP.length - 1, Math.ceil(share * CUT_RAMP.length - 1e-9) - 1));
}
