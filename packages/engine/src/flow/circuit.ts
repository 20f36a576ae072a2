import { band, exactBand, gravestFirst, mapBand, requirePositive } from "../quantity/index.ts";
import { annulusSections } from "./annulus-sections.ts";
import { circuitFindings } from "./circuit-findings.ts";
import type { CircuitInput } from "./circuit-input.ts";
import { circuitLosses, circuitPressure } from "./circuit-losses.ts";
import type { Circuit, CircuitFigures, CleaningState, SlotState, SlowestAnnulus } from "./circuit-result.ts";
import { circuitWorking } from "./circuit-working.ts";
import { conduitSpeed } from "./conduit.ts";
import { coolingFlow } from "./cooling-flow.ts";
import { CUTTINGS_SHARE_LIMIT, cuttingsShare, rateCeilingByCleaning, transportRatio } from "./cuttings-load.ts";
import { operatingPoint } from "./operating-point.ts";
import { slipBand } from "./slip-band.ts";

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
  const slowestAnnulus = slowest(input);
  const slots = slotState(input);
  return {
    losses,
    ports,
    pumpPressure,
    shareAtPorts: ports.pressureDrop / pumpPressure,
    operatingPoint: operatingPoint({ pump: input.pump, circuitPressure: (flow) => circuitPressure(input, flow) }),
    slowestAnnulus,
    cleaning: cleaningState(input, slowestAnnulus),
    ...(slots ? { slots } : {}),
    coolingFlow:
      input.limits?.coolingFlow === undefined ? coolingFlow(input.holeDiameter) : exactBand(input.limits.coolingFlow),
  };
}

function slowest(input: CircuitInput): SlowestAnnulus {
  const annuli = annulusSections(input).map(({ name, annulus }) => {
    return { name, annulus, speed: conduitSpeed({ flow: input.pump.flow, conduit: annulus }) };
  });
  return annuli.reduce((least, one) => (one.speed < least.speed ? one : least));
}

function cleaningState(input: CircuitInput, { annulus, speed }: SlowestAnnulus): CleaningState {
  const { holeDiameter, chip, fluid, rate } = input;
  const shareLimit = input.limits?.cuttingsShare ?? CUTTINGS_SHARE_LIMIT;
  const { flow } = input.pump;
  const slip = slipBand({ chip, fluid, annulus, flow });
  const ratio = mapBand(slip.speed, (slipSpeed) => transportRatio({ slipSpeed, upholeSpeed: speed }));
  const ceilingAt = (risen: number) => rateCeilingByCleaning({ shareLimit, holeDiameter, transportRatio: risen, flow });
  const share =
    rate !== undefined && ratio.mid > 0
      ? cuttingsShare({ rate, holeDiameter, transportRatio: ratio.mid, flow })
      : undefined;
  return {
    slip,
    transportRatio: ratio,
    ...(share === undefined ? {} : { cuttingsShare: share }),
    rateCeiling: band(ceilingAt(ratio.low), ceilingAt(ratio.mid), ceilingAt(ratio.high)),
  };
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
