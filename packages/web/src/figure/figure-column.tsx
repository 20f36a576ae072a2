import type { Working } from "@bitwright/engine";
import type { QuantityKind } from "@bitwright/traveler";
import type { ReactNode } from "react";
import { useUnits } from "../frame/settings.ts";
import { columnUnit } from "./column-unit.ts";
import { Figure } from "./figure.tsx";
import { ScrollRoom } from "./scroll-room.tsx";

/** One column of a table of figures. */
export interface FigureColumn<Row> {
  readonly head: string;
  readonly kind: QuantityKind;
  /** The figure of a row [coherent SI unit of the kind]; absent where the row has none. */
  readonly of: (row: Row) => number | undefined;
  readonly working?: (row: Row, si: number) => Working | undefined;
  /** What stands where a row has none; a dash where not given. */
  readonly instead?: string;
}

/** A column of words. */
export interface WordColumn<Row> {
  readonly head: string;
  readonly words: (row: Row) => ReactNode;
  /** Whether the words are a figure, set as one: at the right, on one line. */
  readonly figure?: boolean;
}

/** Tables of more columns than this take the whole width of the screen. */
const WIDE = 7;

/** A table of rows with their figures, each column in one unit. */
export function FigureTable<Row>(props: {
  readonly caption: string;
  readonly rows: readonly Row[];
  readonly columns: readonly (FigureColumn<Row> | WordColumn<Row>)[];
  readonly rowKey: (row: Row) => string;
  /** Name by which a finding finds the row. */
  readonly named?: (row: Row) => string;
}) {
  const { caption, rows, columns, rowKey, named } = props;
  const units = useUnits();
  const unitOf = columns.map((column) =>
    "kind" in column
      ? columnUnit(
          column.kind,
          rows.map(column.of).filter((si) => si !== undefined),
          units,
        )
      : "",
  );
  return (
    <ScrollRoom label={caption} wide={columns.length > WIDE}>
      <table>
        <caption className="unseen">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.head} scope="col" className={"kind" in column || column.figure ? "figure" : undefined}>
                {column.head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={rowKey(row)} data-name={named?.(row)} tabIndex={named ? -1 : undefined}>
              {columns.map((column, at) => {
                if (!("kind" in column)) {
                  const Cell = at === 0 ? "th" : "td";
                  return (
                    <Cell
                      key={column.head}
                      scope={at === 0 ? "row" : undefined}
                      className={column.figure ? "figure" : undefined}
                    >
                      {column.words(row)}
                    </Cell>
                  );
                }
                const si = column.of(row);
                return (
                  <td key={column.head} className="figure">
                    {si === undefined ? (
                      (column.instead ?? "–")
                    ) : (
                      <Figure kind={column.kind} si={si} unit={unitOf[at] ?? ""} working={column.working?.(row, si)} />
                    )}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollRoom>
  );
}
