/** How large the printed card is set and how much it says. */
export interface SheetStep {
  readonly name: string;
  /** Size of the type [pt]. */
  readonly size: number;
  /** Joints at most [-]. */
  readonly joints: number;
  /** Beds at most [-]. */
  readonly beds: number;
  /** Remarks on each bed at most [-]. */
  readonly remarks: number;
  /** Warnings at most [-]. */
  readonly warnings: number;
  readonly causes: boolean;
  /** Sentences of each caution: as many as this, more where they are short [-]. */
  readonly sentences: number;
}

/** A caution said in fewer characters than this goes on with its next sentence. */
export const SHORT_CAUTION = 40;

const EVERY = Number.POSITIVE_INFINITY;
/** Sizes of type [pt]: read at arm's length with wet glasses, down to what a page of print has. */
const TYPE = { large: 13, middle: 11.5, small: 10, lesser: 9.5, least: 9, fine: 8, finest: 7 } as const;

const WHOLE = { joints: EVERY, beds: EVERY, remarks: 3, warnings: 12, causes: true, sentences: 9 } as const;
const SHORTER = { ...WHOLE, remarks: 2, warnings: 6, causes: false, sentences: 2 } as const;
const SHORT = { ...WHOLE, remarks: 1, warnings: 3, causes: false, sentences: 1 } as const;
const BARE = { ...WHOLE, remarks: 0, warnings: 2, causes: false, sentences: 1 } as const;

/**
 * From large type and all there is to the least a card may say. Type is stepped down before joints are left out, joints
 * before beds; stop signs, cautions and the break-in stay to the last.
 */
export const SHEET_STEPS: readonly SheetStep[] = [
  { name: "large type", size: TYPE.large, ...WHOLE },
  { name: "large type, shorter", size: TYPE.large, ...SHORTER },
  { name: "middle type", size: TYPE.middle, ...WHOLE },
  { name: "middle type, shorter", size: TYPE.middle, ...SHORTER },
  { name: "middle type, short", size: TYPE.middle, ...SHORT },
  { name: "small type, shorter", size: TYPE.small, ...SHORTER },
  { name: "small type, short", size: TYPE.small, ...SHORT },
  { name: "small type, bare", size: TYPE.small, ...BARE },
  { name: "lesser type, short", size: TYPE.lesser, ...SHORT },
  { name: "lesser type, bare", size: TYPE.lesser, ...BARE },
  { name: "least type, short", size: TYPE.least, ...SHORT },
  { name: "least type, bare", size: TYPE.least, ...BARE },
  { name: "fine type, bare", size: TYPE.fine, ...BARE },
  ...[60, 48, 36, 24].map((joints) => ({ name: `fine type, ${joints} joints`, size: TYPE.fine, ...BARE, joints })),
  ...[24, 12, 6].map((joints) => ({ name: `finest type, ${joints} joints`, size: TYPE.finest, ...BARE, joints })),
  ...[50, 45, 40, 35, 30, 25, 20, 15, 10].map((beds) => ({
    name: `finest type, ${beds} beds`,
    size: TYPE.finest,
    ...BARE,
    joints: 6,
    warnings: 1,
    beds,
  })),
];
