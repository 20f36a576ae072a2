import { type Reason, SOURCE_KIND_WORDS } from "@bitwright/engine";
import { formatQuantity } from "@bitwright/traveler";
import { kindOfUnit } from "../../figure/kind-of-unit.ts";
import { useUnits } from "../../frame/settings.ts";

/** Why the advice says what it says, with the figure it was decided on and whose rule it is. */
export function ReasonLine({ reason }: { readonly reason: Reason }) {
  const units = useUnits();
  const { sentence, rule, value, limit, unit = "-", source } = reason;
  const shown = (si: number) => {
    const kind = kindOfUnit(unit, si);
    return kind ? formatQuantity(kind, si, units, { figures: 3 }) : String(Number(si.toPrecision(3)));
  };
  const figure =
    value === undefined ? "" : limit === undefined ? ` ${shown(value)}.` : ` ${shown(value)} against ${shown(limit)}.`;
  const cite = source.cite === SOURCE_KIND_WORDS[source.kind] ? "" : `, ${source.cite}`;
  return (
    <li>
      {sentence}
      {figure}{" "}
      <span className="soft note">
        ({rule}; {SOURCE_KIND_WORDS[source.kind]}
        {cite})
      </span>
    </li>
  );
}

/** What tells one reason from another in a list: a rule may be held against several limits. */
export function reasonKey({ rule, sentence, value, limit }: Reason): string {
  return `${rule} ${sentence} ${value} ${limit}`;
}
