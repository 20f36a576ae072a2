import { Button } from "react-aria-components";
import { DocumentField } from "../field/document-field.tsx";
import { Sign } from "../figure/sign.tsx";
import { editAll, openJob } from "../job/open-job.ts";
import { type Path, pathText, valueAt } from "../job/path.ts";

/** Values that a person sets over the program's, with the one tap that takes them all back. */
export function SetByHand(props: {
  readonly fields: readonly { readonly path: Path; readonly label: string }[];
  readonly heading: string;
}) {
  const { fields, heading } = props;
  const document = openJob((state) => state.document);
  const set = fields.filter(({ path }) => valueAt(document, path) !== undefined);
  return (
    <details className="sheet group" open={set.length > 0}>
      <summary>
        <h2>{heading}</h2>
        {set.length > 0 ? (
          <span className="row by-hand">
            <Sign name="note" /> {set.map(({ label }) => label.toLowerCase()).join(", ")} set by hand
          </span>
        ) : null}
      </summary>
      <div className="stack">
        <div className="fields">
          {fields.map(({ path, label }) => (
            <DocumentField key={pathText(path)} path={path} label={label} />
          ))}
        </div>
        {set.length > 0 ? (
          <div className="row">
            <Button
              className="button"
              onPress={() =>
                editAll(
                  set.map(({ path }) => [path, undefined] as const),
                  "back to the computed values",
                )
              }
            >
              Back to the computed values
            </Button>
          </div>
        ) : null}
      </div>
    </details>
  );
}
