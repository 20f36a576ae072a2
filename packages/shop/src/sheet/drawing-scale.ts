/** A scale of a drawing: paper over thing. */
export interface DrawingScale {
  /** Length on paper over length of the thing [-]. */
  readonly factor: number;
  /** As written in the title block: `2 : 1`. */
  readonly text: string;
}

const scale = (paper: number, thing: number): DrawingScale => ({ factor: paper / thing, text: `${paper} : ${thing}` });

// The usual SCALES first (1, 2, 5); the ones between them spare a bit that just misses a step half its size.
const SCALES = [
  scale(5, 1),
  scale(4, 1),
  scale(3, 1),
  scale(2, 1),
  scale(3, 2),
  scale(1, 1),
  scale(3, 4),
  scale(2, 3),
  scale(1, 2),
  scale(1, 4),
  scale(1, 10),
];
/** The largest scale at which a thing of so many millimetres fits its room; the smallest there is where none does. */
export function scaleThatFits({
  width,
  height,
  room,
}: {
  /** Width of the thing [mm]. */
  readonly width: number;
  /** Height of the thing [mm]. */
  readonly height: number;
  /** Room on paper. */
  readonly room: {
    /** Width [mm]. */ readonly width: number;
    /** Height [mm]. */ readonly height: number;
  };
}): DrawingScale {
  const fits = SCALES.find(({ factor }) => width * factor <= room.width && height * factor <= room.height);
  return fits ?? SCALES[SCALES.length - 1];
}
