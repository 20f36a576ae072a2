import { DRAWING_ROOM } from "../sheet/index.ts";

/** Where the columns of the strip stand on the sheet [mm]. */
export const STRIP = {
  rockLeft: DRAWING_ROOM.left + 12,
  rockRight: DRAWING_ROOM.left + 36,
  hole: DRAWING_ROOM.left + 39.5,
  strengthLeft: DRAWING_ROOM.left + 48.5,
  strengthRight: DRAWING_ROOM.left + 110.5,
  wordsLeft: DRAWING_ROOM.left + 117.5,
} as const;
