import type { CardContent, CardFigure, CardRow } from "@bitwright/engine";
import { feedRows, wholeFigure } from "@bitwright/shop";
import type { UnitSystem, Workup } from "@bitwright/traveler";
import { useState } from "react";
import { Button, Radio, RadioGroup } from "react-aria-components";
import { Sign } from "../../figure/sign.tsx";
import { useUnits } from "../../frame/settings.ts";
import { useSheets } from "../../worker/use-sheets.ts";
import { OfWorkup } from "../of-workup.tsx";

/** The driller's card: to read on the rig, and as it prints. */
export function CardStation() {
  const [paper, setPaper] = useState(false);
  return (
    <>
      <div className="row not-on-paper">
        <RadioGroup
          className="choice-of-two"
          aria-label="How the card is shown"
          orientation="horizontal"
          value={paper ? "paper" : "screen"}
          onChange={(chosen) => setPaper(chosen === "paper")}
        >
          <Radio value="screen">To read here</Radio>
          <Radio value="paper">As it prints</Radio>
        </RadioGroup>
        <Button className="button" onPress={() => window.print()}>
          Print
        </Button>
      </div>
      <OfWorkup>
        {(workup) => (
          <>
            <div className={paper ? "only-paper" : "not-on-paper"}>{paper ? null : <LargeCard workup={workup} />}</div>
            <div className={paper ? "" : "only-paper"}>
              <PaperCard />
            </div>
          </>
        )}
      </OfWorkup>
    </>
  );
}

/** The card of one page of plain text, exactly as the command line writes it. */
function PaperCard() {
  const sheets = useSheets("bit");
  const card = sheets.find(({ name }) => name === "card.txt");
  if (!card) return <p className="soft">Writing the card …</p>;
  return (
    // A wide page on a narrow screen is moved about with the keys too.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keys
    <section className="table-room" aria-label="The card as it prints" tabIndex={0}>
      <pre className="paper">{card.text}</pre>
    </section>
  );
}

/** The card in large type, for a phone in a glove. */
function LargeCard({ workup: { card } }: { readonly workup: Workup }) {
  const units = useUnits();
  const shown = (figure: CardFigure | undefined) => (figure ? wholeFigure(figure, units) : undefined);
  const drilled = card.rows.some((row) => row.drilled);
  return (
    <div className="stack card">
      <header>
        <h2>{card.job}</h2>
        <p>
          {card.customer}. Hole {wholeFigure(card.hole, units)}. {card.bit}
        </p>
      </header>
      {drilled ? null : (
        <p className="banner answer">Do not run this bit in this hole. No bed of it is ground for a PDC bit.</p>
      )}
      {card.casing ? (
        <p className="banner answer">
          <strong>Case to {wholeFigure(card.casing, units)} before this bit goes in.</strong> {card.casingWords[0]}
        </p>
      ) : null}
      <ol className="rows card-beds">
        {card.rows.map((row) => (
          <BedOfCard key={`${row.from.value} ${row.ground}`} row={row} shown={shown} />
        ))}
      </ol>
      <FeedOfCard card={card} units={units} />
      {card.breakIn ? (
        <section className="sheet">
          <h3>Break-in</h3>
          <p>
            First {wholeFigure(card.breakIn.length, units)}: {wholeFigure(card.breakIn.weight, units)},{" "}
            {wholeFigure(card.breakIn.rotarySpeed, units)}. {card.breakIn.steps.join(" ")}
          </p>
        </section>
      ) : null}
      <section className="sheet">
        <h3>Stop and look when</h3>
        <ul>
          {card.stopSigns.map(({ sign, likely, act }) => (
            <li key={sign}>
              <strong>{sign}</strong>: {likely}; {act}
            </li>
          ))}
        </ul>
      </section>
      {card.warnings.length > 0 ? (
        <section className="sheet">
          <h3>Watch</h3>
          <ul>
            {card.warnings.map((warning) => (
              <li key={warning}>{warning}</li>
            ))}
          </ul>
        </section>
      ) : null}
      <section className="banner">
        <h3>Safety</h3>
        <ul>
          {card.cautions.map(({ topic, text }) => (
            <li key={topic}>
              <strong>{topic}</strong>: {text}
            </li>
          ))}
        </ul>
        <p>{[...new Set(card.cautions.map(({ deferral }) => deferral))].join(" ")}</p>
      </section>
      <p className="soft">{card.standing}</p>
    </div>
  );
}

function BedOfCard({
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

/** Depths of feed that a screen of a phone shows [-]. */
const MOST_FEEDS = 16;

function FeedOfCard({ card, units }: { readonly card: CardContent; readonly units: UnitSystem }) {
  const rows = feedRows(card, MOST_FEEDS);
  if (rows.length === 0) return null;
  const gauge = rows.some((row) => row.gauge);
  return (
    <section className="sheet">
      <h3>Feed by depth</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">bit at</th>
            <th scope="col">do</th>
            <th scope="col" className="figure">
              by
            </th>
            {gauge ? (
              <th scope="col" className="figure">
                feed gauge
              </th>
            ) : null}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ depth, act, force, gauge: reading }) => (
            <tr key={depth.value}>
              <th scope="row">{wholeFigure(depth, units)}</th>
              <td>{act}</td>
              <td className="figure">{act === "let it hang" ? "" : wholeFigure(force, units)}</td>
              {gauge ? <td className="figure">{reading ? wholeFigure(reading, units) : ""}</td> : null}
            </tr>
          ))}
        </tbody>
      </table>
      {gauge ? null : (
        <p className="note">No gauge readings: the rig's force for each unit of feed pressure was not given.</p>
      )}
    </section>
  );
}
