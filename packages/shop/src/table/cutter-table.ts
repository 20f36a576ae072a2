import type { BitLayout, PlacedCutter } from "@bitwright/engine";
import { inUnit, type QuantityKind, type UnitSystem } from "@bitwright/traveler";
import { csvText } from "./csv-text.ts";

/** What was computed for each cutter, in the order of the layout; every row may be left out. */
export interface PerCutterFigures {
  /** Area of cut [m²]. */
  readonly areaOfCut?: ArrayLike<number>;
  /** Rock of one revolution [m³]. */
  readonly volumePerRevolution?: ArrayLike<number>;
  /** Greatest depth of cut, across the edge [m]. */
  readonly deepestCut?: ArrayLike<number>;
  /** Force against travel [N]. */
  readonly drag?: ArrayLike<number>;
  /** Normal force that cuts [N]. */
  readonly cuttingNormal?: ArrayLike<number>;
  /** Normal force of chamfer and flat [N]. */
  readonly contactNormal?: ArrayLike<number>;
  /** Part of the weight [N]. */
  readonly axial?: ArrayLike<number>;
  /** Part of the bit's torque [N·m]. */
  readonly torque?: ArrayLike<number>;
  /** Temperature where it rubs [K]. */
  readonly contactTemperature?: ArrayLike<number>;
}

/** What the cutter table is made from. */
export interface CutterTableInput {
  readonly layout: BitLayout;
  readonly units: UnitSystem;
  readonly perCutter?: PerCutterFigures;
  /** The bed and the weight that the computed figures are for, repeated on every row. */
  readonly cutting?: {
    readonly bed: string;
    /** Weight on bit [N]. */
    readonly weight: number;
  };
  /** What to call each cutter; its number in the layout, from 1, where not given. */
  readonly numbers?: readonly string[];
}

/** A column: what it holds, how to get it, in which unit and with how many decimals it is printed in each system. */
interface Column<Of> {
  readonly name: string;
  readonly kind: QuantityKind;
  readonly of: Of;
  readonly field: readonly [unit: string, decimals: number];
  readonly metric: readonly [unit: string, decimals: number];
}

const same = (unit: string, decimals: number) =>
  ({ field: [unit, decimals], metric: [unit, decimals] }) as const satisfies Partial<Column<unknown>>;
const place = { field: ["in", 4], metric: ["mm", 3] } as const;
const force = { field: ["lbf", 1], metric: ["N", 1] } as const;

// Cutters and what is ground on them stay in millimetres in both systems: so they are sold and measured.
const GEOMETRY: readonly Column<(cutter: PlacedCutter) => number>[] = [
  { name: "radius", kind: "length", of: ({ radius }) => radius, ...place },
  { name: "azimuth", kind: "angle", of: ({ azimuth }) => azimuth, ...same("deg", 2) },
  { name: "height", kind: "length", of: ({ height }) => height, ...place },
  { name: "profile angle", kind: "angle", of: ({ profileAngle }) => profileAngle, ...same("deg", 2) },
  { name: "back rake", kind: "angle", of: ({ backRake }) => backRake, ...same("deg", 2) },
  { name: "side rake", kind: "angle", of: ({ sideRake }) => sideRake, ...same("deg", 2) },
  { name: "face diameter", kind: "length", of: ({ faceDiameter }) => faceDiameter, ...same("mm", 2) },
  { name: "length", kind: "length", of: ({ length }) => length, ...same("mm", 2) },
  { name: "chamfer width", kind: "length", of: ({ chamferWidth }) => chamferWidth, ...same("mm", 2) },
  { name: "chamfer angle", kind: "angle", of: ({ chamferAngle }) => chamferAngle, ...same("deg", 1) },
  { name: "worn height", kind: "length", of: ({ wornHeight }) => wornHeight, ...same("mm", 2) },
];

const FIGURES: readonly Column<keyof PerCutterFigures>[] = [
  { name: "area of cut", kind: "area", of: "areaOfCut", field: ["in²", 6], metric: ["mm²", 3] },
  { name: "rock per turn", kind: "volume", of: "volumePerRevolution", field: ["in³", 5], metric: ["mm³", 1] },
  { name: "deepest cut", kind: "length", of: "deepestCut", field: ["in", 4], metric: ["mm", 3] },
  { name: "drag", kind: "force", of: "drag", ...force },
  { name: "cutting normal force", kind: "force", of: "cuttingNormal", ...force },
  { name: "contact normal force", kind: "force", of: "contactNormal", ...force },
  { name: "part of weight", kind: "force", of: "axial", ...force },
  { name: "part of torque", kind: "torque", of: "torque", field: ["ft-lbf", 2], metric: ["N m", 2] },
  { name: "contact temperature", kind: "temperature", of: "contactTemperature", field: ["°F", 0], metric: ["°C", 0] },
];

/** The table of cutters as rows of text, the first row the heads with their units: `radius [mm]`. */
export function cutterTableRows({ layout, units, perCutter = {}, cutting, numbers }: CutterTableInput): string[][] {
  const figures = FIGURES.flatMap(({ of, ...column }) => {
    const values = perCutter[of];
    if (!values) return [];
    if (values.length !== layout.cutters.length) {
      throw new RangeError(`${of} needs a value for each of ${layout.cutters.length} cutters, got ${values.length}`);
    }
    return [{ ...column, of: (k: number) => values[k] }];
  });
  const geometry = GEOMETRY.map(({ of, ...column }) => ({ ...column, of: (k: number) => of(layout.cutters[k]) }));
  const columns = [...geometry, ...figures];
  const [weightUnit, weightDecimals] = force[units];
  const heads = [
    "cutter",
    "wing",
    ...columns.map((column) => `${column.name} [${column[units][0]}]`),
    ...(cutting ? ["bed", `at weight on bit [${weightUnit}]`] : []),
  ];
  const rows = layout.cutters.map(({ wing }, k) => [
    numbers?.[k] ?? String(k + 1),
    wing > 0 ? String(wing) : "",
    ...columns.map((column) => cell(inUnit(column.kind, column.of(k), column[units][0]), column[units][1])),
    ...(cutting ? [cutting.bed, cell(inUnit("force", cutting.weight, weightUnit), weightDecimals)] : []),
  ]);
  return [heads, ...rows];
}

/** The table of cutters as CSV text, in the units its heads name. */
export function cutterTableCsv(input: CutterTableInput): string {
  return csvText(cutterTableRows(input));
}

/** Fixed decimals; what is not known is left empty rather than written as something that is no number. */
function cell(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return "";
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace("-", "") : text;
}
