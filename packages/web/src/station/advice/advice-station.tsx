import type { BedFit } from "@bitwright/engine";
import { figuresIn, fitAnswer } from "@bitwright/shop";
import type { Workup } from "@bitwright/traveler";
import { allWorkings } from "../../figure/all-workings.ts";
import { Figure } from "../../figure/figure.tsx";
import { useUnits } from "../../frame/settings.ts";
import { FitWords } from "../ground/fit-words.tsx";
import { OfWorkup } from "../of-workup.tsx";
import { ChoiceRow } from "./choice-row.tsx";
import { shownChoices } from "./choice-words.ts";
import { ReasonLine, reasonKey } from "./reason-line.tsx";

/** Is PDC the tool, and which bit: the verdict first, then why, bed by bed and choice by choice. */
export function AdviceStation() {
  return <OfWorkup>{(workup) => <Advice workup={workup} />}</OfWorkup>;
}

function Advice({ workup }: { readonly workup: Workup }) {
  const units = useUnits();
  const figures = figuresIn(units);
  const { advice, bit, inquiry } = workup;
  const { casing, fits } = advice;
  const shoe = allWorkings(workup).get("least depth of the casing shoe");
  const measured = inquiry.bit.kind === "measured";
  return (
    <>
      <p className="verdict">{fitAnswer(workup, figures)}</p>
      {casing.reasons.length > 0 ? (
        <section className="sheet stack" aria-labelledby="casing-head">
          <h2 id="casing-head">Casing</h2>
          {casing.depth === undefined ? null : (
            <p className="answer">
              Case to <Figure kind="depth" si={casing.depth} working={shoe} /> at least before this bit goes in.
            </p>
          )}
          <ul>
            {casing.reasons.map((reason) => (
              <li key={reason.sentence}>{reason.sentence}</li>
            ))}
          </ul>
          <p className="note soft">
            No casing design. Local code and licensed practice decide how deep, with what and how it is sealed.
          </p>
        </section>
      ) : null}
      <section className="sheet stack" aria-labelledby="beds-head">
        <h2 id="beds-head">Bed by bed</h2>
        <ol className="rows bed-fits">
          {fits.map((fit) => (
            <FitOfBed
              key={`${fit.bed.top} ${fit.bed.name}`}
              fit={fit}
              depths={figures.range("depth", fit.bed.top, fit.bed.bottom)}
            />
          ))}
        </ol>
      </section>
      <section className="sheet stack" aria-labelledby="bit-head">
        <h2 id="bit-head">The bit</h2>
        <p className="answer">{bit.inWords}</p>
        {bit.departures.length > 0 ? (
          <ul>
            {bit.departures.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        ) : null}
        {measured ? (
          <p>
            This job has a bit as it was measured. What the rules would choose for this hole stands below beside it.
          </p>
        ) : null}
        <ol className="rows">
          {shownChoices(advice.bit, units).map((shown) => (
            <ChoiceRow key={shown.name} shown={shown} />
          ))}
        </ol>
      </section>
    </>
  );
}

function FitOfBed({ fit, depths }: { readonly fit: BedFit; readonly depths: string }) {
  const [first, ...more] = fit.reasons;
  return (
    <li data-name={fit.bed.name} tabIndex={-1}>
      <div className="row">
        <h3>{fit.bed.name}</h3>
        <span className="soft">{depths}</span>
        <FitWords fit={fit} />
      </div>
      <ul>{first ? <ReasonLine reason={first} /> : null}</ul>
      {fit.verdict !== "fit" && fit.insteadUse.length > 0 ? (
        <p>
          {fit.verdict === "unfit" ? "Use instead" : "Also good here"}:{" "}
          {fit.insteadUse.map(({ tool, why }) => `${tool} (${why})`).join("; ")}.
        </p>
      ) : null}
      {more.length > 0 ? (
        <details className="note">
          <summary>{more.length} more looked at</summary>
          <ul>
            {more.map((reason) => (
              <ReasonLine key={reasonKey(reason)} reason={reason} />
            ))}
          </ul>
        </details>
      ) : null}
    </li>
  );
}
