import {
  type Band,
  band,
  circuit,
  commonPractice,
  type Finding,
  given,
  recalledFrom,
  type Working,
} from "@bitwright/engine";
import type { ResolvedFluid } from "../document/resolved-traveler.ts";

/** How far a circuit may be off where its mud was only timed through the funnel. */
export interface FunnelSpread {
  /** Pump pressure over the band of the viscosity [Pa]. */
  readonly pumpPressure: Band;
  /** Rate that the flow cleans over the same band [m/s]. */
  readonly rateCeiling: Band;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** The circuit at both sides of what a funnel tells; nothing where the mud was read better. */
export function funnelSpread(
  way: Parameters<typeof circuit>[0],
  { funnelViscosity }: Pick<ResolvedFluid, "funnelViscosity">,
): FunnelSpread | undefined {
  if (!funnelViscosity) return undefined;
  const { density } = way.fluid;
  const [thin, middle, thick] = [funnelViscosity.low, funnelViscosity.mid, funnelViscosity.high].map((viscosity) =>
    circuit({ ...way, fluid: { model: "newtonian", density, viscosity } }),
  );
  const over = (figure: (of: typeof thin) => number): Band => {
    const all = [thin, middle, thick].map(figure);
    return band(Math.min(...all), figure(middle), Math.max(...all));
  };
  const pumpPressure = over((of) => of.pumpPressure);
  const source = recalledFrom("Pitt 2000, SPE Drilling & Completion 15:1; its width is common practice");
  return {
    pumpPressure,
    rateCeiling: over((of) => of.cleaning.rateCeiling.mid),
    findings: [
      {
        code: "flow.funnel-only",
        severity: "note",
        where: "fluid",
        message:
          "The mud was timed through a funnel, which tells its viscosity to half or double only, and pressure and cleaning with it. Read a viscometer before either is close.",
        value: funnelViscosity.mid,
        unit: "Pa·s",
        source: commonPractice(),
      },
    ],
    working: [
      {
        name: "viscosity by the funnel",
        relation: "μ = (ρ/ρ_w)(t - 25 s) mPa·s, half to double",
        inputs: [
          given("ρ", "density of the mud", density, "kg/m³", "fluid"),
          given("μ_low", "half of it", funnelViscosity.low, "Pa·s", "common practice, no source"),
          given("μ_high", "double of it", funnelViscosity.high, "Pa·s", "common practice, no source"),
        ],
        value: funnelViscosity.mid,
        unit: "Pa·s",
        source,
      },
      ...(["low", "high"] as const).map(
        (side): Working => ({
          name: `pump pressure, viscosity by the funnel ${side === "low" ? "halved" : "doubled"}`,
          relation: "the circuit with this viscosity",
          inputs: [given("μ", "viscosity", funnelViscosity[side], "Pa·s", "viscosity by the funnel")],
          value: side === "low" ? thin.pumpPressure : thick.pumpPressure,
          unit: "Pa",
          source,
        }),
      ),
    ],
  };
}
