import { SLIP_FORMS } from "@bitwright/engine";
import * as z from "zod";
import { choice, section } from "../plain-field.ts";
import { quantity } from "../quantity-field.ts";
import { RATE, SPEED_TO_WORK_WITH, weightField } from "./inquiry.ts";
import { rockProperties } from "./rock.ts";

/** What a person sets over the program. */
export const overridesSchema = section("Values set over those of the program; every result says that it used them.", {
  rocks: z
    .record(z.string(), section("Properties of one rock.", rockProperties))
    .optional()
    .meta({ description: "Properties of rocks, by the rock's id." }),
  weight: weightField("Weight on the bit to work with.").optional(),
  rotarySpeed: quantity("rotary speed", "Rotary speed to work with.", SPEED_TO_WORK_WITH).optional(),
  flow: quantity("flow", "Flow to work with.", { least: "1 gpm", most: "5000 gpm" }).optional(),
  slip: choice(
    "The published form of the fall of chips that cleaning goes by; the mean of Moore and Chien where none is named.",
    SLIP_FORMS,
  ).optional(),
  limits: section("Limits in place of the program's.", {
    coolingFlow: quantity("flow", "Least flow that cools the bit.", { least: "0 gpm", most: "5000 gpm" }).optional(),
    upholeSpeed: quantity("uphole speed", "Least uphole speed that cleans.", {
      least: "0 ft/min",
      most: "10000 ft/min",
    }).optional(),
    cuttingsShare: quantity("share", "Largest share of cuttings in the returns.", {
      least: "0.1 %",
      most: "50 %",
    }).optional(),
    rate: quantity("rate", "Largest rate allowed.", RATE).optional(),
    torque: quantity("torque", "Largest torque allowed at the bit.", {
      least: "1 ft-lbf",
      most: "200000 ft-lbf",
    }).optional(),
  }).optional(),
});
