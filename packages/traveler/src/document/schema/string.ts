import * as z from "zod";
import type { QuantityLimits } from "../../quantity/index.ts";
import { section, text } from "../plain-field.ts";
import { quantity } from "../quantity-field.ts";

const PIPE_DIAMETER: QuantityLimits = { least: "1/2 in", most: "20 in" };
const PIPE_BORE: QuantityLimits = { least: "1/16 in", most: "20 in" };
const PIPE_WEIGHT: QuantityLimits = { least: "0.1 lb/ft", most: "500 lb/ft" };

/** The measures of a drill pipe, each of which a person may give. */
export const pipeMeasures = {
  outsideDiameter: quantity("diameter", "Outside diameter of the tube.", PIPE_DIAMETER).optional(),
  bore: quantity("diameter", "Bore of the tube.", PIPE_BORE).optional(),
  weight: quantity("linear mass", "Weight of a length with its joints, in air.", PIPE_WEIGHT).optional(),
  jointLength: quantity("depth", "Length of one joint.", { least: "1 ft", most: "100 ft" }).optional(),
  yieldStrength: quantity("strength", "Yield strength of the tube's steel.", {
    least: "20000 psi",
    most: "200000 psi",
  }).optional(),
  subDiameter: quantity(
    "diameter",
    "Outside diameter of the bit sub, or of the box above the bit's pin; the make-up torque goes by it.",
    PIPE_DIAMETER,
  ).optional(),
  joint: section("The thick ends of a joint; taken as wide as the tube where not given.", {
    outsideDiameter: quantity("diameter", "Outside diameter over pin and box.", PIPE_DIAMETER),
    bore: quantity("diameter", "Bore through them; that of the tube where not given.", PIPE_BORE).optional(),
    length: quantity("length", "Length of pin and box together, of one joint.", { least: "1 in", most: "10 ft" }),
  }).optional(),
  connection: text("Connection of the pipe or of the bit's pin: an id of the list or a name.", "2-3/8 REG").optional(),
};

/** The drill pipe. */
export const pipeSchema = section("The drill pipe. A preset fills what is not given here.", {
  preset: text("Id of a pipe of the list or of the shop's own.", "3-1/2-13.30").optional(),
  name: text("What the pipe is called.").optional(),
  ...pipeMeasures,
});

/** The collars, from the bit upward. */
export const collarsSchema = z
  .array(
    section("Collars of one size.", {
      outsideDiameter: quantity("diameter", "Outside diameter.", PIPE_DIAMETER),
      bore: quantity("diameter", "Bore.", PIPE_BORE),
      length: quantity("depth", "Length of the piece or of the stack.", { least: "0.1 ft", most: "5000 ft" }),
      weight: quantity(
        "linear mass",
        "Weight of a length in air; of solid steel where not given.",
        PIPE_WEIGHT,
      ).optional(),
    }),
  )
  .meta({ description: "Collars from the bit upward; leave out where none are run." });
