import * as z from "zod";
import { choice, count, section, text } from "../plain-field.ts";
import { quantity } from "../quantity-field.ts";

const ACTIONS = ["single", "double"] as const;

const pistonSchema = section("A piston pump by its fluid end and its strokes, in place of a flow or to check one by.", {
  liner: quantity("diameter", "Bore of the liners.", { least: "1 in", most: "12 in" }),
  stroke: quantity("diameter", "Way of a piston from end to end.", { least: "1 in", most: "24 in" }),
  strokes: quantity("stroke rate", "Strokes of one piston in a minute, out and back counted as one.", {
    least: "1 spm",
    most: "1000 spm",
  }),
  cylinders: count("How many cylinders; two where not given.", { least: 1, most: 6 }).optional(),
  action: choice(
    "Whether a piston pumps on its way out only or both ways; both ways up to two cylinders where not given.",
    ACTIONS,
  ).optional(),
  rod: quantity("diameter", "Diameter of the rod of a piston that pumps both ways.", {
    least: "0.2 in",
    most: "6 in",
  }).optional(),
  efficiency: quantity("share", "Share of the swept volume that is delivered.", {
    least: "30 %",
    most: "100 %",
  }).optional(),
});

const curveSchema = z
  .array(
    section("One point of the curve.", {
      flow: quantity("flow", "Flow there.", { least: "0 gpm", most: "20000 gpm" }),
      pressure: quantity("pressure", "Pressure that the pump gives at this flow.", {
        least: "0 psi",
        most: "10000 psi",
      }),
    }),
  )
  .min(2)
  .meta({
    description: "Curve of a centrifugal pump at its speed, from little flow to much; straight between points.",
  });

/** What a mud pump can do, each of which a person may give. */
export const pumpMeasures = {
  flow: quantity("flow", "Flow that reaches the bit.", { least: "1 gpm", most: "5000 gpm" }).optional(),
  pressureRating: quantity("pressure", "Pressure that the pump can hold all day.", {
    least: "1 psi",
    most: "10000 psi",
  }).optional(),
  piston: pistonSchema.optional(),
  curve: curveSchema.optional(),
  lumpSize: quantity("length", "Largest lump that suction and valves let through.", {
    least: "0 in",
    most: "6 in",
  }).optional(),
  surfaceGear: quantity("depth", "Hose, swivel and surface pipe as a length of the drill pipe with the same loss.", {
    least: "0 ft",
    most: "1000 ft",
  }).optional(),
};

/** The mud pump. */
export const pumpSchema = section("The mud pump. A preset fills what is not given here.", {
  preset: text("Id of a pump of the list or of the shop's own.", "duplex-5x6").optional(),
  name: text("What the pump is called.").optional(),
  ...pumpMeasures,
});
