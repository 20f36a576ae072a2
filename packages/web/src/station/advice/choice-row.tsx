import { Button } from "react-aria-components";
import { DocumentField } from "../../field/document-field.tsx";
import { Sign } from "../../figure/sign.tsx";
import { editAll, openJob } from "../../job/open-job.ts";
import { pathText, valueAt } from "../../job/path.ts";
import type { ShownChoice } from "./choice-words.ts";
import { ReasonLine, reasonKey } from "./reason-line.tsx";

/** One choice: what the rules choose and why, what was set over it, and the way back. */
export function ChoiceRow({ shown }: { readonly shown: ShownChoice }) {
  const { name, words, choice, fields } = shown;
  const document = openJob((state) => state.document);
  const overridden = fields.filter(({ path }) => valueAt(document, path) !== undefined);
  const isOverridden = overridden.length > 0;
  return (
    <li className="choice">
      <div className="row">
        <h3>{name}</h3>
        <span className={isOverridden ? "struck" : "chosen"}>{words}</span>
        {isOverridden ? (
          <>
            <span className="row by-hand">
              <Sign name="note" /> set by hand
            </span>
            <Button
              className="button"
              onPress={() =>
                editAll(
                  fields.map(({ path }) => [path, undefined] as const),
                  `${name.toLowerCase()} back to the advice`,
                )
              }
            >
              Back to {words}
            </Button>
          </>
        ) : null}
      </div>
      <ul>
        {choice.reasons.map((reason) => (
          <ReasonLine key={reasonKey(reason)} reason={reason} />
        ))}
      </ul>
      {isOverridden ? (
        <div className="fields">
          {fields.map(({ path, label }) => (
            <DocumentField key={pathText(path)} path={path} label={label} />
          ))}
        </div>
      ) : null}
      <details className="note">
        <summary>{isOverridden ? "What else was looked at" : "Set another, and what else was looked at"}</summary>
        {isOverridden ? null : (
          <div className="fields">
            {fields.map(({ path, label }) => (
              <DocumentField key={pathText(path)} path={path} label={label} />
            ))}
          </div>
        )}
        {choice.alternatives.length > 0 ? (
          <ul>
            {choice.alternatives.map(({ what, why }) => (
              <li key={what}>
                {what}: {why}
              </li>
            ))}
          </ul>
        ) : null}
      </details>
    </li>
  );
}
