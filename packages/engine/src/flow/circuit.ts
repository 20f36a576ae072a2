import { exactBand, gravestFirst, requirePositive } from "../quantity/index.ts";
import { annulusSections } from "./annulus-sections.ts";
import { circuitFindings } from "./circuit-findings.ts";
import type { BitPorts, CircuitInput } from "./circuit-input.ts";
import type {
  Circuit,
  CircuitFigures,
  CircuitPart,
  CleaningState,
  PortState,
  SectionLoss,
  SlotState,
} from "./circuit-result.ts";
import { circuitWorking } from "./circuit-working.ts";
import { type Conduit, conduitSpeed, hydraulicDiameter } from "./conduit.ts";
import { conduitLoss } from "./conduit-loss.ts";
import { coolingFlow } from "./cooling-flow.ts";
import { cuttingsShare } from "./cuttings-load.ts";
import { hydraulicPower, hydraulicPowerPerHoleArea } from "./hydraulic-power.ts";
import { impactForce } from "./impact-force.ts";
import { portArea } from "./port-area.ts";
import { portPressureDrop } from "./port-pressure-drop.ts";
import { portSpeed } from "./port-speed.ts";
import { type ReturnCleaning, returnCleaning } from "./return-cleaning.ts";

/**
 * The whole way of a liquid from the pump through pipe, bit and annulus back to the pit: what it loses, how fast it
 * moves, what it lifts, and what an engineer would remark on.
 *
 * Steady flow, vertical hole, pipe in the middle, cuttings not counted in the weight of the return.
 *
 * @throws RangeError when an input is out of range or a pipe does not fit its hole
 * @source (d) sum of the section losses and the ports; each relation names its own source in the workings
 */
export function circuit(input: CircuitInput): Circuit {
  const figures = circuitFigures(input);
  return {
    ...figures,
    findings: gravestFirst(circuitFindings(input, figures)),
    working: circuitWorking(input, figures),
  };
}

function circuitFigures(input: CircuitInput): CircuitFigures {
  const { flow } = input.pump;
  requirePositive({ flow, holeDiameter: input.holeDiameter });
  const losses = sectionLosses(input);
  const ports = portState(input, input.ports);
  const pumpPressure = ports.pressureDrop + losses.reduce((sum, loss) => sum + loss.pressureDrop, 0);
  const shareLimit = input.limits?.cuttingsShare;
  const returned = returnCleaning({ ...input, flow, ...(shareLimit === undefined ? {} : { shareLimit }) });
  const slots = slotState(input);
  return {
    losses,
    ports,
    pumpPressure,
    shareAtPorts: ports.pressureDrop / pumpPressure,
    slowestAnnulus: returned.slowestAnnulus,
    cleaning: cleaningState(input, returned),
    ...(slots ? { slots } : {}),
    coolingFlow:
      input.limits?.coolingFlow === undefined ? coolingFlow(input.holeDiameter) : exactBand(input.limits.coolingFlow),
  };
}

function sectionLosses(input: CircuitInput): SectionLoss[] {
  const { fluid, roughness, surfaceGear } = input;
  const loss = (name: string, part: CircuitPart, conduit: Conduit, length: number): SectionLoss => {
    const state = conduitLoss({
      fluid,
      conduit,
      flow: input.pump.flow,
      length,
      ...(roughness === undefined ? {} : { roughness }),
    });
    return { name, part, length, hydraulicDiameter: hydraulicDiameter(conduit), ...state };
  };
  const gear = surfaceGear
    ? [loss("surface gear", "surface gear", { shape: "pipe", bore: surfaceGear.bore }, surfaceGear.equivalentLength)]
    : [];
  const bores = input.string.map((run) => loss(run.name, "pipe", { shape: "pipe", bore: run.bore }, run.length));
  const annuli = annulusSections(input).map(({ name, annulus, length }) => loss(name, "annulus", annulus, length));
  return [...gear, ...bores, ...annuli.reverse()];
}

function portState(input: CircuitInput, { diameters, dischargeCoefficient }: BitPorts): PortState {
  const { flow } = input.pump;
  const { density } = input.fluid;
  const area = portArea(diameters);
  const pressureDrop = portPressureDrop({ density, flow, area, dischargeCoefficient });
  const power = hydraulicPower({ pressureDrop, flow });
  return {
    area,
    speed: portSpeed({ flow, area }),
    pressureDrop,
    power,
    powerPerHoleArea: hydraulicPowerPerHoleArea({ power, holeDiameter: input.holeDiameter }),
    impactForce: impactForce({ density, flow, pressureDrop, dischargeCoefficient }),
  };
}

/** The return over the hole as it stands, and the load it carries at the rate looked at. */
function cleaningState(input: CircuitInput, { slip, transportRatio, rateCeiling }: ReturnCleaning): CleaningState {
  const { holeDiameter, rate } = input;
  const { flow } = input.pump;
  const ratio = transportRatio.mid;
  const share =
    rate !== undefined && ratio > 0 ? cuttingsShare({ rate, holeDiameter, transportRatio: ratio, flow }) : undefined;
  return { slip, transportRatio, ...(share === undefined ? {} : { cuttingsShare: share }), rateCeiling };
}

function slotState(input: CircuitInput): SlotState | undefined {
  const { slotArea, holeDiameter } = input;
  if (slotArea === undefined) return undefined;
  requirePositive({ slotArea });
  const lowest = annulusSections(input).at(-1);
  if (!lowest) return undefined;
  const speed = input.pump.flow / slotArea;
  return {
    speed,
    areaShare: slotArea / ((Math.PI / 4) * holeDiameter ** 2),
    speedRatio: speed / conduitSpeed({ flow: input.pump.flow, conduit: lowest.annulus }),
  };
}
