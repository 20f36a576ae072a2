import { exactBand, gravestFirst, requirePositive } from "../quantity/index.ts";
import { annulusSections } from "./annulus-sections.ts";
import { circuitFindings } from "./circuit-findings.ts";
import type { CircuitInput } from "./circuit-input.ts";
import { circuitLosses, circuitPressure } from "./circuit-losses.ts";
import type { Circuit, CircuitFigures, CleaningState, SlotState } from "./circuit-result.ts";
import { circuitWorking } from "./circuit-working.ts";
import { conduitSpeed } from "./conduit.ts";
import { coolingFlow } from "./cooling-flow.ts";
import { cuttingsShare } from "./cuttings-load.ts";
import { operatingPoint } from "./operating-point.ts";
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
  const { losses, ports, pumpPressure } = circuitLosses(input);
  const shareLimit = input.limits?.cuttingsShare;
  const returned = returnCleaning({ ...input, flow, ...(shareLimit === undefined ? {} : { shareLimit }) });
  const slots = slotState(input);
  return {
    losses,
    ports,
    pumpPressure,
    shareAtPorts: ports.pressureDrop / pumpPressure,
    operatingPoint: operatingPoint({ pump: input.pump, circuitPressure: (flow) => circuitPressure(input, flow) }),
    slowestAnnulus: returned.slowestAnnulus,
    cleaning: cleaningState(input, returned),
    ...(slots ? { slots } : {}),
    coolingFlow:
      input.limits?.coolingFlow === undefined ? coolingFlow(input.holeDiameter) : exactBand(input.limits.coolingFlow),
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
