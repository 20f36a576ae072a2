import { commonPractice, enteredBy } from "@bitwright/engine";
import { parseQuantity, type QuantityKind, type QuantityLimits } from "../../quantity/index.ts";
import { oneOf } from "../nearest-names.ts";
import { shown } from "../problem.ts";
import type { MeasuredCutter } from "../resolved-traveler.ts";
import { CHAMFER_ANGLE, CHAMFER_WIDTH } from "../schema/chamfer.ts";
import type { Cell } from "../schema/measured.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import { cutterTable, type TableRow } from "./cutter-table.ts";
import type { KnownCutters } from "./cutters.ts";
import type { ReadingNotes } from "./reading-notes.ts";

type GivenMeasured = NonNullable<NonNullable<ReadTraveler["bit"]>["measured"]>;

interface ColumnRule {
  readonly kind: QuantityKind;
  readonly limits: QuantityLimits;
}

const ANY_ANGLE: QuantityLimits = { least: "-720 deg", most: "720 deg" };
const RAKE: QuantityLimits = { least: "-45 deg", most: "60 deg" };

const COLUMNS = {
  radius: { kind: "length", limits: { least: "0 in", most: "30 in" } },
  azimuth: { kind: "angle", limits: ANY_ANGLE },
  height: { kind: "length", limits: { least: "-60 in", most: "60 in" } },
  profileAngle: { kind: "angle", limits: { least: "-90 deg", most: "135 deg" } },
  backRake: { kind: "angle", limits: RAKE },
  sideRake: { kind: "angle", limits: RAKE },
  faceDiameter: { kind: "length", limits: { least: "3 mm", most: "60 mm" } },
  length: { kind: "length", limits: { least: "1 mm", most: "100 mm" } },
  chamferWidth: { kind: "length", limits: CHAMFER_WIDTH },
  chamferAngle: { kind: "angle", limits: CHAMFER_ANGLE },
  wornHeight: { kind: "length", limits: { least: "0 mm", most: "60 mm" } },
} as const satisfies Readonly<Record<string, ColumnRule>>;

type Column = keyof typeof COLUMNS;

/** The cutters of an as-measured bit, row by row; nothing where the table cannot be used. */
export function measuredCutters(
  given: GivenMeasured,
  known: KnownCutters,
  notes: ReadingNotes,
): readonly MeasuredCutter[] | undefined {
  const before = notes.problems.length;
  const rows = rowsOf(given, notes);
  if (!rows) return undefined;
  assumeTableUnits(given, rows, notes);
  const cutters = rows.flatMap((row) => cutterOf(row, given, known, notes) ?? []);
  if (rows.some(({ cells }) => cells.sideRake === undefined)) {
    notes.assumeNumber({
      field: "bit.measured.rows.sideRake",
      kind: "angle",
      si: 0,
      why: "no side rake is given for some or all cutters; it turns the cuttings aside and changes force little",
      source: commonPractice(),
    });
  }
  return notes.problems.length > before ? undefined : cutters;
}

function rowsOf(given: GivenMeasured, notes: ReadingNotes): readonly TableRow[] | undefined {
  const { rows, csv } = given;
  if ((rows === undefined) === (csv === undefined)) {
    const both = rows !== undefined;
    notes.refuse({
      field: "bit.measured",
      got: both ? "rows and csv" : "nothing",
      wrong: both ? "got rows and csv" : "neither rows nor csv is given",
      expected: both ? "give the table once" : "give the table of the cutters as rows or as csv",
    });
    return undefined;
  }
  if (csv !== undefined) return cutterTable(csv, notes);
  return rows?.map((row, at) => ({ path: `bit.measured.rows[${at}].`, cells: row }));
}

