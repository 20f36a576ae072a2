import type { PadProtection } from "@bitwright/engine";
import * as z from "zod";
import type { QuantityLimits } from "../../quantity/index.ts";
import { choice, count, flag, section, text } from "../plain-field.ts";
import { quantity, rakeField } from "../quantity-field.ts";
import type { BitBody, ProfileShapeName } from "../resolved-traveler.ts";
import { CHAMFER_ANGLE, CHAMFER_WIDTH } from "./chamfer.ts";
import { HOLE_DIAMETER } from "./inquiry.ts";
import { measuredSchema } from "./measured.ts";

const BODIES = ["matrix", "steel"] as const satisfies BitBody[];
const PROTECTIONS = ["hardfacing", "carbide", "diamond"] as const satisfies PadProtection[];

const portsSchema = section("Round ports of one size.", {
  count: count("How many.", { least: 1, most: 24 }),
  diameter: quantity("diameter", "Diameter of one.", { least: "1/8 in", most: "6 in" }),
});

const SHAPES = [
  "flat",
  "step",
  "short parabolic",
  "medium parabolic",
  "long parabolic",
] as const satisfies ProfileShapeName[];

const CURVE: QuantityLimits = { least: "0.01 in", most: "20 in" };

const profileSchema = section("The profile by a few measures; those left out are usual for the shape.", {
  shape: choice("Shape of the profile.", SHAPES).optional(),
  coneAngle: quantity("angle", "Angle of the cone from the level.", { least: "0 deg", most: "60 deg" }).optional(),
  noseRadiusShare: quantity("share", "Radius of the nose from the axis as a share of the bit radius.", {
    least: "0 %",
    most: "100 %",
  }).optional(),
  noseCurve: quantity("length", "Radius of the curve over the nose.", CURVE).optional(),
  shoulderCurve: quantity("length", "Radius of the curve from the face into the gauge.", CURVE).optional(),
  height: quantity("length", "Height from the lowest point to the gauge.", { least: "0 in", most: "40 in" }).optional(),
  steps: count("Steps between centre and gauge, of the step shape.", { least: 1, most: 10 }).optional(),
  stepHeight: quantity("length", "Height of one step.", CURVE).optional(),
});

const bodyFields = {
  body: choice("What the body is made of.", BODIES).optional(),
  ports: portsSchema.optional(),
  gaugeLength: quantity("length", "Length of the gauge pads.", { least: "0 in", most: "24 in" }).optional(),
  gaugeProtection: choice("What the gauge pads are set or faced with.", PROTECTIONS).optional(),
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
      anyOf: [{ type: "string", enum: [...SHAPES] }, { type: "object" }],
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
