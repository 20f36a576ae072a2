import { choice, section } from "../plain-field.ts";
import { quantity } from "../quantity-field.ts";
import type { FluidKind } from "../resolved-traveler.ts";

const FLUID_KINDS = ["water", "bentonite", "polymer", "foam", "mist", "air"] as const satisfies FluidKind[];

/** Laws of flow that dial readings can be read by. */
const FLOW_LAWS = ["Bingham", "power law", "Herschel-Bulkley"] as const;

const reading = (speed: number) =>
  quantity("ratio", `Dial reading of the viscometer at ${speed} turns a minute.`, { least: "0", most: "400" });

/** What the hole is drilled with. */
export const fluidSchema = section("What the hole is drilled with.", {
  kind: choice("Kind of fluid.", FLUID_KINDS).optional(),
  density: quantity("density", "Density.", { least: "0.5 kg/m3", most: "25 ppg" }).optional(),
  plasticViscosity: quantity("viscosity", "Plastic viscosity; of water and thin polymer the plain viscosity.", {
    least: "0.1 cP",
    most: "1000 cP",
  }).optional(),
  yieldPoint: quantity("yield point", "Yield point.", { least: "0 lbf/100ft2", most: "200 lbf/100ft2" }).optional(),
  dialReadings: section("Readings of the viscometer, in place of plastic viscosity and yield point.", {
    at600: reading(600),
    at300: reading(300),
    at6: reading(6).optional(),
    at3: reading(3).optional(),
  }).optional(),
  law: choice(
    "The law of flow that dial readings are read by; the fullest that they allow where not given.",
    FLOW_LAWS,
  ).optional(),
  funnelTime: quantity(
    "duration",
    "Time for a US quart of the mud to run out of the funnel, in place of viscometer readings; a poor measure.",
    { least: "25.5 s", most: "300 s" },
  ).optional(),
  injection: quantity("flow", "Water and soap injected with the air, for mist and foam.", {
    least: "0.1 gpm",
    most: "200 gpm",
  }).optional(),
  temperature: quantity("temperature", "Temperature of the fluid going down; of the air at the site.", {
    least: "-40 °C",
    most: "100 °C",
  }).optional(),
});
