import type { CardFigure } from "@bitwright/engine";
import { wholeFigure } from "@bitwright/shop";
import type { Workup } from "@bitwright/traveler";
import { useUnits } from "../../frame/settings.ts";
import { BedOfCard } from "./bed-of-card.tsx";
import { FeedOfCard } from "./feed-of-card.tsx";

/** The card in large type, for a phone in a glove. */
export function LargeCard({ workup: { card } }: { readonly workup: Workup }) {
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
