import { element, linePath, type PagePoint, type Svg } from "../svg/index.ts";
import { INK, SOFT_INK } from "./palette.ts";
import { TYPE, textAt } from "./text.ts";
import { linesWithin, textWidth } from "./text-width.ts";

/** What every sheet says about itself. All of it is text from people or the caller; none of it is computed here. */
export interface SheetTitle {
  /** Name or number of the job. */
  readonly job: string;
  /** Name of the bit. */
  readonly bit: string;
  /** The hole as it was typed: `6 1/8 in`. */
  readonly hole?: string;
  readonly shop?: string;
  readonly customer?: string;
  readonly date?: string;
  /** Which sheet of how many: `1 of 2`. */
  readonly sheet?: string;
  /** Name and version of the program that drew it. */
  readonly program: string;
}

/** One field of the block: a small caption over what stands there. */
interface Field {
  readonly caption: string;
  readonly text: string;
}

const COLUMNS = 3;
const ROW = 9.3;
const PAD = 1.6;

/** Height of the block [mm]. */
export const TITLE_HEIGHT = 4 * ROW;

/** The block at the foot of a sheet; `at` is its top left corner. */
export function titleBlock(
  at: PagePoint,
  width: number,
  title: SheetTitle,
  facts: { readonly view: string; readonly scale: string; readonly units: string; readonly hole: string },
): Svg {
  const fields: Field[] = [
    { caption: "job", text: title.job },
    { caption: "bit", text: title.bit },
    { caption: "hole", text: facts.hole },
    { caption: "shop", text: title.shop ?? "" },
    { caption: "customer", text: title.customer ?? "" },
    { caption: "date", text: title.date ?? "" },
    { caption: "view", text: facts.view },
    { caption: "scale", text: facts.scale },
    { caption: "units", text: facts.units },
    { caption: "program", text: title.program },
    { caption: "sheet", text: title.sheet ?? "" },
    { caption: "checked by, date", text: "" },
  ];
  const column = width / COLUMNS;
  const cells = fields.map((field, k) => {
    const corner: PagePoint = [at[0] + (k % COLUMNS) * column, at[1] + Math.floor(k / COLUMNS) * ROW];
    return cell(corner, column, field);
  });
  return element("g", { class: "title-block" }, grid(at, width), ...cells);
}

function grid([x, y]: PagePoint, width: number): Svg {
  const rows = Array.from({ length: 4 }, (_, k) =>
    linePath([
      [x, y + k * ROW],
      [x + width, y + k * ROW],
    ]),
  );
  const columns = Array.from({ length: COLUMNS - 1 }, (_, k) =>
    linePath([
      [x + ((k + 1) * width) / COLUMNS, y],
      [x + ((k + 1) * width) / COLUMNS, y + TITLE_HEIGHT],
    ]),
  );
  return element("path", { d: [...rows, ...columns].join(""), fill: "none", stroke: INK, "stroke-width": 0.25 });
}

/** A short text stands large on one line, a long one smaller on two; what still does not fit is cut, whole in a tooltip. */
function cell([x, y]: PagePoint, width: number, { caption, text }: Field): Svg {
  const room = width - 2 * PAD;
  const oneLine = textWidth(text, TYPE.value) <= room;
  const lines = oneLine ? [text] : linesWithin(text, TYPE.caption, room, 2);
  const set = lines.map((line, k) =>
    oneLine ? textAt([x + PAD, y + 7.8], line, TYPE.value) : textAt([x + PAD, y + 5.9 + k * 2.8], line, TYPE.caption),
  );
  return element(
    "g",
    {},
    ...(lines.join(" ") === text ? [] : [element("title", {}, text)]),
    textAt([x + PAD, y + 2.9], caption, TYPE.caption, { fill: SOFT_INK }),
    ...(text === "" ? [] : set),
  );
}
