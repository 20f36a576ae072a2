import { commonPractice, derivedFrom, PISTON_PUMP_EFFICIENCY, type PumpPoint, pistonPumpFlow } from "@bitwright/engine";
import type { Quantity, QuantityKind } from "../../quantity/index.ts";
import { present } from "../present.ts";
import type { ResolvedPiston, ResolvedPump } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import { LISTED_PUMPS, type ListedFigure, type ListedPump } from "./gear-lists.ts";
import { classNamed, classOf, type GearQuestion, presetOf, rigClassOf } from "./gear-preset.ts";
import type { ReadingNotes } from "./reading-notes.ts";

type GivenPump = NonNullable<ReadTraveler["inquiry"]["pump"]>;

/** Hose, swivel and kelly of a water-well rig as drill pipe of the same loss [m]: 75 ft; (c) 50 to 100 ft. */
const USUAL_SURFACE_GEAR = 22.86;
/** Rod of a piston that pumps both ways over its liner [-]: 1 1/2 in in a liner of 5 in; (c) no source. */
const USUAL_ROD_SHARE = 0.3;
/** Cylinders up to which pistons usually pump both ways [-]: two, the duplex; (c) no source. */
const MOST_DOUBLE_ACTING = 2;
/** Where on its curve a pump is taken to run when nobody gave a flow [-]: half its largest; (c) no source. */
const USUAL_PLACE_ON_CURVE = 0.5;

/** The mud pump, its gaps filled from its own figures, the preset or the class usual for the hole. */
export function resolvePump({ traveler, holeDiameter }: GearQuestion, notes: ReadingNotes): ResolvedPump | undefined {
  const given: GivenPump = traveler.inquiry.pump ?? {};
  const own = traveler.lists?.pumps ?? [];
  const field = "inquiry.pump.preset";
  const picked = presetOf({ preset: given.preset, own, listed: LISTED_PUMPS, field, what: "pump" }, notes);
  if (!picked) return undefined;
  const entered: GivenPump = { ...picked.own, ...given };
  if (entered.piston && entered.curve) {
    const expected = "give piston for a piston pump or curve for a centrifugal one, not both";
    notes.refuse({ field: "inquiry.pump", got: "piston and curve", expected });
    return undefined;
  }
  // A rig that was picked by its class brings the pump of that class.
  const base: ListedPump =
    picked.listed ?? classNamed(LISTED_PUMPS, rigClassOf(traveler)) ?? classOf(LISTED_PUMPS, holeDiameter);
  const take = (name: "flow" | "pressureRating", kind: QuantityKind, quantity: Quantity | undefined) => {
    if (quantity) return quantity.si;
    const { si, source }: ListedFigure = base[name];
    const why = `the low side of what a ${base.name} gives; time the filling of a tank to have the true flow`;
    return notes.assumeNumber({ field: `inquiry.pump.${name}`, kind, si, why, source });
  };
  const piston = entered.piston && pistonOf(entered.piston, notes);
  const curve = entered.curve && curveOf(entered.curve, notes);
  if ((entered.piston && !piston) || (entered.curve && !curve)) return undefined;
  const throttled = curve && entered.flow ? (true as const) : undefined;
  return {
    ...present({ preset: given.preset, lumpSize: entered.lumpSize?.si, piston, pumpCurve: curve, throttled }),
    name: entered.name ?? base.name,
    flow: entered.flow?.si ?? piston?.flow ?? (curve ? flowOnCurve(curve, notes) : take("flow", "flow", undefined)),
    pressureRating:
      entered.pressureRating?.si ?? (curve ? mostOfCurve(curve, notes) : take("pressureRating", "pressure", undefined)),
    surfaceGear:
      entered.surfaceGear?.si ??
      notes.assumeNumber({
        field: "inquiry.pump.surfaceGear",
        kind: "depth",
        si: USUAL_SURFACE_GEAR,
        why: "hose, swivel and kelly of a water-well rig lose about as much as 50 to 100 ft of drill pipe",
        source: commonPractice(),
      }),
  };
}

