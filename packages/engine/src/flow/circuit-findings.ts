import { commonPractice, derivedFrom, enteredBy, type Finding, readIn, recalledFrom } from "../quantity/index.ts";
import { annulusSections } from "./annulus-sections.ts";
import type { CircuitInput } from "./circuit-input.ts";
import type { CircuitFigures } from "./circuit-result.ts";
import { COOLING_FLOW_FLOOR } from "./cooling-flow.ts";
import { CUTTINGS_SHARE_LIMIT, LEAST_TRANSPORT_RATIO } from "./cuttings-load.ts";
import {
  BALLING_POWER_PER_HOLE_AREA,
  BALLING_SLOT_SHARE,
  LARGEST_LUMP_OVER_PORT,
  LEAST_PORT_DIAMETER,
  LEAST_PORT_DIAMETER_UNSCREENED,
  LEAST_SLOT_SHARE_IN_CLAY,
  LEAST_SLOT_SHARE_IN_ROCK,
  PORT_SPEED_RANGE,
  SLOT_SPEED_RATIO,
} from "./flow-limits.ts";
import { isAbove, isBelow, remark } from "./flow-remark.ts";
import { operatingFindings } from "./operating-findings.ts";
import { PREFERRED_UPHOLE_SPEED, UPHOLE_NEEDS } from "./uphole-need.ts";

/**
 * What an engineer would remark on a circuit; messages leave figures to `value` and `limit`, which carry their unit.
 *
 * @source (c) limits of common practice, each at its constant
 */
export function circuitFindings(input: CircuitInput, figures: CircuitFigures): Finding[] {
  return [
    ...coolingFindings(input, figures),
    ...risingFindings(input, figures),
    ...pressureFindings(input, figures),
    ...operatingFindings(input, figures.operatingPoint),
    ...portFindings(input),
    ...portSpeedFindings(figures),
    ...slotFindings(input, figures),
    ...jointFindings(input),
  ];
}

/** Chips wider than what a joint leaves between itself and the wall, both sides together, cannot pass it anywhere. */
function jointFindings(input: CircuitInput): Finding[] {
  return annulusSections(input).flatMap(({ joints }) => {
    if (!joints) return [];
    const gap = joints.annulus.holeDiameter - joints.annulus.pipeDiameter;
    if (!isBelow(gap, input.chip.size)) return [];
    const message =
      "The chips are wider than all that the joints of the pipe leave open: they jam there. Run pipe with slimmer joints, or drill slower for smaller chips.";
    const held = {
      value: gap,
      limit: input.chip.size,
      unit: "m",
      source: derivedFrom("sizes of hole, joint and chip"),
    };
    return [remark("chips-jam-at-joints", "stop", joints.name, message, held)];
  });
}

function coolingFindings(input: CircuitInput, { coolingFlow }: CircuitFigures): Finding[] {
  const held = { value: input.pump.flow, unit: "m³/s", source: commonPractice() };
  if (isBelow(held.value, COOLING_FLOW_FLOOR)) {
    const message =
      "Too little flow to cool the diamond. Do not turn the bit on bottom until the pump delivers more than this floor; heat ruins cutters within seconds.";
    return [remark("cooling-floor", "stop", "pump flow", message, { ...held, limit: COOLING_FLOW_FLOOR })];
  }
  if (isBelow(held.value, coolingFlow.low)) {
    const entered = input.limits?.coolingFlow !== undefined;
    const asked = entered
      ? "the least that was set for cooling"
      : "what practice gives a diamond bit of this diameter for cooling";
    const message = `Flow is below ${asked}. Raise it, or ease weight and speed and watch for heat.`;
    const source = entered ? enteredBy("limits") : held.source;
    return [remark("cooling-practice", "caution", "pump flow", message, { ...held, limit: coolingFlow.low, source })];
  }
  return [];
}

