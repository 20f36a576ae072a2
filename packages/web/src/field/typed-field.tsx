import { type KeyboardEvent, type ReactNode, useId, useRef, useState } from "react";
import { Button, Input, Label, Text, TextArea, TextField } from "react-aria-components";

/** A field that a person types into; it commits when it is left or on Enter, Esc gives the edit up. */
export interface TypedFieldProps {
  readonly label: string;
  /** What stands in the document. */
  readonly value: string;
  readonly onCommit: (text: string) => void;
  /** What the field means, shown behind its "?". */
  readonly help?: string;
  /** Unit beside the field. */
  readonly unit?: string;
  /** What the typed text is understood as, while it is typed and after. */
  readonly echo?: (text: string) => string | undefined;
  /** What is wrong with what stands there. */
  readonly refusal?: string | undefined;
  /** What was taken because nothing was given. */
  readonly assumed?: ReactNode;
  readonly keypad?: "decimal" | "numeric" | "text";
  readonly lines?: boolean;
  readonly suggestions?: readonly string[];
  /** Place of the field in the document, by which findings and problems find it. */
  readonly where?: string;
}

export function TypedField(props: TypedFieldProps) {
  const { label, value, onCommit, help, unit, echo, refusal, assumed, keypad = "text", lines, suggestions } = props;
  const [draft, setDraft] = useState<string>();
  const [helped, setHelped] = useState(false);
  const list = useId();
  // Leaving the field is what commits it; Esc leaves it too and must not.
  const givenUp = useRef(false);
  const text = draft ?? value;
  const shownRefusal = draft === undefined ? refusal : undefined;
  const said = text.trim() === "" ? undefined : echo?.(text);
  const commit = () => {
    if (draft !== undefined && !givenUp.current && draft !== value) onCommit(draft);
    givenUp.current = false;
    setDraft(undefined);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    if (event.key === "Escape" && draft !== undefined) {
      event.stopPropagation();
      setDraft(undefined);
    } else if (event.key === "Enter" && !lines) {
      commit();
    }
  };
  return (
    <TextField
      className={lines ? "field wide" : "field"}
      value={text}
      onChange={setDraft}
      onBlur={commit}
      isInvalid={shownRefusal !== undefined}
      data-where={props.where}
    >
      <span className="row label-row">
        <Label>{label}</Label>
        {help ? (
          <Button
            className="help"
            aria-label={`What is ${label}?`}
            aria-expanded={helped}
            onPress={() => setHelped(!helped)}
          >
            ?
          </Button>
        ) : null}
      </span>
      <span className={shownRefusal === undefined ? "entry" : "entry refused"}>
        {lines ? (
          <TextArea data-draft={draft === undefined ? undefined : "yes"} onKeyDown={onKeyDown} />
        ) : (
          <Input
            type="text"
            inputMode={keypad}
            autoComplete="off"
            spellCheck={false}
            list={suggestions ? list : undefined}
            data-draft={draft === undefined ? undefined : "yes"}
            onKeyDown={onKeyDown}
          />
        )}
        {unit ? <span className="unit">{unit}</span> : null}
      </span>
      {suggestions ? (
        <datalist id={list}>
          {suggestions.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      ) : null}
      {helped ? <p className="note help-words">{help}</p> : null}
      {shownRefusal === undefined ? (
        <Text slot="description" className="below">
          {said ? <span className="echo">{said}</span> : text.trim() === "" ? assumed : null}
        </Text>
      ) : (
        <Text slot="errorMessage" className="below refusal">
          {shownRefusal}
        </Text>
      )}
    </TextField>
  );
}
