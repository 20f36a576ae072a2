import { type Assumed, formatQuantity } from "@bitwright/traveler";
import { useUnits } from "../frame/settings.ts";
import { kindOfField } from "./kind-of-field.ts";

/** What was taken because nobody gave it, in the units of the screen. */
export function AssumedWords({ assumed }: { readonly assumed: Assumed }) {
  const units = useUnits();
  const { field, text, si, why } = assumed;
  const kind = kindOfField(field);
  // A band is told in words; its one number would hide how wide it is.
  const shown = kind && si !== undefined && !text.includes(" to ") ? formatQuantity(kind, si, units) : text;
  return (
    <span className="assumed" title={why}>
      assumed {shown}
    </span>
  );
}
