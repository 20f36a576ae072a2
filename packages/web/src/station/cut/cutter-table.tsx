import type { BitLayout } from "@bitwright/engine";
import type { Workup } from "@bitwright/traveler";
import { type FigureColumn, FigureTable, type WordColumn } from "../../figure/figure-column.tsx";

type BedCut = Workup["cut"]["beds"][number];

/** Every cutter's cut, load and heat in one bed, at the weight and speed worked with there. */
export function CutterTable({ layout, bed }: { readonly layout: BitLayout; readonly bed: BedCut }) {
  const rows = layout.cutters.map((cutter, at) => ({ number: at + 1, cutter, load: bed.drilling.cutters[at] }));
  type Row = (typeof rows)[number];
  const columns: (FigureColumn<Row> | WordColumn<Row>)[] = [
    { head: "cutter", words: ({ number }) => number },
    { head: "wing", words: ({ cutter }) => (cutter.wing > 0 ? cutter.wing : "–") },
    { head: "radius", kind: "length", of: ({ cutter }) => cutter.radius },
    { head: "area of cut", kind: "area", of: ({ load }) => load?.areaOfCut },
    { head: "deepest cut", kind: "length", of: ({ load }) => load?.deepest },
    { head: "drag", kind: "force", of: ({ load }) => load?.tangential },
    { head: "its part of the weight", kind: "force", of: ({ load }) => load?.axial },
    { head: "torque", kind: "torque", of: ({ load }) => load?.torque },
    { head: "power", kind: "power", of: ({ load }) => load?.power },
    { head: "heat where it rubs", kind: "temperature", of: ({ load }) => load?.contactTemperature },
  ];
  return (
    <FigureTable
      caption={`Cutters in ${bed.bed.name}`}
      rows={rows}
      columns={columns}
      rowKey={({ number }) => String(number)}
      named={({ number }) => `cutter ${number}`}
    />
  );
}
