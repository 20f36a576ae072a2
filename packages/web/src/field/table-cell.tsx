import { type KeyboardEvent, useId, useRef, useState } from "react";

/** One cell of a table that is typed into: Enter commits and goes down, Tab commits and goes right, Esc gives the edit up. */
export function TableCell(props: {
  readonly label: string;
  readonly value: string;
  readonly onCommit: (text: string) => void;
  readonly echo?: (text: string) => string | undefined;
  /** What stands there where nothing was given. */
  readonly instead?: string;
  readonly refusal?: string | undefined;
  readonly decimal?: boolean;
  readonly where: string;
  readonly onFocus?: () => void;
}) {
  const { label, value, onCommit, echo, instead, refusal, decimal, where, onFocus } = props;
  const [draft, setDraft] = useState<string>();
  const below = useId();
  const input = useRef<HTMLInputElement>(null);
  const text = draft ?? value;
  const told = draft === undefined ? refusal : undefined;
  const said = text.trim() === "" ? undefined : echo?.(text);
  const commit = () => {
    if (draft !== undefined && draft !== value) onCommit(draft);
    setDraft(undefined);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape" && draft !== undefined) {
      event.stopPropagation();
      setDraft(undefined);
    } else if (event.key === "Enter" || event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      commit();
      goTo(input.current, event.key === "ArrowUp" || (event.key === "Enter" && event.shiftKey) ? -1 : 1);
    }
  };
  return (
    <div className="cell" data-where={where}>
      <span className={told === undefined ? "entry" : "entry refused"}>
        <input
          ref={input}
          type="text"
          inputMode={decimal ? "decimal" : "text"}
          autoComplete="off"
          spellCheck={false}
          aria-label={label}
          aria-describedby={below}
          aria-invalid={told !== undefined}
          data-draft={draft === undefined ? undefined : "yes"}
          placeholder={instead}
          value={text}
          onFocus={onFocus}
          onChange={(event) => setDraft(event.target.value)}
          onBlur={commit}
          onKeyDown={onKeyDown}
        />
      </span>
      <span id={below} className={told === undefined ? "below echo" : "below refusal"}>
        {told ?? said}
      </span>
    </div>
  );
}

/** Puts the hand on the cell of the same column so many rows on. */
function goTo(from: HTMLElement | null, step: 1 | -1): void {
  const cell = from?.closest("td");
  const row = cell?.closest("tr");
  if (!cell || !row) return;
  const next = step === 1 ? row.nextElementSibling : row.previousElementSibling;
  const at = [...row.children].indexOf(cell);
  next?.children[at]?.querySelector<HTMLElement>("input, select")?.focus();
}
