import * as z from "zod";
import type { QuantityLimits } from "../../quantity/index.ts";
import { choice, section, text } from "../plain-field.ts";
import { quantity } from "../quantity-field.ts";

const ROTARY_SPEED: QuantityLimits = { least: "1 rpm", most: "2000 rpm" };
const FORCE: QuantityLimits = { least: "0 lbf", most: "1000 klbf" };

/** What a rig can do, each of which a person may give. */
export const rigMeasures = {
  pullDown: quantity("force", "Largest push of the feed on the string.", FORCE).optional(),
  hoist: quantity("force", "Largest pull of the hoist (pullback).", FORCE).optional(),
  topHeadWeight: quantity("force", "Weight of the top head or kelly that rests on the string.", FORCE).optional(),
  torque: quantity("torque", "Largest torque of the rotary.", { least: "10 ft-lbf", most: "200000 ft-lbf" }).optional(),
  rotarySpeedMin: quantity("rotary speed", "Slowest steady rotary speed.", {
    least: "0 rpm",
    most: "2000 rpm",
  }).optional(),
  rotarySpeedMax: quantity("rotary speed", "Fastest rotary speed.", ROTARY_SPEED).optional(),
  rotarySpeeds: z
    .array(quantity("rotary speed", "One speed of the rotary.", ROTARY_SPEED))
    .min(1)
    .optional()
    .meta({ description: "The fixed speeds of a geared rotary, in place of slowest and fastest." }),
  power: quantity("power", "Most power at the rotary.", { least: "0.1 hp", most: "5000 hp" }).optional(),
  enginePower: quantity("power", "Rated power of the engine that drives rotary, feed, hoist and mud pump.", {
    least: "1 hp",
    most: "5000 hp",
  }).optional(),
  fuelBurn: quantity(
    "fuel flow",
    "What is burnt at the hole, all engines together, over drilling and handling; worked out from the load where not given.",
    { least: "0.01 gal/h", most: "1000 gal/h" },
  ).optional(),
  gaugeForceFactor: quantity("force per pressure", "Force on the string for each unit of feed pressure on the gauge.", {
    least: "0.01 lbf/psi",
    most: "1000 lbf/psi",
  }).optional(),
  holdBackGaugeForceFactor: quantity(
    "force per pressure",
    "The same while the rig holds back, where its gauge then works on another area.",
    { least: "0.01 lbf/psi", most: "1000 lbf/psi" },
  ).optional(),
  feedGaugeZero: quantity("pressure", "Reading of the feed gauge that only just moves the empty feed.", {
    least: "0 psi",
    most: "5000 psi",
  }).optional(),
  drag: quantity("force", "Drag of the string on the wall of the hole while feeding.", FORCE).optional(),
};

/** The rig. */
export const rigSchema = section("The rig. A preset fills what is not given here.", {
  preset: text("Id of a rig of the list or of the shop's own.", "medium").optional(),
  name: text("What the rig is called.").optional(),
  ...rigMeasures,
});

/** The compressor. */
export const compressorSchema = section("The compressor; leave out where the rig has none.", {
  flow: quantity("air flow", "Delivery as free air.", { least: "1 cfm", most: "10000 cfm" }),
  pressure: quantity("pressure", "Delivery pressure on the gauge.", { least: "1 psi", most: "2000 psi" }),
  engine: choice("What drives it: an engine of its own or that of the rig; its own where not given.", [
    "own",
    "rig",
  ]).optional(),
  enginePower: quantity("power", "Rated power of an engine of its own.", { least: "1 hp", most: "5000 hp" }).optional(),
});