function risingFindings(input: CircuitInput, { slowestAnnulus, cleaning }: CircuitFigures): Finding[] {
  const least = input.limits?.upholeSpeed;
  const need = least === undefined ? UPHOLE_NEEDS[input.medium] : { least, low: least, source: enteredBy("limits") };
  const shareSet = input.limits?.cuttingsShare;
  const shareLimit = shareSet ?? CUTTINGS_SHARE_LIMIT;
  const { name, speed } = slowestAnnulus;
  const findings: Finding[] = [];
  const held = { value: speed, unit: "m/s", source: need.source };
  if (isBelow(speed, need.least)) {
    const message =
      "The return rises too slowly to clean the hole. More flow, larger pipe or a thicker fluid is needed.";
    findings.push(remark("uphole-least", "stop", name, message, { ...held, limit: need.least }));
  } else if (isBelow(speed, need.low)) {
    const message =
      "The return rises slower than practice asks of this fluid. Drill slower, circulate before each connection, or thicken the fluid.";
    findings.push(remark("uphole-practice", "caution", name, message, { ...held, limit: need.low }));
  } else if (isBelow(speed, PREFERRED_UPHOLE_SPEED)) {
    const message = "The return rises fast enough for this fluid but below the speed usually preferred.";
    const source = readIn("Drilling Technology in Nontechnical Language (book)");
    findings.push(
      remark("uphole-preferred", "note", name, message, { ...held, limit: PREFERRED_UPHOLE_SPEED, source }),
    );
  }
  const ratio = { value: cleaning.transportRatio.mid, limit: LEAST_TRANSPORT_RATIO, unit: "-" };
  if (ratio.value <= 0) {
    const message =
      "Chips of this size fall as fast as the fluid rises: they do not come up. Raise flow or thicken the fluid.";
    const source = recalledFrom("Moore 1974 and Chien 1971");
    findings.push(remark("chips-do-not-rise", "stop", name, message, { ...ratio, limit: 0, source }));
  } else if (isBelow(ratio.value, LEAST_TRANSPORT_RATIO)) {
    const message = "Chips of this size rise at less than half the speed of the fluid and gather in the hole.";
    findings.push(remark("transport-ratio", "caution", name, message, { ...ratio, source: commonPractice() }));
  }
  if (cleaning.cuttingsShare !== undefined && isAbove(cleaning.cuttingsShare, shareLimit)) {
    const message =
      "At this rate the return carries more cuttings than it should. Hold the rate to the ceiling that the pump can clean, or raise flow.";
    const source = shareSet === undefined ? recalledFrom("Pigott 1941") : enteredBy("limits");
    const load = { value: cleaning.cuttingsShare, limit: shareLimit, unit: "-", source };
    findings.push(remark("cuttings-load", "caution", name, message, load));
  }
  return findings;
}

function pressureFindings({ pump }: CircuitInput, { pumpPressure }: CircuitFigures): Finding[] {
  const { pressureRating, curve } = pump;
  // A centrifugal pump cannot be pushed over its curve: it gives less, which is said of its flow.
  if (curve || pressureRating === undefined || !isAbove(pumpPressure, pressureRating)) return [];
  const message =
    "The circuit needs more pressure than the pump may run at all day. Larger ports, a larger bore of pipe or less flow brings it down.";
  const held = { value: pumpPressure, limit: pressureRating, unit: "Pa", source: commonPractice() };
  return [remark("pump-pressure", "stop", "pump", message, held)];
}

