import { type ReactNode, useId, useState } from "react";
import { Button } from "react-aria-components";

/** One thing that can be picked. */
export interface Pick {
  readonly id: string;
  readonly words: string;
}

/** A field that is picked from a list. */
export function PickedField(props: {
  readonly label: string;
  readonly value: string;
  readonly picks: readonly Pick[];
  /** Words for picking nothing. */
  readonly none: string;
  readonly onPick: (id: string | undefined) => void;
  readonly help?: string;
  readonly refusal?: string | undefined;
  readonly assumed?: ReactNode;
  readonly where?: string;
}) {
  const { label, value, picks, none, onPick, help, refusal, assumed } = props;
  const [helped, setHelped] = useState(false);
  const field = useId();
  const below = useId();
  // What stands in the document stays in the list even where it is none of the picks.
  const strange = value !== "" && !picks.some(({ id }) => id === value);
  return (
    <div className="field" data-where={props.where}>
      <span className="row label-row">
        <label htmlFor={field}>{label}</label>
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
      <span className={refusal === undefined ? "entry" : "entry refused"}>
        <select
          id={field}
          value={value}
          aria-describedby={below}
          aria-invalid={refusal !== undefined}
          onChange={(event) => onPick(event.target.value === "" ? undefined : event.target.value)}
        >
          <option value="">{none}</option>
          {strange ? <option value={value}>{value}</option> : null}
          {picks.map(({ id, words }) => (
            <option key={id} value={id}>
              {words}
            </option>
          ))}
        </select>
      </span>
      {helped ? <p className="note help-words">{help}</p> : null}
      <span id={below} className={refusal === undefined ? "below" : "below refusal"}>
        {refusal ?? (value === "" ? assumed : null)}
      </span>
    </div>
  );
}
