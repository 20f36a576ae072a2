import { type BedFit, classifyGround, rockTable, VERDICT_WORDS } from "@bitwright/engine";
import { fieldFacts } from "@bitwright/traveler";
import { Button } from "react-aria-components";
import { bandText, readBand } from "../../field/band-text.ts";
import { isMissing, useProblem } from "../../field/field-problem.ts";
import { echoOf, entryText, readEntry, refusalWords } from "../../field/read-entry.ts";
import { TableCell } from "../../field/table-cell.tsx";
import { Sign } from "../../figure/sign.tsx";
import { useUnits } from "../../frame/settings.ts";
import { edit, openJob } from "../../job/open-job.ts";
import { pathText, valueAt } from "../../job/path.ts";

const BEDS = ["ground", "beds"] as const;

/** A bed as it is typed; the row after the last one makes a new bed. */
export function BedRow(props: {
  readonly at: number;
  /** Whether a bed stands in this row. */
  readonly there: boolean;
  /** Depth of the bottom of the bed above, in words. */
  readonly above: string | undefined;
  readonly fit: BedFit | undefined;
  /** Strength that is worked with, in words. */
  readonly strength: string | undefined;
  readonly onFocus: () => void;
}) {
  const { at, there, above, fit, strength, onFocus } = props;
  const bed = openJob(({ document }) => valueAt(document, [...BEDS, at]));
  const name = there ? `bed ${at + 1}` : "a new bed";
  const phrase = entryText(valueAt(bed, ["phrase"]));
  return (
    <tr
      data-where={there ? pathText([...BEDS, at]) : undefined}
      data-name={phrase || entryText(valueAt(bed, ["rock"]))}
      onFocus={onFocus}
    >
      <th scope="row">{there ? at + 1 : "new"}</th>
      <td data-head="top">
        <DepthCell at={at} step="top" name={name} {...(above === undefined ? {} : { instead: above })} />
      </td>
      <td data-head="bottom">
        <DepthCell at={at} step="bottom" name={name} />
      </td>
      <td className="words" data-head="driller's words">
        <TextCell at={at} step="phrase" label={`Driller's words for ${name}`} />
      </td>
      <td data-head="taken as">{there ? <RockCell at={at} name={name} phrase={phrase} /> : null}</td>
      <td data-head="strength: one, or low / mid / high">
        <StrengthCell at={at} name={name} {...(strength === undefined ? {} : { instead: strength })} />
      </td>
      <td data-head="PDC">{fit ? <FitWords fit={fit} /> : null}</td>
      <td>
        {there ? (
          <Button
            className="button plain"
            aria-label={`Take ${name} out`}
            onPress={() => edit([...BEDS, at], undefined, `${name} taken out`)}
          >
            ✕
          </Button>
        ) : null}
      </td>
    </tr>
  );
}

function useCell(at: number, step: string) {
  const path = [...BEDS, at, step];
  const value = openJob(({ document }) => valueAt(document, path));
  const problem = useProblem(path);
  const refusal = problem && !isMissing(problem) ? refusalWords(problem.wrong, problem.expected) : undefined;
  const set = (label: string, next: unknown) =>
    edit(path, next === "" ? undefined : next, `${label}: ${typeof next === "string" ? next : "band"}`);
  return { path, value, refusal, set, where: pathText(path) };
}

function DepthCell({
  at,
  step,
  name,
  instead,
}: {
  readonly at: number;
  readonly step: string;
  readonly name: string;
  readonly instead?: string;
}) {
  const units = useUnits();
  const { path, value, refusal, set, where } = useCell(at, step);
  const takes = fieldFacts(path)?.takes ?? [];
  const label = `${step === "top" ? "Top" : "Bottom"} of ${name}`;
  const text = entryText(value);
  const own = text === "" ? undefined : readEntry(text, takes, units);
  return (
    <TableCell
      label={label}
      where={where}
      decimal
      value={text}
      {...(instead === undefined ? {} : { instead })}
      echo={(typed) => {
        const read = readEntry(typed, takes, units);
        return read.ok ? echoOf(read, units) : undefined;
      }}
      refusal={own && !own.ok ? own.words : refusal}
      onCommit={(typed) => {
        const read = readEntry(typed, takes, units);
        set(label, read.ok ? read.text : typed.trim());
      }}
    />
  );
}

function TextCell({ at, step, label }: { readonly at: number; readonly step: string; readonly label: string }) {
  const { value, refusal, set, where } = useCell(at, step);
  return (
    <TableCell
      label={label}
      where={where}
      value={entryText(value)}
      echo={(typed) => readAs(typed)}
      refusal={refusal}
      onCommit={(typed) => set(label, typed.trim())}
    />
  );
}

function readAs(phrase: string): string {
  const { rockId, confidence } = classifyGround(phrase);
  if (rockId === undefined) return "names no ground that is known here";
  return confidence === "guess" ? `read as ${rockId}, a guess` : `read as ${rockId}`;
}

function RockCell({ at, name, phrase }: { readonly at: number; readonly name: string; readonly phrase: string }) {
  const { value, refusal, set, where } = useCell(at, "rock");
  const own = openJob(({ document }) => valueAt(document, ["lists", "rocks"]));
  const read = phrase === "" ? undefined : classifyGround(phrase).rockId;
  const ours = Array.isArray(own) ? own.map((rock) => entryText(valueAt(rock, ["id"]))).filter(Boolean) : [];
  const picked = entryText(value);
  const known = picked === "" || ours.includes(picked) || rockTable.some(({ id }) => id === picked);
  return (
    <div className="cell" data-where={where}>
      <span className={refusal === undefined ? "entry" : "entry refused"}>
        <select
          aria-label={`Rock of ${name}`}
          value={picked}
          onChange={(event) => set(`Rock of ${name}`, event.target.value)}
        >
          <option value="">{read === undefined ? "by its words" : `as read: ${read}`}</option>
          {known ? null : <option value={picked}>{picked}</option>}
          {[...ours, ...rockTable.map(({ id }) => id)].map((id) => (
            <option key={id} value={id}>
              {id}
            </option>
          ))}
        </select>
      </span>
      <span className={refusal === undefined ? "below echo" : "below refusal"}>
        {refusal ?? (picked !== "" && read !== undefined && read !== picked ? `set by hand; read as ${read}` : "")}
      </span>
    </div>
  );
}

function StrengthCell({
  at,
  name,
  instead,
}: {
  readonly at: number;
  readonly name: string;
  readonly instead?: string;
}) {
  const units = useUnits();
  const { path, value, refusal, set, where } = useCell(at, "strength");
  const takes = fieldFacts(path)?.takes ?? [];
  const label = `Strength of ${name}`;
  const text = bandText(value);
  const own = text === "" ? undefined : readBand(text, takes, units);
  return (
    <TableCell
      label={label}
      where={where}
      decimal
      value={text}
      {...(instead === undefined ? {} : { instead })}
      refusal={own && !own.ok ? own.words : refusal}
      onCommit={(typed) => {
        const read = typed.trim() === "" ? undefined : readBand(typed, takes, units);
        set(label, read?.ok ? read.entry : typed.trim());
      }}
    />
  );
}

const SIGNS = { fit: "done", "fit-with-care": "caution", unfit: "stop" } as const;

/** The verdict on a bed, as a sign and in words. */
export function FitWords({ fit }: { readonly fit: BedFit }) {
  return (
    <span className="row fit-words">
      <Sign name={SIGNS[fit.verdict]} />
      {VERDICT_WORDS[fit.verdict]}
    </span>
  );
}
