import * as z from "zod";
import type { QuantityKind, QuantityLimits } from "../quantity/index.ts";

/** One way in which a field may be given. */
export interface QuantityChoice {
  readonly kind: QuantityKind;
  readonly limits?: QuantityLimits;
}

/** What the quantity fields of the schema take, for whoever asks a person for one. */
export const quantityFacts = z.registry<{ readonly takes: readonly QuantityChoice[] }>();