function portFindings({ pump, ports }: CircuitInput): Finding[] {
  const smallest = Math.min(...ports.diameters);
  const where = `port ${ports.diameters.indexOf(smallest) + 1}`;
  const findings: Finding[] = [];
  const source = commonPractice();
  const least = pump.screened === false ? LEAST_PORT_DIAMETER_UNSCREENED : LEAST_PORT_DIAMETER;
  if (isBelow(smallest, least)) {
    const message =
      "A port this small plugs. Drill fewer and larger ports, screen the suction, and circulate before touching bottom.";
    findings.push(
      remark("port-small", "caution", where, message, { value: smallest, limit: least, unit: "m", source }),
    );
  }
  const lump = pump.largestLump;
  if (lump === undefined) return findings;
  const held = { value: lump, unit: "m", source };
  if (!isBelow(lump, smallest)) {
    const message =
      "Lumps that pass the pump do not pass this port: it will plug. Screen the suction or enlarge the port.";
    findings.push(remark("port-lump", "stop", where, message, { ...held, limit: smallest }));
  } else if (isAbove(lump, LARGEST_LUMP_OVER_PORT * smallest)) {
    const message =
      "Lumps that pass the pump are more than half this port; two together bridge it. Use a finer screen.";
    findings.push(
      remark("port-screen", "caution", where, message, { ...held, limit: LARGEST_LUMP_OVER_PORT * smallest }),
    );
  }
  return findings;
}

function portSpeedFindings({ ports }: CircuitFigures): Finding[] {
  const held = { value: ports.speed, unit: "m/s", source: commonPractice() };
  const { low, mid, high } = PORT_SPEED_RANGE;
  if (isAbove(ports.speed, high)) {
    const message = "At this port speed sand in the fluid cuts steel. Enlarge the ports, or line them with carbide.";
    return [remark("port-speed-high", "caution", "ports", message, { ...held, limit: high })];
  }
  if (isAbove(ports.speed, mid)) {
    const message =
      "Port speed is near the erosion limit; keep the fluid free of sand and look at the ports after the run.";
    return [remark("port-speed-high", "note", "ports", message, { ...held, limit: mid })];
  }
  if (isBelow(ports.speed, low)) {
    const message =
      "Port speed and pressure drop are small: the jets hardly sweep the face, and a plugged port will not show on the gauge.";
    return [remark("port-speed-low", "note", "ports", message, { ...held, limit: low })];
  }
  return [];
}

function slotFindings(input: CircuitInput, figures: CircuitFigures): Finding[] {
  const { slots } = figures;
  const findings = ballingFindings(input, figures);
  if (!slots) return findings;
  const source = commonPractice();
  const least = input.stickyGround === true ? LEAST_SLOT_SHARE_IN_CLAY : LEAST_SLOT_SHARE_IN_ROCK;
  if (isBelow(slots.areaShare, least)) {
    const message =
      "The slots between the wings are small for this ground; they pack and the ports plug. Fewer wings or deeper slots.";
    const held = { value: slots.areaShare, limit: least, unit: "-", source };
    findings.push(remark("slot-area", "caution", "slots", message, held));
  }
  if (isAbove(slots.speedRatio, SLOT_SPEED_RATIO.high)) {
    const message =
      "The return is much faster in the slots than above the bit: slots are narrow for this flow and will wash.";
    const held = { value: slots.speedRatio, limit: SLOT_SPEED_RATIO.high, unit: "-", source };
    findings.push(remark("slot-speed", "note", "slots", message, held));
  }
  return findings;
}

/** Balling asks for sticky ground, little power and small slots together; with slots not known it can only be noted. */
function ballingFindings({ stickyGround }: CircuitInput, { slots, ports }: CircuitFigures): Finding[] {
  if (stickyGround !== true || !isBelow(ports.powerPerHoleArea, BALLING_POWER_PER_HOLE_AREA)) return [];
  const held = {
    value: ports.powerPerHoleArea,
    limit: BALLING_POWER_PER_HOLE_AREA,
    unit: "W/m²",
    source: commonPractice(),
  };
  if (!slots) {
    const message =
      "Sticky ground and little hydraulic power: the bit balls unless its slots are wide. Check their area.";
    return [remark("balling", "note", "bit face", message, held)];
  }
  if (!isBelow(slots.areaShare, BALLING_SLOT_SHARE)) return [];
  const message =
    "Sticky ground, small slots and little hydraulic power: the bit is likely to ball. Less weight, more flow, smaller ports or wider slots.";
  return [remark("balling", "caution", "bit face", message, held)];
}
