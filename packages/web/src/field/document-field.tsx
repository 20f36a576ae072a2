import { fieldFacts } from "@bitwright/traveler";
import { useMemo } from "react";
import { useUnits } from "../frame/settings.ts";
import { edit, openJob } from "../job/open-job.ts";
import { type Path, pathText, valueAt } from "../job/path.ts";
import { AssumedWords } from "./assumed-words.tsx";
import { isMissing, useAssumed, useProblem } from "./field-problem.ts";
import { type Pick, PickedField } from "./picked-field.tsx";
import { echoOf, entryText, entryUnit, readEntry, refusalWords } from "./read-entry.ts";
import { TypedField } from "./typed-field.tsx";

/** One field of the document, asked for in the way that its schema says. */
export function DocumentField(props: {
  readonly path: Path;
  readonly label: string;
  /** What may be picked there, where the schema only says that it is a text. */
  readonly picks?: readonly Pick[];
  readonly suggestions?: readonly string[];
  readonly lines?: boolean;
}) {
  const { path, label, picks, suggestions, lines } = props;
  const where = pathText(path);
  const units = useUnits();
  const value = openJob(({ document }) => valueAt(document, path));
  const problem = useProblem(path);
  const taken = useAssumed(path);
  const facts = useMemo(() => fieldFacts(path), [path]);
  const text = entryText(value);
  const set = (next: unknown) => edit(path, next, next === undefined ? `${label} cleared` : `${label}: ${next}`);
  const told = problem && !isMissing(problem) ? refusalWords(problem.wrong, problem.expected) : undefined;
  const needed = problem && isMissing(problem) ? <span className="needed">Needed: {problem.expected}.</span> : null;
  const assumed = taken ? <AssumedWords assumed={taken} /> : needed;
  const common = { label, where, help: facts?.description ?? "", assumed };

  const options = picks ?? facts?.options?.map((word): Pick => ({ id: word, words: word }));
  if (options) {
    return <PickedField {...common} value={text} picks={options} none="not given" onPick={set} refusal={told} />;
  }
  if (facts?.flag) {
    const yes: readonly Pick[] = [
      { id: "true", words: "yes" },
      { id: "false", words: "no" },
    ];
    const shown = typeof value === "boolean" ? String(value) : text;
    const onPick = (id: string | undefined) => set(id === undefined ? undefined : id === "true");
    return <PickedField {...common} value={shown} picks={yes} none="not given" onPick={onPick} refusal={told} />;
  }
  const takes = facts?.takes;
  const plain = (typed: string) => set(typed.trim() === "" ? undefined : typed.trim());
  if (!takes) {
    const number = (typed: string) => (/^\s*\d+\s*$/.test(typed) ? set(Number(typed)) : plain(typed));
    const more = { ...(suggestions ? { suggestions } : {}), ...(lines ? { lines } : {}) };
    return (
      <TypedField
        {...common}
        {...more}
        value={text}
        onCommit={facts?.count ? number : plain}
        keypad={facts?.count ? "numeric" : "text"}
        refusal={told}
      />
    );
  }
  const read = (typed: string) => readEntry(typed, takes, units);
  const standing = text === "" ? undefined : read(text);
  return (
    <TypedField
      {...common}
      value={text}
      unit={entryUnit(takes[0]?.kind ?? "ratio", units)}
      keypad="decimal"
      echo={(typed) => {
        const reading = read(typed);
        return reading.ok ? echoOf(reading, units) : undefined;
      }}
      onCommit={(typed) => {
        const reading = read(typed);
        plain(reading.ok ? reading.text : typed);
      }}
      refusal={standing && !standing.ok ? standing.words : told}
    />
  );
}
