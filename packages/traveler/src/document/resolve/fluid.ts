import {
  binghamFromDial,
  commonPractice,
  derivedFrom,
  freshWater,
  funnelViscosity,
  readIn,
  recalledFrom,
  type Source,
} from "@bitwright/engine";
import type { QuantityKind } from "../../quantity/index.ts";
import { present } from "../present.ts";
import type { FluidKind, ResolvedDialReadings, ResolvedFluid } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { ReadingNotes } from "./reading-notes.ts";

/** Usual properties of a fluid of one kind. */
interface UsualFluid {
  /** Density [kg/m³]. */
  readonly density: number;
  /** Plastic viscosity [Pa s]. */
  readonly plasticViscosity: number;
  /** Yield point [Pa]. */
  readonly yieldPoint: number;
  readonly source: Source;
}

/** Where water freezes [K]. */
const FREEZING = 273.15;
/** Water injected into mist and foam where nobody gave it [m³/s]: 10 gal/min. */
const USUAL_INJECTION_FLOW = (10 * 231 * 0.0254 ** 3) / 60;

/** Ground water and mix water of temperate places [K]: 15 °C. */
const USUAL_TEMPERATURE = 288.15;

const MUD_CUSTOM = commonPractice("a usual water-well mud, no source");
const GAS_CUSTOM = commonPractice("rounded figure for the surface, no source; the air relations work out their own");

/** Usual muds in SI; 8.6 ppg, 8 cP and 8 lbf/100 ft² for the bentonite, 8.4 ppg, 6 cP and 6 lbf/100 ft² for polymer. */
function usualFluid(kind: FluidKind, temperature: number): UsualFluid {
  switch (kind) {
    case "water": {
      const { density, viscosity } = freshWater(temperature);
      const source = recalledFrom("Kell 1975 for density, IAPWS SR6-08 for viscosity of fresh water");
      return { density, plasticViscosity: viscosity, yieldPoint: 0, source };
    }
    case "bentonite":
      return { density: 1030.5, plasticViscosity: 8e-3, yieldPoint: 3.8304, source: MUD_CUSTOM };
    case "polymer":
      return { density: 1006.5, plasticViscosity: 6e-3, yieldPoint: 2.8728, source: MUD_CUSTOM };
    case "foam":
      return { density: 60, plasticViscosity: 0.1, yieldPoint: 3, source: GAS_CUSTOM };
    case "mist":
    case "air":
      return { density: 1.225, plasticViscosity: 1.8e-5, yieldPoint: 0, source: GAS_CUSTOM };
  }
}

/** The fluid, its gaps filled by what is usual for its kind; nothing where the readings given contradict each other. */
export function resolveFluid({ inquiry }: ReadTraveler, notes: ReadingNotes): ResolvedFluid | undefined {
  const given = inquiry.fluid ?? {};
  const kind = given.kind ?? assumedKind(inquiry.compressor !== undefined && inquiry.pump === undefined, notes);
  const temperature =
    given.temperature?.si ??
    notes.assumeNumber({
      field: "inquiry.fluid.temperature",
      kind: "temperature",
      si: USUAL_TEMPERATURE,
      why: "usual ground and mix water; it moves viscosity and the heat of the cutters a little",
      source: commonPractice(),
    });
  const injection = injectionOf({ given, kind }, notes);
  if (injection === "refused" || !isLiquidThere({ given, kind, temperature }, notes)) return undefined;
  const usual = usualFluid(kind, temperature);
  const take = (name: string, quantityKind: QuantityKind, entered: number | undefined, si: number, source: Source) =>
    entered ??
    notes.assumeNumber({
      field: `inquiry.fluid.${name}`,
      kind: quantityKind,
      si,
      why: `usual for ${kind}; weigh and time the mud to have the true one`,
      source,
    });
  const density = take("density", "density", given.density?.si, usual.density, usual.source);
  const dialReadings = dialReadingsOf(given.dialReadings);
  if (given.funnelTime) {
    if (!["water", "bentonite", "polymer"].includes(kind)) {
      const expected = "leave it out: a funnel times a liquid";
      notes.refuse({ field: "inquiry.fluid.funnelTime", got: `"${given.funnelTime.text}" of ${kind}`, expected });
      return undefined;
    }
    if (contradicts(given, ["plasticViscosity", "yieldPoint", "dialReadings"], "a funnel time", notes))
      return undefined;
    const byFunnel = funnelViscosity({ density, funnelTime: given.funnelTime.si });
    return { kind, density, plasticViscosity: byFunnel.mid, yieldPoint: 0, funnelViscosity: byFunnel, temperature };
  }
  if (dialReadings) {
    if (!(dialReadings.at300 > 0 && dialReadings.at600 > dialReadings.at300)) {
      notes.refuse({
        field: "inquiry.fluid.dialReadings",
        got: `${dialReadings.at600} at 600 and ${dialReadings.at300} at 300`,
        expected: "give readings that rise with the speed, for example 24 at 600 and 16 at 300",
      });
      return undefined;
    }
    if (contradicts(given, ["plasticViscosity", "yieldPoint"], "dial readings", notes)) return undefined;
    const { plasticViscosity, yieldPoint } = binghamFromDial({ density, ...dialReadings });
    if (given.law === "Herschel-Bulkley" && (dialReadings.at6 === undefined || dialReadings.at3 === undefined)) {
      const expected = "give the readings at 6 and at 3 as well, or another law";
      notes.refuse({ field: "inquiry.fluid.law", got: `"${given.law}" by two readings`, expected });
      return undefined;
    }
    return { kind, density, plasticViscosity, yieldPoint, dialReadings, ...present({ law: given.law }), temperature };
  }
  if (given.law) {
    const expected = "give dial readings, or leave it out: plastic viscosity and yield point are of the Bingham law";
    notes.refuse({ field: "inquiry.fluid.law", got: `"${given.law}" without dial readings`, expected });
    return undefined;
  }
  const plasticViscosity = take(
    "plasticViscosity",
    "viscosity",
    given.plasticViscosity?.si,
    usual.plasticViscosity,
    usual.source,
  );
  const yieldPoint =
    kind === "water" && given.yieldPoint === undefined
      ? 0
      : take("yieldPoint", "yield point", given.yieldPoint?.si, usual.yieldPoint, usual.source);
  return { kind, density, plasticViscosity, yieldPoint, ...present({ injection }), temperature };
}

