import { fieldFacts, type QuantityKind } from "@bitwright/traveler";
import { pathOf } from "../job/path.ts";

/** The kind of quantity that a field of the document holds; absent where it holds none or one of several. */
export function kindOfField(place: string): QuantityKind | undefined {
  const takes = fieldFacts(pathOf(place))?.takes;
  return takes?.length === 1 ? takes[0]?.kind : undefined;
}
