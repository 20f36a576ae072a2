import Papa from "papaparse";
import { unitOf } from "../../quantity/index.ts";
import { oneOf } from "../nearest-names.ts";
import type { Cell } from "../schema/measured.ts";
import type { ReadingNotes } from "./reading-notes.ts";

/** Columns of the table of an as-measured bit. */
const COLUMN_NAMES = [
  "radius",
  "azimuth",
  "height",
  "profileAngle",
  "backRake",
  "sideRake",
  "faceDiameter",
  "cutter",
  "length",
  "wing",
  "chamferWidth",
  "chamferAngle",
  "wornHeight",
] as const;

type ColumnName = (typeof COLUMN_NAMES)[number];

/** One row of the table and the path by which a person finds it. */
export interface TableRow {
  /** What stands before the name of a cell: `bit.measured.rows[2].`. */
  readonly path: string;
  readonly cells: Readonly<Partial<Record<Exclude<ColumnName, "cutter">, Cell | undefined>>> & {
    readonly cutter?: string | undefined;
  };
}

const FIELD = "bit.measured.csv";

/** The rows of a CSV text; units in the header are put to the cells. Nothing where the header cannot be used. */
export function cutterTable(csv: string, notes: ReadingNotes): readonly TableRow[] | undefined {
  const lines = Papa.parse<string[]>(csv.trim(), { skipEmptyLines: "greedy", comments: "#" }).data;
  const [header, ...body] = lines;
  const columns = (header ?? []).map((head) => columnOf(head, notes));
  if (columns.includes(undefined)) return undefined;
  if (body.length === 0) {
    const expected = "give a header and one row for each cutter";
    notes.refuse({ field: FIELD, got: "no rows", expected });
    return undefined;
  }
  return body.map((values, at) => {
    const cells = columns.flatMap((column, place) => {
      const value = (values[place] ?? "").trim();
      if (!column || value === "") return [];
      return [[column.name, column.unit === undefined ? value : { value: decimalPoint(value), unit: column.unit }]];
    });
    return { path: `${FIELD} row ${at + 1} `, cells: Object.fromEntries(cells) };
  });
}

interface TableColumn {
  readonly name: ColumnName;
  readonly unit?: string;
}

const HEAD = /^(?<name>[^([]*)(?:[([](?<unit>[^)\]]*)[)\]])?\s*$/;
const nameKey = (text: string) => text.toLowerCase().replace(/[^a-z]/g, "");

function columnOf(head: string, notes: ReadingNotes): TableColumn | undefined {
  const { name = head, unit } = HEAD.exec(head.trim())?.groups ?? {};
  const known = COLUMN_NAMES.find((column) => nameKey(column) === nameKey(name));
  if (!known) {
    const wrong = `got the column "${head.trim()}", which is not known`;
    notes.refuse({ field: FIELD, got: `"${head.trim()}"`, wrong, expected: oneOf(name, COLUMN_NAMES) });
    return undefined;
  }
  if (unit === undefined || unit.trim() === "" || unit.trim() === "-") return { name: known };
  if (!unitOf("length", unit) && !unitOf("angle", unit)) {
    const wrong = `got the column "${head.trim()}", whose unit is not known`;
    const expected = "give a unit of length or angle in the brackets: mm, in, deg or rad";
    notes.refuse({ field: FIELD, got: `"${head.trim()}"`, wrong, expected });
    return undefined;
  }
  return { name: known, unit: unit.trim() };
}

/** In a table a lone comma is a decimal mark: thousands of a millimetre are written, thousands of millimetres are not. */
function decimalPoint(value: string): string {
  return value.replace(/^([-+]?\d+),(\d+)$/, "$1.$2");
}
