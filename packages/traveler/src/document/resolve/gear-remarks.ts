import { derivedFrom, enteredBy, type Finding, pistonPumpDisplacement } from "@bitwright/engine";
import { formatQuantity, type QuantityKind, siUnit } from "../../quantity/index.ts";
import type { ResolvedPump, ResolvedTraveler } from "../resolved-traveler.ts";

type Job = Pick<ResolvedTraveler, "inquiry" | "overrides">;

/** What is asked of the gear and is more than it can do: remarks, because the driller may know better. */
export function gearRemarks({ inquiry, overrides }: Job): Finding[] {
  const { rig, pump, targets, holes } = inquiry;
  const speed = (field: string, asked: number | undefined) =>
    over({ field, kind: "rotary speed", asked, most: rig.rotarySpeedMax, gear: `the rig's fastest (${rig.name})` });
  const slow = [
    { field: "inquiry.targets.rotarySpeed", asked: targets.rotarySpeed },
    { field: "overrides.rotarySpeed", asked: overrides.rotarySpeed },
  ].flatMap(({ field, asked }) => (asked === undefined || asked >= rig.rotarySpeedMin ? [] : [{ field, asked }]));
  return [
    ...speed("inquiry.targets.rotarySpeed", targets.rotarySpeed),
    ...speed("overrides.rotarySpeed", overrides.rotarySpeed),
    ...slow.map(({ field, asked }) => ({
      code: "speed-under-rig",
      severity: "caution" as const,
      where: field,
      message: `${shownAs("rotary speed", asked)} is asked for and the rig's slowest steady speed is ${shownAs("rotary speed", rig.rotarySpeedMin)}.`,
      value: asked,
      limit: rig.rotarySpeedMin,
      unit: siUnit("rotary speed"),
      source: enteredBy("inquiry.rig"),
    })),
    ...over({
      field: "overrides.flow",
      kind: "flow",
      asked: overrides.flow,
      most: pump.flow,
      gear: `what the pump gives (${pump.name})`,
    }),
    ...pistonRemarks(pump),
    ...holes.flatMap((hole, at) => {
      const above = holes[at - 1];
      if (!above || above.to > hole.from || hole.diameter < above.diameter) return [];
      return [
        {
          code: "hole-not-smaller-than-above",
          severity: "caution" as const,
          where: hole.path,
          message: `A bit of ${hole.diameterAsTyped} does not pass the hole of ${above.diameterAsTyped} above it. Check the two diameters.`,
          value: hole.diameter,
          limit: above.diameter,
          unit: "m",
          source: derivedFrom("inquiry.holes"),
        },
      ];
    }),
  ];
}

/** How far a flow that was given may stand from that of the strokes before it is remarked on [-]; (c) no source. */
const FLOW_APART = 0.1;

/** A flow that was given beside liner and strokes: the flow stands, and where they do not agree it is said. */
function pistonRemarks({ piston, flow }: ResolvedPump): Finding[] {
  if (!piston || Math.abs(flow / piston.flow - 1) <= FLOW_APART) return [];
  const [given, reckoned] = [shownAs("flow", flow), shownAs("flow", piston.flow)];
  const worn = "Valves, packing or liner leak, or strokes were miscounted; time the filling of a tank.";
  const swept = pistonPumpDisplacement(piston) * piston.strokeRate;
  const why = flow < piston.flow ? worn : flow > swept ? `More than the pistons sweep, ${shownAs("flow", swept)}.` : "";
  return [
    {
      code: "pump-flow-disagrees",
      severity: "caution",
      where: "inquiry.pump.flow",
      message:
        `${given} is given and liner, stroke and strokes make ${reckoned}; the flow as given is worked with. ${why}`.trim(),
      value: flow,
      limit: piston.flow,
      unit: siUnit("flow"),
      source: derivedFrom("inquiry.pump.piston"),
    },
  ];
}

interface Asked {
  readonly field: string;
  readonly kind: QuantityKind;
  /** What is asked for [coherent SI unit of the kind]. */
  readonly asked: number | undefined;
  /** The most the gear gives [coherent SI unit of the kind]. */
  readonly most: number;
  readonly gear: string;
}

const shownAs = (kind: QuantityKind, si: number) => formatQuantity(kind, si, "field");

function over({ field, kind, asked, most, gear }: Asked): Finding[] {
  if (asked === undefined || asked <= most * (1 + 1e-9)) return [];
  return [
    {
      code: `${kind.replace(/ /g, "-")}-over-gear`,
      severity: "caution",
      where: field,
      message: `${shownAs(kind, asked)} is asked for and ${gear} is ${shownAs(kind, most)}. Ask for less or name the gear that gives it.`,
      value: asked,
      limit: most,
      unit: siUnit(kind),
      source: enteredBy("inquiry"),
    },
  ];
}
