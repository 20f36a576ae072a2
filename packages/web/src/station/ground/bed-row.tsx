import type { BedFit } from "@bitwright/engine";
import { Button } from "react-aria-components";
import { entryText } from "../../field/read-entry.ts";
import { edit, openJob } from "../../job/open-job.ts";
import { pathText, valueAt } from "../../job/path.ts";
import { BEDS, DepthCell, RockCell, StrengthCell, TextCell } from "./bed-cells.tsx";
import { FitWords } from "./fit-words.tsx";

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
