import type { DrillingFluid } from "../fluid/index.ts";
import { band, mapBand } from "../quantity/index.ts";
import { type AnnulusSectionsInput, annulusSections } from "./annulus-sections.ts";
import type { CleaningState, SlowestAnnulus } from "./circuit-result.ts";
import { conduitSpeed } from "./conduit.ts";
import { CUTTINGS_SHARE_LIMIT, rateCeilingByCleaning, transportRatio } from "./cuttings-load.ts";
import { type Chip, type SlipForm, slipBand } from "./slip-band.ts";

/** A liquid that comes up around a string and carries chips. */
export interface ReturnInput extends AnnulusSectionsInput {
  readonly fluid: DrillingFluid;
  /** Pump flow [m³/s]. */
  readonly flow: number;
  readonly chip: Chip;
  /** Diameter that the bit drills [m]. */
  readonly holeDiameter: number;
  /** The form of slip that the middle goes by; the mean of Moore and Chien where none is named. */
  readonly slipForm?: SlipForm;
  /** Largest share of cuttings allowed; that of practice where not given [-]. */
  readonly shareLimit?: number;
}

/** How well a return cleans where it is slowest. */
export interface ReturnCleaning extends Pick<CleaningState, "slip" | "transportRatio" | "rateCeiling"> {
  readonly slowestAnnulus: SlowestAnnulus;
}

/**
 * Slip, transport and rate ceiling in the annulus in which the return rises slowest: it decides for the whole hole.
 *
 * @throws RangeError when an input is out of range or a pipe does not fit its hole
 * @source (d) relations of slip, transport and cuttings load, each naming its own source
 */
export function returnCleaning(input: ReturnInput): ReturnCleaning {
  const { flow, chip, fluid, holeDiameter, slipForm, shareLimit = CUTTINGS_SHARE_LIMIT } = input;
  const slowestAnnulus = annulusSections(input)
    .map(({ name, annulus }): SlowestAnnulus => ({ name, annulus, speed: conduitSpeed({ flow, conduit: annulus }) }))
    .reduce((least, one) => (one.speed < least.speed ? one : least));
  const { annulus, speed: upholeSpeed } = slowestAnnulus;
  const slip = slipBand({ chip, fluid, annulus, flow, ...(slipForm ? { form: slipForm } : {}) });
  const ratio = mapBand(slip.speed, (slipSpeed) => transportRatio({ slipSpeed, upholeSpeed }));
  const ceilingAt = (risen: number) => rateCeilingByCleaning({ shareLimit, holeDiameter, transportRatio: risen, flow });
  return {
    slowestAnnulus,
    slip,
    transportRatio: ratio,
    rateCeiling: band(ceilingAt(ratio.low), ceilingAt(ratio.mid), ceilingAt(ratio.high)),
  };
}
