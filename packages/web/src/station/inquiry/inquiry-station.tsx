import { Button, Group } from "react-aria-components";
import { DocumentField } from "../../field/document-field.tsx";
import { edit, openJob } from "../../job/open-job.ts";
import { pathText, valueAt } from "../../job/path.ts";
import { workedJob } from "../../worker/worked-job.ts";
import { askedPath, type FieldGroup } from "./field-group.ts";
import { INQUIRY_GROUPS } from "./inquiry-groups.ts";
import { picksFor, suggestionsFor } from "./picks.ts";

/** What the driller needs, and the gear it is to be done with. */
export function InquiryStation() {
  const assumed = workedJob((state) => state.workup?.assumed.filter(({ field }) => field.startsWith("inquiry")).length);
  return (
    <>
      <p className="answer">
        {assumed === undefined
          ? "A hole and its ground are enough to begin with. What is not known gets a named default."
          : assumed === 0
            ? "Every fact of the inquiry was given."
            : `${assumed} facts were not given and are assumed; each stands under its field.`}
      </p>
      {INQUIRY_GROUPS.map((group) => (
        <details key={group.heading} className="sheet group" open={group.open === true}>
          <summary>
            <h2>{group.heading}</h2>
          </summary>
          {group.caution ? <p className="banner note">{group.caution}</p> : null}
          {group.list ? <ListOfFields group={group} /> : <GroupFields group={group} />}
        </details>
      ))}
    </>
  );
}

function GroupFields({ group, at = 0 }: { readonly group: FieldGroup; readonly at?: number }) {
  const document = openJob((state) => state.document);
  return (
    <div className="fields">
      {group.fields.map((field) => {
        const picks = picksFor(field, document);
        const suggestions = suggestionsFor(field);
        return (
          <DocumentField
            key={field.step}
            path={askedPath(group, field, at)}
            label={field.label}
            {...(picks ? { picks } : {})}
            {...(suggestions ? { suggestions } : {})}
            {...(field.lines ? { lines: true } : {})}
          />
        );
      })}
    </div>
  );
}

function ListOfFields({ group }: { readonly group: FieldGroup }) {
  const list = openJob(({ document }) => valueAt(document, group.path));
  const { one = "", add = "" } = group.list ?? {};
  const count = Array.isArray(list) ? list.length : 0;
  const bare = group.fields.every(({ step }) => step === "");
  return (
    <>
      <ol className="rows">
        {Array.from({ length: count }, (_, at) => (
          // The rows have no name but their place.
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place in the list
          <li key={at} data-where={pathText([...group.path, at])}>
            <div className="row">
              <h3>
                {one} {at + 1}
              </h3>
              <Button
                className="button plain"
                onPress={() => edit([...group.path, at], undefined, `${one.toLowerCase()} ${at + 1} taken out`)}
              >
                Take out
              </Button>
            </div>
            <Group aria-label={`${one} ${at + 1}`}>
              <GroupFields group={group} at={at} />
            </Group>
          </li>
        ))}
      </ol>
      <Button
        className="button"
        onPress={() => edit([...group.path, count], bare ? "" : {}, `${one.toLowerCase()} added`)}
      >
        {add}
      </Button>
    </>
  );
}