function cutterOf(
  { path, cells }: TableRow,
  given: GivenMeasured,
  known: KnownCutters,
  notes: ReadingNotes,
): MeasuredCutter | undefined {
  const read = (column: Column) => cellSi(column, cells[column], `${path}${column}`, given, notes);
  const needed = (column: Column) => {
    if (cells[column] !== undefined) return read(column);
    const { kind, limits } = COLUMNS[column];
    const parsed = parseQuantity(kind, undefined, `${path}${column}`, limits);
    if (!parsed.ok) notes.refuse(parsed.problem);
    return undefined;
  };
  const code = cells.cutter ?? given.cutter;
  const cutter = code === undefined ? undefined : known.find(code);
  if (code !== undefined && !cutter) {
    const field = cells.cutter === undefined ? "bit.measured.cutter" : `${path}cutter`;
    // One wrong code for the whole table is one problem.
    if (cells.cutter !== undefined || !notes.problems.some((earlier) => earlier.field === field)) {
      const wrong = `got "${code}", which is no cutter of the list`;
      notes.refuse({ field, got: `"${code}"`, wrong, expected: oneOf(code, known.codes) });
    }
  }
  const radius = needed("radius");
  const azimuth = needed("azimuth");
  const height = needed("height");
  const backRake = needed("backRake");
  const faceDiameter = read("faceDiameter") ?? cutter?.faceDiameter;
  if (faceDiameter === undefined && cells.faceDiameter === undefined && code === undefined) {
    const expected = 'give the diameter of the face, for example "13.44 mm", or the code of the cutter';
    notes.refuse({
      field: `${path}faceDiameter`,
      got: "nothing",
      wrong: "neither faceDiameter nor cutter is given",
      expected,
    });
  }
  const wing = wingOf(cells.wing, `${path}wing`, notes);
  const wornHeight = read("wornHeight") ?? 0;
  if (faceDiameter !== undefined && wornHeight >= faceDiameter) {
    const got = shown(cells.wornHeight);
    const wrong = `got ${got}, which is the whole face`;
    notes.refuse({ field: `${path}wornHeight`, got, wrong, expected: "give less than the diameter of the face" });
  }
  if (radius === undefined || azimuth === undefined || height === undefined) return undefined;
  if (backRake === undefined || faceDiameter === undefined) return undefined;
  const profileAngle = read("profileAngle");
  const length = read("length") ?? cutter?.length;
  const chamferWidth = read("chamferWidth") ?? given.chamferWidth?.si;
  const chamferAngle = read("chamferAngle") ?? given.chamferAngle?.si;
  return {
    radius,
    azimuth,
    height,
    backRake,
    sideRake: read("sideRake") ?? 0,
    faceDiameter,
    wornHeight,
    ...(profileAngle === undefined ? {} : { profileAngle }),
    ...(length === undefined ? {} : { length }),
    ...(wing === undefined ? {} : { wing }),
    ...(chamferWidth === undefined ? {} : { chamferWidth }),
    ...(chamferAngle === undefined ? {} : { chamferAngle }),
  };
}

/** A cell in SI; a bare number has the unit of the table. */
function cellSi(
  column: Column,
  cell: Cell | undefined,
  field: string,
  given: GivenMeasured,
  notes: ReadingNotes,
): number | undefined {
  if (cell === undefined) return undefined;
  const { kind, limits } = COLUMNS[column];
  const parsed = parseQuantity(kind, withTableUnit(cell, kind, given), field, limits);
  if (parsed.ok) return parsed.value.si;
  notes.refuse(parsed.problem);
  return undefined;
}

const BARE_NUMBER = /^[-+−]?[\d.,]+(?:[eE][-+]?\d+)?$/;

function withTableUnit(cell: Cell, kind: QuantityKind, { units }: GivenMeasured): Cell {
  if (typeof cell === "object" || (typeof cell === "number" && !Number.isFinite(cell))) return cell;
  if (typeof cell === "string" && !BARE_NUMBER.test(cell.trim())) return cell;
  const unit = kind === "angle" ? (units?.angle ?? "deg") : (units?.length ?? "mm");
  // A table's point and comma are decimal marks, so the number goes through as one.
  return { value: typeof cell === "string" ? cell.trim().replace(/^([-+−]?\d+),(\d{3})$/, "$1.$2") : cell, unit };
}

function assumeTableUnits(given: GivenMeasured, rows: readonly TableRow[], notes: ReadingNotes): void {
  const bare = (kind: QuantityKind) =>
    rows.some(({ cells }) =>
      (Object.keys(COLUMNS) as Column[]).some((column) => {
        const cell = cells[column];
        if (COLUMNS[column].kind !== kind || cell === undefined || cell === 0 || cell === "0") return false;
        return typeof cell === "number" || (typeof cell === "string" && BARE_NUMBER.test(cell.trim()));
      }),
    );
  const assume = (part: "length" | "angle", text: string) =>
    notes.assume({
      field: `bit.measured.units.${part}`,
      text,
      why: "numbers of the table carry no unit and the table names none",
      source: enteredBy("shop practice of bit tables, no source"),
    });
  if (given.units?.length === undefined && bare("length")) assume("length", "mm");
  if (given.units?.angle === undefined && bare("angle")) assume("angle", "deg");
}

const MOST_WINGS = 16;

function wingOf(cell: Cell | undefined, field: string, notes: ReadingNotes): number | undefined {
  if (cell === undefined) return undefined;
  const wing = typeof cell === "object" ? Number.NaN : Number(cell);
  if (Number.isInteger(wing) && wing >= 1 && wing <= MOST_WINGS) return wing;
  const got = shown(cell);
  notes.refuse({ field, got, expected: `give the number of its wing, a whole number from 1 to ${MOST_WINGS}` });
  return undefined;
}
