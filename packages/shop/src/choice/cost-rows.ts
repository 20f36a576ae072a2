import type { RankedCandidate } from "@bitwright/engine";
import { inUnit, unitFor } from "@bitwright/traveler";
import { evenAxis, GRID } from "../chart/index.ts";
import { CUT_RAMP, DRAWING_ROOM, HALO, INK, STEEL, TYPE, textAt } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";
import { candidateWords, costNumber, costUnit, type MoneyStyle, remarkWords } from "./choice-words.ts";

/** Height of one candidate in the list [mm]. */
export const ROWS_HEIGHT = 8.4;
/** Room for the words of a candidate [mm]. */
const WORDS = 76;

/** The first candidates and the rules' own, each with its cost over the band of the wear coefficient. */
export function costRows({
  rows,
  ruled,
  style,
  top,
  bottom,
}: {
  readonly rows: readonly RankedCandidate[];
  /** The rules' own bit, where it is among them. */
  readonly ruled: RankedCandidate | undefined;
  readonly style: MoneyStyle;
  /** [mm] */
  readonly top: number;
  /** [mm] */
  readonly bottom: number;
}): Svg[] {
  const number = (si: number) => inUnit("price of length", si, unitFor("price of length", style.units));
  const highest = Math.max(...rows.map(({ candidate }) => number(candidate.figures.costPerLength.high)));
  const { end, ticks: places } = evenAxis(1.02 * highest, 8);
  const left = DRAWING_ROOM.left + WORDS;
  const right = DRAWING_ROOM.right - 4;
  const x = (cost: number) => left + (cost / end) * (right - left);
  return [
    element("path", {
      class: "grid",
      d: places
        .map((place) =>
          linePath([
            [x(place), top - 4],
            [x(place), bottom],
          ]),
        )
        .join(""),
      stroke: GRID,
      "stroke-width": 0.2,
    }),
    ...rows.map((row, k) =>
      costRow({ row, at: top + k * ROWS_HEIGHT, x, number, style, isRule: row === ruled, words: remarkWords(row) }),
    ),
    element("path", {
      d: linePath([
        [left, bottom],
        [right, bottom],
      ]),
      stroke: INK,
      "stroke-width": 0.3,
    }),
    ...places.map((place) =>
      textAt([x(place), bottom + 4.4], String(Number(place.toPrecision(6))), TYPE.caption, { "text-anchor": "middle" }),
    ),
    textAt([(left + right) / 2, bottom + 8.6], `cost of hole, ${costUnit(style)}`, TYPE.note, {
      "text-anchor": "middle",
    }),
  ];
}

function costRow({
  row: { place, candidate },
  at,
  x,
  number,
  style,
  isRule,
  words,
}: {
  readonly row: RankedCandidate;
  readonly at: number;
  readonly x: (cost: number) => number;
  readonly number: (si: number) => number;
  readonly style: MoneyStyle;
  readonly isRule: boolean;
  readonly words: string;
}): Svg {
  const { low, mid, high } = candidate.figures.costPerLength;
  const bar = (from: number, to: number) => ({ x: x(number(from)), width: x(number(to)) - x(number(from)) });
  const under = [...(isRule ? ["rules of thumb"] : []), ...(words ? [words] : [])].join("; ");
  return element(
    "g",
    { class: place === 1 ? "cost best" : isRule ? "cost rule" : "cost" },
    textAt(
      [DRAWING_ROOM.left, at],
      `${place}  ${candidateWords(candidate)}`,
      TYPE.caption,
      place === 1 ? { "font-weight": "bold" } : {},
    ),
    ...(under
      ? [textAt([DRAWING_ROOM.left + 4, at + 3.4], under, TYPE.caption, { "font-style": "italic", ...HALO })]
      : []),
    element("rect", {
      ...bar(low, high),
      y: at - 2,
      height: 2.4,
      fill: STEEL.tint,
      stroke: STEEL.edge,
      "stroke-width": 0.2,
    }),
    element("path", {
      d: linePath([
        [x(number(mid)), at - 2.8],
        [x(number(mid)), at + 1.2],
      ]),
      stroke: place === 1 ? CUT_RAMP[3] : STEEL.face,
      "stroke-width": 0.8,
    }),
    textAt([x(number(mid)), at + 4], costNumber(mid, style), TYPE.caption, { "text-anchor": "middle" }),
  );
}
