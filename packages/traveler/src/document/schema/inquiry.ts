import * as z from "zod";
import type { QuantityLimits } from "../../quantity/index.ts";
import { choice, section, text } from "../plain-field.ts";
import { quantity, quantityOfKinds } from "../quantity-field.ts";
import type { PresentToolKind } from "../resolved-traveler.ts";
import { fluidSchema } from "./fluid.ts";
import { pumpSchema } from "./pump.ts";
import { compressorSchema, rigSchema } from "./rig.ts";
import { collarsSchema, pipeSchema } from "./string.ts";

/** Depths that a small rig can have to do with. */
export const DEPTH: QuantityLimits = { least: "0 ft", most: "20000 ft" };
/** Holes that a drag bit is made for, and some room. */
export const HOLE_DIAMETER: QuantityLimits = { least: "0.5 in", most: "60 in" };
export const RATE: QuantityLimits = { least: "0.01 ft/h", most: "2000 ft/h" };
export const SPEED_TO_WORK_WITH: QuantityLimits = { least: "1 rpm", most: "2000 rpm" };

const TOOL_KINDS = ["hammer", "roller", "drag blade", "PDC", "auger", "other"] as const satisfies PresentToolKind[];

/** Weight on the bit, as a force or for each length of the bit's diameter. */
export const weightField = (description: string) =>
  quantityOfKinds(
    [
      { kind: "force", limits: { least: "10 lbf", most: "500 klbf" } },
      { kind: "force per length", limits: { least: "1 lb/in", most: "20000 lb/in" } },
    ],
    `${description} Pipe weight is part of it. A force, or a force for each length of bit diameter.`,
  );

const holeSchema = section("One hole: a length of the job drilled at one diameter.", {
  name: text("What the hole is called.", "open hole").optional(),
  diameter: quantity("diameter", "Nominal diameter.", HOLE_DIAMETER),
  from: quantity("depth", "Depth where it begins; the end of the hole before it where not given.", DEPTH).optional(),
  to: quantity("depth", "Depth where it ends; the depth of the job where not given.", DEPTH).optional(),
  casingBore: quantity(
    "diameter",
    "Bore of the casing set in it before the next hole is drilled.",
    HOLE_DIAMETER,
  ).optional(),
});

/** What the driller needs and with what. */
export const inquirySchema = section("What the driller needs, and the gear it is to be done with.", {
  holes: z.array(holeSchema).min(1).meta({ description: "The holes of the job, from the top down." }),
  washouts: z
    .array(
      section("A stretch that has washed out wider than the hole was drilled.", {
        from: quantity("depth", "Depth where it begins.", DEPTH),
        to: quantity("depth", "Depth where it ends.", DEPTH),
        diameter: quantity("diameter", "Diameter that it has washed out to.", HOLE_DIAMETER),
      }),
    )
    .optional()
    .meta({
      description: "Stretches of the bit's hole that have washed out, from the top down; the return is slow in them.",
    }),
  bitHole: text("Name of the hole that this bit drills; the deepest where not given.", "open hole").optional(),
  depth: quantity("depth", "Depth of the finished job.", DEPTH).optional(),
  rig: rigSchema.optional(),
  pump: pumpSchema.optional(),
  compressor: compressorSchema.optional(),
  pipe: pipeSchema.optional(),
  collars: collarsSchema.optional(),
  fluid: fluidSchema.optional(),
  waterLevel: quantity("depth", "Depth of the standing ground water.", DEPTH).optional(),
  presentTool: section("What the driller uses now.", {
    kind: choice("Kind of tool.", TOOL_KINDS),
    rate: quantity("rate", "Rate it makes.", RATE).optional(),
    notes: text("What is said of it.").optional(),
  }).optional(),
  targets: section("What the driller means to run, where they said so.", {
    weight: weightField("Weight on the bit.").optional(),
    rotarySpeed: quantity("rotary speed", "Rotary speed.", SPEED_TO_WORK_WITH).optional(),
    rate: quantity("rate", "Rate hoped for.", RATE).optional(),
  }).optional(),
  altitude: quantity("depth", "Height of the site above the sea.", { least: "-500 m", most: "6000 m" }).optional(),
});
