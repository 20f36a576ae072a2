import * as z from "zod";
import type { QuantityLimits } from "../../quantity/index.ts";
import { section, text } from "../plain-field.ts";
import { bandOf, quantity, quantityOfKinds } from "../quantity-field.ts";
import { DEPTH } from "./inquiry.ts";

/** Strengths from soft mud to the hardest rock known. */
export const STRENGTH: QuantityLimits = { least: "0 psi", most: "100 ksi" };

const bedSchema = section("One bed.", {
  top: quantity("depth", "Depth of its top; the bottom of the bed above where not given.", DEPTH).optional(),
  bottom: quantity("depth", "Depth of its bottom; or give its thickness.", DEPTH).optional(),
  thickness: quantity("depth", "Thickness, in place of the bottom.", DEPTH).optional(),
  phrase: text("The driller's own words.", "brown sandy clay w/ gravel").optional(),
  rock: text("Id of a rock of the table or of the shop's own.", "limestone").optional(),
  strength: bandOf(
    "strength",
    "Unconfined strength where it is known better than the rock's name tells.",
    STRENGTH,
  ).optional(),
  strengthFrom: section("A log reading to work the strength from.", {
    correlation: text("Id of the correlation, which goes with one kind of rock."),
    reading: quantityOfKinds(
      [
        { kind: "transit time", limits: { least: "20 us/ft", most: "400 us/ft" } },
        { kind: "share", limits: { least: "0 %", most: "70 %" } },
        { kind: "strength", limits: { least: "0.01 GPa", most: "200 GPa" } },
        { kind: "speed", limits: { least: "300 m/s", most: "9000 m/s" } },
      ],
      "The reading the correlation asks for: sonic transit time, porosity, Young's modulus or wave speed.",
    ),
    clayShare: quantity("share", "Share of clay, where the correlation asks for it.", {
      least: "0 %",
      most: "100 %",
    }).optional(),
    density: quantity("density", "Bulk density, where the correlation asks for it.", {
      least: "500 kg/m3",
      most: "6000 kg/m3",
    }).optional(),
  }).optional(),
  notes: text("Anything else said of the bed.").optional(),
});

/** What the bit will meet. */
export const groundSchema = section("What the bit will meet.", {
  beds: z.array(bedSchema).min(1).meta({ description: "The beds from the top down, without overlaps." }),
  source: text("Where the column came from.", "driller's log of the next well").optional(),
});