/** The fluid end with its gaps filled; nothing where the rod does not fit the liner. */
function pistonOf(given: NonNullable<GivenPump["piston"]>, notes: ReadingNotes): ResolvedPiston | undefined {
  const at = (name: string) => `inquiry.pump.piston.${name}`;
  const linerDiameter = given.liner.si;
  const cylinders = given.cylinders ?? 2;
  if (given.cylinders === undefined) {
    const why = "most pumps of water-well rigs are duplex; each cylinder more adds as much flow as one gives";
    notes.assume({ field: at("cylinders"), text: "2", si: cylinders, unit: "-", why, source: commonPractice() });
  }
  const action = given.action ?? (cylinders <= MOST_DOUBLE_ACTING ? "double" : "single");
  if (given.action === undefined) {
    const why =
      "pistons of one and two cylinders usually pump both ways, of three only one; it halves or doubles the flow";
    notes.assume({ field: at("action"), text: action, why, source: commonPractice() });
  }
  const rodDiameter =
    action === "single"
      ? undefined
      : (given.rod?.si ??
        notes.assumeNumber({
          field: at("rod"),
          kind: "diameter",
          si: USUAL_ROD_SHARE * linerDiameter,
          why: "a rod takes some three tenths of its liner; it costs a few parts in a hundred of the flow",
          source: commonPractice(),
        }));
  if (rodDiameter !== undefined && rodDiameter >= linerDiameter) {
    const expected = `give a rod thinner than the liner of ${given.liner.text}`;
    notes.refuse({ field: at("rod"), got: `"${given.rod?.text}"`, expected });
    return undefined;
  }
  const volumetricEfficiency =
    given.efficiency?.si ??
    notes.assumeNumber({
      field: at("efficiency"),
      kind: "share",
      si: PISTON_PUMP_EFFICIENCY.low,
      why: "the low side of sound valves and packing; time the filling of a tank to have the true one",
      source: commonPractice(),
    });
  const pump = { cylinders, action, linerDiameter, strokeLength: given.stroke.si, ...present({ rodDiameter }) };
  const strokeRate = given.strokes.si;
  const flow = pistonPumpFlow({ pump, strokeRate, volumetricEfficiency });
  return { ...pump, strokeRate, volumetricEfficiency, flow };
}

/** The curve by rising flow; nothing where its pressure rises, or two points stand at one flow. */
function curveOf(given: NonNullable<GivenPump["curve"]>, notes: ReadingNotes): PumpPoint[] | undefined {
  const points = [...given].sort((a, b) => a.flow.si - b.flow.si);
  const wrong = points.findIndex((point, k) => {
    const before = points[k - 1];
    return before && (point.flow.si <= before.flow.si || point.pressure.si > before.pressure.si);
  });
  if (wrong > 0) {
    const expected = "give points whose pressure falls, or stays, as the flow grows, each flow once";
    const { flow, pressure } = points[wrong];
    notes.refuse({ field: "inquiry.pump.curve", got: `${pressure.text} at ${flow.text}`, expected });
    return undefined;
  }
  return points.map(({ flow, pressure }) => ({ flow: flow.si, pressure: pressure.si }));
}

function flowOnCurve(curve: readonly PumpPoint[], notes: ReadingNotes): number {
  return notes.assumeNumber({
    field: "inquiry.pump.flow",
    kind: "flow",
    si: USUAL_PLACE_ON_CURVE * curve[curve.length - 1].flow,
    why: "half the largest flow of the pump's curve; the flow it really gives in this hole is worked out and said",
    source: commonPractice(),
  });
}

function mostOfCurve(curve: readonly PumpPoint[], notes: ReadingNotes): number {
  return notes.assumeNumber({
    field: "inquiry.pump.pressureRating",
    kind: "pressure",
    si: curve[0].pressure,
    why: "the most of the pump's curve: it cannot give more",
    source: derivedFrom("inquiry.pump.curve"),
  });
}
