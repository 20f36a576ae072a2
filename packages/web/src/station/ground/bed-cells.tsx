import { classifyGround, rockTable } from "@bitwright/engine";
import { fieldFacts } from "@bitwright/traveler";
import { bandText, readBand } from "../../field/band-text.ts";
import { isMissing, useProblem } from "../../field/field-problem.ts";
import { echoOf, entryText, readEntry, refusalWords } from "../../field/read-entry.ts";
import { TableCell } from "../../field/table-cell.tsx";
import { useUnits } from "../../frame/settings.ts";
import { edit, openJob } from "../../job/open-job.ts";
import { pathText, valueAt } from "../../job/path.ts";

/** Path of the beds in the document. */
export const BEDS = ["ground", "beds"] as const;

/** One cell of the table of beds: what stands there, what is wrong with it, and how it is set. */
function useCell(at: number, step: string) {
  const path = [...BEDS, at, step];
  const value = openJob(({ document }) => valueAt(document, path));
  const problem = useProblem(path);
  const refusal = problem && !isMissing(problem) ? refusalWords(problem.wrong, problem.expected) : undefined;
  const set = (label: string, next: unknown) =>
    edit(path, next === "" ? undefined : next, `${label}: ${typeof next === "string" ? next : "band"}`);
  return { path, value, refusal, set, where: pathText(path) };
}

/** Top or bottom of a bed. */
export function DepthCell({
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

/** The driller's words, with what they are read as under them. */
export function TextCell({ at, step, label }: { readonly at: number; readonly step: string; readonly label: string }) {
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

/** The rock of a bed: as its words are read, or picked. */
export function RockCell({
  at,
  name,
  phrase,
}: {
  readonly at: number;
  readonly name: string;
  readonly phrase: string;
}) {
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

/** Strength of a bed: one figure or a band. */
export function StrengthCell({
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
