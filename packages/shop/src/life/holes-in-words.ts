import type { Life } from "@bitwright/engine";

/** Holes that a life came to: `16 holes and a part of the next`. */
export function holesInWords({ holes, end }: Pick<Life, "end" | "holes">): string {
  const whole = holes === 1 ? "1 hole" : `${holes} holes`;
  return end.by === "holes drilled" ? whole : `${whole} and a part of the next`;
}
