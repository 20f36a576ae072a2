import type { QuantityLimits } from "../../quantity/index.ts";
import { bandOf } from "../quantity-field.ts";
import { STRENGTH } from "./ground.ts";

const SHARE: QuantityLimits = { least: "0 %", most: "100 %" };
const RATIO: QuantityLimits = { least: "0", most: "20" };
const FRICTION_ANGLE: QuantityLimits = { least: "0 deg", most: "80 deg" };

/** Properties of a rock that a person may set; each a figure or a band. */
export const rockProperties = {
  ucs: bandOf("strength", "Unconfined compressive strength.", STRENGTH).optional(),
  clastUcs: bandOf("strength", "Strength of the stones in loose or mixed ground.", STRENGTH).optional(),
  specificEnergyRatio: bandOf("ratio", "Specific energy over confined strength.", RATIO).optional(),
  contactStressRatio: bandOf("ratio", "Contact strength under a wear flat over confined strength.", RATIO).optional(),
  faceFriction: bandOf("angle", "Friction angle at the cutter face.", FRICTION_ANGLE).optional(),
  flatFriction: bandOf("ratio", "Friction of a wear flat on the rock.", { least: "0", most: "2" }).optional(),
  kappa: bandOf("ratio", "Growth of the contact length with the depth of cut.", { least: "0", most: "50" }).optional(),
  frictionAngle: bandOf("angle", "Internal friction angle.", FRICTION_ANGLE).optional(),
  density: bandOf("density", "Bulk density.", { least: "500 kg/m3", most: "6000 kg/m3" }).optional(),
  quartzShare: bandOf("share", "Share of quartz.", SHARE).optional(),
  equivalentQuartz: bandOf("share", "Minerals by their grinding hardness against quartz.", SHARE).optional(),
  cerchar: bandOf("ratio", "CERCHAR abrasivity index.", { least: "0", most: "10" }).optional(),
};
