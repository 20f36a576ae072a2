import type { MarchRegime } from "@bitwright/engine";

/** What becomes of a bit on its string, in a few words that follow "it". */
export const REGIME_WORDS: Readonly<Record<MarchRegime, string>> = {
  steady: "settles to steady drilling",
  "axial vibration": "chatters along the hole",
  "torsional vibration": "swings in its turning",
  "stick-slip": "stops and spins",
  "bit bounce": "leaves the bottom and lands again",
};
