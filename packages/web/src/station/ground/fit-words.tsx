import { type BedFit, VERDICT_WORDS } from "@bitwright/engine";
import { Sign } from "../../figure/sign.tsx";

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
