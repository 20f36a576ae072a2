import type { CardFigure, CardRow } from "@bitwright/engine";
import { Sign } from "../../figure/sign.tsx";

/** How to run the bit in one bed, in large type. */
export function BedOfCard({
  row,
  shown,
}: {
  readonly row: CardRow;
  readonly shown: (figure: CardFigure | undefined) => string | undefined;
}) {
  const figures = [
    ["Weight on the bit, pipe and all", shown(row.weight)],
    ["Turn", shown(row.rotarySpeed)],
    ["Flow", shown(row.flow)],
    ["Expect", shown(row.rate)],
    ["The flow cleans up to", shown(row.rateCeiling)],
  ] as const;
  return (
    <li data-name={row.ground} tabIndex={-1}>
      <div className="row">
        <h3>
          {shown(row.from)} to {shown(row.to)}: {row.ground}
        </h3>
        {row.verdict === "fit" ? null : (
          <span className="row fit-words">
            <Sign name={row.drilled ? "caution" : "stop"} /> {row.drilled ? row.verdict : "not this bit"}
          </span>
        )}
      </div>
      {row.drilled ? (
        <dl className="big-figures">
          {figures.map(([name, figure]) =>
            figure === undefined ? null : (
              <div key={name}>
                <dt>{name}</dt>
                <dd>{figure}</dd>
              </div>
            ),
          )}
        </dl>
      ) : null}
      {row.remarks.length > 0 ? (
        <ul>
          {row.remarks.map((remark) => (
            <li key={remark}>{remark}</li>
          ))}
        </ul>
      ) : null}
      {row.practiceWeight && row.practiceSpeed ? (
        <p className="soft note">
          Rule of thumb (common practice): {shown(row.practiceWeight)} at {shown(row.practiceSpeed)}.
        </p>
      ) : null}
    </li>
  );
}
