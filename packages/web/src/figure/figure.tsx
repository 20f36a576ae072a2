import type { Working } from "@bitwright/engine";
import { formatQuantity, type QuantityKind } from "@bitwright/traveler";
import { Button } from "react-aria-components";
import { useUnits } from "../frame/settings.ts";
import { showWorking } from "./open-working.ts";

/** Figures that a person reads [-]. */
const FIGURES = 3;

/** A figure in the units of the screen. A tap opens how it was reached. */
export function Figure(props: {
  readonly kind: QuantityKind;
  /** [coherent SI unit of the kind] */
  readonly si: number;
  readonly working?: Working | undefined;
  /** Unit to keep to, in a column. */
  readonly unit?: string;
  readonly figures?: number;
}) {
  const { kind, si, working, unit, figures = kind === "diameter" ? 5 : FIGURES } = props;
  const units = useUnits();
  const text = Number.isFinite(si) ? formatQuantity(kind, si, units, { figures, ...(unit ? { unit } : {}) }) : "–";
  if (!working) return <span>{text}</span>;
  return <OpenedFigure text={text} working={working} />;
}

function OpenedFigure({ text, working }: { readonly text: string; readonly working: Working }) {
  return (
    <Button
      className="open-figure"
      aria-label={`${text}, show how it was reached`}
      onPress={() => showWorking(working)}
    >
      {text}
    </Button>
  );
}
