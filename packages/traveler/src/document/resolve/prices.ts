import {
  commonPractice,
  type PriceSheet,
  type Source,
  USUAL_CONNECTION_TIME,
  USUAL_CUTTER_PRICES,
  USUAL_FUEL_FLOW,
  USUAL_FUEL_PRICE,
  USUAL_HARDFACING_PRICE,
  USUAL_POCKET_PRICE,
  USUAL_RIG_PRICE,
  USUAL_TRIP_TIME,
  usualBodyPrice,
} from "@bitwright/engine";
import type { Quantity, QuantityKind } from "../../quantity/index.ts";
import { oneOf } from "../nearest-names.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { KnownCutters } from "./cutters.ts";
import type { ReadingNotes } from "./reading-notes.ts";

interface PricesQuestion {
  readonly traveler: ReadTraveler;
  readonly cutters: KnownCutters;
  /** Diameter of the bit [m]. */
  readonly bitDiameter: number;
}

type GivenPrices = NonNullable<ReadTraveler["prices"]>;
/** A price that is one figure. */
type PriceField = Exclude<keyof GivenPrices & string, "cutters">;

const PLANNED = commonPractice("a planning value, no source");
/** Faces nearer than this are of one size [m]. */
const SAME_FACE = 0.1e-3;

/** The price sheet in SI, its gaps filled with usual prices. */
export function resolvePrices({ traveler, cutters, bitDiameter }: PricesQuestion, notes: ReadingNotes): PriceSheet {
  const given: GivenPrices = traveler.prices ?? {};
  remarkCurrency(traveler, notes);
  const take = (name: PriceField, kind: QuantityKind, si: number, why: string, source: Source = commonPractice()) =>
    (given[name] as Quantity | undefined)?.si ?? notes.assumeNumber({ field: `prices.${name}`, kind, si, why, source });
  const body = (material: "steel" | "matrix") => usualBodyPrice({ holeDiameter: bitDiameter, material });
  return {
    rigPrice: take("rig", "price of time", USUAL_RIG_PRICE, "a rig with its crew takes 200 to 500 US dollars an hour"),
    fuelPrice: take("fuel", "price of volume", USUAL_FUEL_PRICE, "a round figure in US dollars", PLANNED),
    fuelFlow: take("fuelFlow", "fuel flow", USUAL_FUEL_FLOW, "a mud rig burns 4 to 9 gal/h"),
    tripTime: take("trip", "duration", USUAL_TRIP_TIME, "a round figure for a hole of a few hundred feet", PLANNED),
    connectionTime: take("connection", "duration", USUAL_CONNECTION_TIME, "a round figure", PLANNED),
    otherPrice: take("other", "price of length", 0, "mud and the like are the same for every bit", PLANNED),
    bodyPrices: {
      steel: take("steelBody", "price", body("steel"), "what the usual price of a bit leaves for it", PLANNED),
      matrix: take("matrixBody", "price", body("matrix"), "half as much again as one of steel", PLANNED),
    },
    cutterPrices: cutterPrices(given.cutters ?? {}, cutters, notes),
    pocketPrice: take("pocket", "price", USUAL_POCKET_PRICE, "5 to 20 US dollars a cutter"),
    hardfacingPrice: take("hardfacing", "price", USUAL_HARDFACING_PRICE, "50 to 250 US dollars a bit"),
  };
}

/** Prices filled in are US dollars: of no use among those of another currency. */
function remarkCurrency({ job, prices }: ReadTraveler, notes: ReadingNotes): void {
  const { currency } = job;
  if (currency === undefined || /^(usd|us dollars?|\$)$/i.test(currency) || !prices) return;
  notes.remark({
    code: "prices-of-two-currencies",
    severity: "caution",
    where: "prices",
    message: `Prices are in ${currency}; those that the traveler leaves out are filled in as US dollars. Give every price.`,
    source: commonPractice(),
  });
}

/** The cutters that were given a price, and the usual ones for the sizes that were not. */
function cutterPrices(
  given: Readonly<Record<string, Quantity>>,
  cutters: KnownCutters,
  notes: ReadingNotes,
): PriceSheet["cutterPrices"] {
  const priced = Object.entries(given).flatMap(([code, price]) => {
    const cutter = cutters.find(code);
    if (cutter) return [{ faceDiameter: cutter.faceDiameter, cutterPrice: price.si }];
    const wrong = `got "${code}", which is no cutter of the list`;
    notes.refuse({ field: "prices.cutters", got: `"${code}"`, wrong, expected: oneOf(code, cutters.codes) });
    return [];
  });
  const left = USUAL_CUTTER_PRICES.filter(
    (usual) => !priced.some(({ faceDiameter }) => Math.abs(faceDiameter - usual.faceDiameter) < SAME_FACE),
  );
  const assumed = left.map(({ faceDiameter, cutterPrice }) => {
    const code = cutters.codes.find((each) => cutters.find(each)?.faceDiameter === faceDiameter) ?? "";
    const si = notes.assumeNumber({
      field: `prices.cutters.${code}`,
      kind: "price",
      si: cutterPrice,
      why: "lists of the trade disagree by a factor of ten; this is their middle in US dollars",
      source: commonPractice(),
    });
    return { faceDiameter, cutterPrice: si };
  });
  return [...priced, ...assumed].sort((a, b) => a.faceDiameter - b.faceDiameter);
}
