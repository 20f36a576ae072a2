import * as z from "zod";
import { choice, count, flag, section, text } from "../plain-field.ts";
import { quantity, rakeField } from "../quantity-field.ts";
import type { BitBody } from "../resolved-traveler.ts";
import { CHAMFER_ANGLE, CHAMFER_WIDTH } from "./chamfer.ts";
import { HOLE_DIAMETER } from "./inquiry.ts";
import { measuredSchema } from "./measured.ts";

const BODIES = ["matrix", "steel"] as const satisfies BitBody[];

const portsSchema = section("Round ports of one size.", {
  count: count("How many.", { least: 1, most: 24 }),
  diameter: quantity("diameter", "Diameter of one.", { least: "1/8 in", most: "6 in" }),
});

const profileSchema = section("The profile by a few measures.", {
  shape: text("Name of the shape.", "flat").optional(),
  coneAngle: quantity("angle", "Angle of the cone from the level.", { least: "0 deg", most: "60 deg" }).optional(),
  noseRadiusShare: quantity("share", "Radius of the nose from the axis as a share of the bit radius.", {
    least: "0 %",
    most: "100 %",
  }).optional(),
  height: quantity("length", "Height from the lowest point to the gauge.", { least: "0 in", most: "40 in" }).optional(),
});

const bodyFields = {
  body: choice("What the body is made of.", BODIES).optional(),
  ports: portsSchema.optional(),
  gaugeLength: quantity("length", "Length of the gauge pads.", { least: "0 in", most: "24 in" }).optional(),
  leached: flag("Whether the diamond is leached.").optional(),
};

const specSchema = section("A bit to be laid out. Whatever is left out is filled by the advice.", {
  diameter: quantity("diameter", "Diameter; that of the hole where not given.", HOLE_DIAMETER).optional(),
  cutter: text("Code of the face cutters.", "1308").optional(),
  chamferAngle: quantity("angle", "Chamfer angle from the plane of the diamond face.", CHAMFER_ANGLE).optional(),
  chamferWidth: quantity("length", "Chamfer width along the face.", CHAMFER_WIDTH).optional(),
  backRake: rakeField("Back rake: one angle, or one at the centre and one at the gauge.").optional(),
  sideRake: rakeField("Side rake: one angle, or one at the centre and one at the gauge.").optional(),
  wings: count("Number of wings.", { least: 1, most: 16 }).optional(),
  cuttersPerWing: count("Face cutters on each wing.", { least: 1, most: 40 }).optional(),
  profile: z
    .preprocess((given) => (typeof given === "string" ? { shape: given } : given), profileSchema)
    .meta({
      description: "The profile: the name of a shape, or a few measures.",
      anyOf: [{ type: "string" }, { type: "object" }],
    })
    .optional(),
  sweep: quantity("angle", "How far a wing's outermost cutter trails its innermost.", {
    least: "-90 deg",
    most: "90 deg",
  }).optional(),
  ...bodyFields,
});

/** The bit: to be laid out, or as measured. */
export const bitSchema = section(
  "The bit: `spec` for one to be laid out, or `measured` for one that lies on the bench.",
  {
    spec: specSchema.optional(),
    measured: measuredSchema(bodyFields).optional(),
  },
);