interface KindOfFluid {
  readonly given: GivenFluid;
  readonly kind: FluidKind;
}

/** Water injected with the air; nothing where the fluid is neither mist nor foam. */
function injectionOf({ given, kind }: KindOfFluid, notes: ReadingNotes): number | undefined | "refused" {
  if (kind === "mist" || kind === "foam") {
    return (
      given.injection?.si ??
      notes.assumeNumber({
        field: "inquiry.fluid.injection",
        kind: "flow",
        si: USUAL_INJECTION_FLOW,
        why: "air rigs inject 6 to 20 gal/min into mist and foam; time the filling of a bucket to have the true one",
        source: readIn("USGS TWRI 2-F1, second-hand"),
      })
    );
  }
  if (!given.injection) return undefined;
  const got = `"${given.injection.text}" into ${kind}`;
  notes.refuse({ field: "inquiry.fluid.injection", got, expected: "give mist or foam as kind, or leave it out" });
  return "refused";
}

/** Whether a fluid that is pumped flows at its temperature; air may be as cold as a site gets. */
function isLiquidThere(
  { given, kind, temperature }: KindOfFluid & { readonly temperature: number },
  notes: ReadingNotes,
): boolean {
  if (temperature >= FREEZING || kind === "air" || kind === "mist" || kind === "foam") return true;
  notes.refuse({
    field: "inquiry.fluid.temperature",
    got: `"${given.temperature?.text}" of ${kind}`,
    expected: "give a temperature from 0 °C up",
  });
  return false;
}

type GivenFluid = NonNullable<ReadTraveler["inquiry"]["fluid"]>;

/** Refuses what tells the same as a better or a later reading: of two that differ nobody could say which was meant. */
function contradicts(
  given: GivenFluid,
  names: readonly ("plasticViscosity" | "yieldPoint" | "dialReadings")[],
  beside: string,
  notes: ReadingNotes,
): boolean {
  const name = names.find((each) => given[each] !== undefined);
  if (name === undefined) return false;
  const entered = given[name];
  notes.refuse({
    field: `inquiry.fluid.${name}`,
    got: `${entered && "text" in entered ? `"${entered.text}"` : "readings"} beside ${beside}`,
    expected: "give plastic viscosity and yield point, or dial readings, or a funnel time, no two of them",
  });
  return true;
}

function assumedKind(air: boolean, notes: ReadingNotes): FluidKind {
  const kind = air ? "air" : "bentonite";
  notes.assume({
    field: "inquiry.fluid.kind",
    text: kind,
    why: air
      ? "a compressor is named and no pump"
      : "a light bentonite mud is the usual fluid for a drag bit in beds that cave or swell",
    source: air ? derivedFrom("inquiry.compressor") : commonPractice(),
  });
  return kind;
}

type GivenReadings = NonNullable<GivenFluid["dialReadings"]>;

function dialReadingsOf(given: GivenReadings | undefined): ResolvedDialReadings | undefined {
  if (!given) return undefined;
  return {
    at600: given.at600.si,
    at300: given.at300.si,
    ...(given.at6 ? { at6: given.at6.si } : {}),
    ...(given.at3 ? { at3: given.at3.si } : {}),
  };
}
