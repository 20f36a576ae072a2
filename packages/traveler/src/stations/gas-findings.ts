import { commonPractice, derivedFrom, type Finding, type FoamNeed, readIn, STANDARD_GRAVITY } from "@bitwright/engine";
import type { ResolvedTraveler } from "../document/resolved-traveler.ts";

/** Whether the compressor lifts the chips, and whether it lifts the water that stands in the hole. */
export function compressorFindings({ inquiry }: ResolvedTraveler, leastAirFlow: number): Finding[] {
  const { bitHole, compressor, fluid, waterLevel } = inquiry;
  const short = !compressor || compressor.flow < leastAirFlow;
  const enough: Finding = {
    code: short ? "air-too-little" : "air-enough",
    severity: short ? "stop" : "note",
    where: "flow",
    message: !compressor
      ? "No compressor is named; it must give at least this much free air to lift the chips from the end of this hole."
      : short
        ? "The compressor does not lift the chips from the end of this hole. More air, a smaller annulus, or foam."
        : "The compressor lifts the chips from the end of this hole.",
    ...(compressor ? { value: compressor.flow } : {}),
    limit: leastAirFlow,
    unit: "m³/s",
    source:
      fluid.kind === "foam"
        ? derivedFrom("column of the foam, lifting speed of Lyons, Guo & Seidel 2001")
        : readIn("Lyons, Guo & Seidel 2001, Air and Gas Drilling Manual, after Angel 1957"),
  };
  if (!compressor || waterLevel === undefined || waterLevel >= bitHole.to) return [enough];
  const standing = WATER_DENSITY * STANDARD_GRAVITY * (bitHole.to - waterLevel);
  if (compressor.pressure >= standing) return [enough];
  return [
    enough,
    {
      code: "water-over-compressor",
      severity: "caution",
      where: "flow",
      message:
        "The water that stands over the end of this hole presses harder than the compressor: with the bit on bottom it cannot be blown out at once. Blow the hole empty in steps on the way in, or use a booster.",
      value: compressor.pressure,
      limit: standing,
      unit: "Pa",
      source: derivedFrom("depth of the hole below the standing water"),
    },
  ];
}

/** Whether the water injected lies within what practice injects. */
export function injectionFindings(injection: number): Finding[] {
  const within = injection >= USUAL_INJECTION.low && injection <= USUAL_INJECTION.high;
  if (within) return [];
  const little = injection < USUAL_INJECTION.low;
  return [
    {
      code: little ? "injection-little" : "injection-much",
      severity: "note",
      where: "inquiry.fluid.injection",
      message: little
        ? "Less water is injected than air rigs usually inject into mist and foam: dust and mud rings may form."
        : "More water is injected than air rigs usually inject into mist and foam: the air has to lift all of it.",
      value: injection,
      limit: little ? USUAL_INJECTION.low : USUAL_INJECTION.high,
      unit: "m³/s",
      source: readIn("USGS TWRI 2-F1, second-hand"),
    },
  ];
}

/** What a foam bears before it is wet at the bottom or breaks up on the way. */
export function foamFindings({ bottomQuality, topQuality }: FoamNeed): Finding[] {
  const said: Finding = {
    code: "foam-by-its-column",
    severity: "note",
    where: "flow",
    message:
      "Foam is reckoned by the weight of its column alone, without friction: the air read here is on the low side, by a fifth and more in deep or narrow holes. Use soap of half a part to two parts in a hundred, and go by what comes up.",
    source: derivedFrom("column of gas and liquid; soap by common practice"),
  };
  const held = { where: "flow", unit: "-", source: commonPractice() } as const;
  return [
    said,
    ...(bottomQuality < LEAST_QUALITY
      ? [
          {
            ...held,
            code: "foam-wet",
            severity: "caution" as const,
            message:
              "At the bottom the foam is so wet that it hardly carries chips. Inject less water, or give more air.",
            value: bottomQuality,
            limit: LEAST_QUALITY,
          },
        ]
      : []),
    ...(topQuality > MOST_QUALITY
      ? [
          {
            ...held,
            code: "foam-dry",
            severity: "note" as const,
            message:
              "On the way up the foam grows so dry that it breaks into mist. Inject more water, or hold some pressure at the surface.",
            value: topQuality,
            limit: MOST_QUALITY,
          },
        ]
      : []),
  ];
}

/** Density of the water that stands in a hole [kg/m³]; (c) fresh, no source. */
const WATER_DENSITY = 1000;
/** A US gallon a minute [m³/s]. Exact by definition. */
const GPM = (231 * 0.0254 ** 3) / 60;

/**
 * Water injected into mist and foam on air rigs, 6 to 20 gal/min [m³/s].
 *
 * @source (a) USGS TWRI 2-F1, second-hand
 */
const USUAL_INJECTION = { low: 6 * GPM, high: 20 * GPM } as const;

/** Share of gas below which a foam is a wet slug [-]; (c) common practice, no source. */
const LEAST_QUALITY = 0.55;
/** Share of gas above which a foam breaks into mist [-]; (c) common practice, no source. */
const MOST_QUALITY = 0.98;
