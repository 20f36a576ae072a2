import * as z from "zod";
import type { QuantityLimits } from "../../quantity/index.ts";
import { section } from "../plain-field.ts";
import { quantity } from "../quantity-field.ts";

const PRICE: QuantityLimits = { least: "0", most: "1000000000" };
const SPENT: QuantityLimits = { least: "0 s", most: "30 d" };

/** What things cost. */
export const pricesSchema = section(
  "What things cost, in the currency of the job; a candidate bit is judged by it. Prices left out are usual ones in US dollars.",
  {
    rig: quantity("price of time", "Rig with its crew, fuel left out.", { least: "0 /h" }).optional(),
    fuel: quantity("price of volume", "Fuel.", { least: "0 /gal" }).optional(),
    fuelFlow: quantity("fuel flow", "Fuel that rig and pump burn at the hole.", {
      least: "0 gal/h",
      most: "1000 gal/h",
    }).optional(),
    trip: quantity("duration", "In and out of a hole and what else it takes beside drilling.", SPENT).optional(),
    connection: quantity("duration", "Adding one joint of pipe.", SPENT).optional(),
    other: quantity("price of length", "Mud, water, chemicals and the like.", { least: "0 /ft" }).optional(),
    steelBody: quantity("price", "A steel body without its cutters.", PRICE).optional(),
    matrixBody: quantity("price", "A matrix body without its cutters.", PRICE).optional(),
    cutters: z
      .record(z.string(), quantity("price", "One cutter.", PRICE))
      .optional()
      .meta({ description: "One cutter each, by its trade code; a size without a price costs as the nearest one." }),
    pocket: quantity("price", "Labour of seating one cutter, braze and flux with it.", PRICE).optional(),
    hardfacing: quantity("price", "Hardfacing and protection of the gauge, the whole bit.", PRICE).optional(),
  },
);
