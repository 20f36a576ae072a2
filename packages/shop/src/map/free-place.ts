import type { StandingBox } from "../sheet/index.ts";
import type { PagePoint } from "../svg/index.ts";

/** The first of some places for the middle of a text that lies in the frame and touches nothing that stands; absent where none does. */
export function freePlace(
  places: readonly PagePoint[],
  { width, height }: Pick<StandingBox, "width" | "height">,
  standing: readonly StandingBox[],
  frame: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
): PagePoint | undefined {
  return places.find(
    ([x, y]) =>
      x - width / 2 >= frame.left + 0.5 &&
      x + width / 2 <= frame.right - 0.5 &&
      y - height / 2 >= frame.top + 0.5 &&
      y + height / 2 <= frame.bottom - 0.5 &&
      standing.every(
        (box) =>
          Math.abs(box.at[0] - x) >= (box.width + width) / 2 + 0.4 ||
          Math.abs(box.at[1] - y) >= (box.height + height) / 2 + 0.4,
      ),
  );
}
