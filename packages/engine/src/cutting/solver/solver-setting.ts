import {
  type BitSpec,
  bitBody,
  type FaceStock,
  faceStock,
  type GeneratedBit,
  gapsBetweenWings,
  generateLayout,
  planOfBit,
  SMALLEST_SOUND_PORT,
} from "../../bit/index.ts";
import type { RockResponse } from "../../ground/index.ts";
import { requirePositive } from "../../quantity/index.ts";
import { usualRock } from "../usual-rock.ts";
import { type Candidate, candidateOf, facesOf } from "./candidate.ts";
import { coverShortfall, LEAST_FACE_OVERLAP } from "./candidate-cover.ts";
import {
  type EvenMeasure,
  type LayoutFreedom,
  type LayoutQuestion,
  USUAL_ADVANCES,
  USUAL_CANDIDATES,
  USUAL_FREEDOM,
} from "./layout-question.ts";
import { leastGapForPort } from "./slot-room.ts";

/**
 * Length of the small flats by which wear is compared, as every edge has them after the first feet [m].
 *
 * @source (c) no source: 0.3 mm, our choice; a new edge has no flat and so no contact to compare
 */
export const FIRST_FLAT = 3e-4;

/** What a gap between two wings may be. */
interface GapBounds {
  /** Narrowest gap allowed, for whirl and for the ports [rad]. */
  readonly least: number;
  /** Widest gap allowed [rad]. */
  readonly most: number;
  /** What the widest gap has to be at least, so that the wings stay uneven [rad]. */
  readonly leastWidest: number;
}

/** A question made ready: defaults filled in, the plain bit to start from, and the bounds of every choice. */
export interface SolverSetting {
  readonly spec: BitSpec;
  readonly measure: EvenMeasure;
  readonly response: RockResponse;
  /** Advances per revolution, the worst of them counted [m]. */
  readonly advances: readonly number[];
  readonly seed: number;
  readonly candidates: number;
  readonly freedom: LayoutFreedom;
  readonly stock: FaceStock;
  readonly holeRadius: number;
  /** The bit of the plain generator, without a judge. */
  readonly plain: GeneratedBit;
  /** The same as a candidate. */
  readonly start: Candidate;
  /** How far the centres of neighbours along the profile may stand apart, as share of a face [-]. */
  readonly mostApart: number;
  /** Port that has to fit every slot [m]. */
  readonly portDiameter: number;
  readonly gaps: GapBounds;
}

/**
 * Makes a question ready.
 *
 * @throws RangeError when a size of the specification is none, or an advance or the number of candidates is not positive
 * @source (d) bookkeeping; each default names its own
 */
export function solverSetting(question: LayoutQuestion): SolverSetting {
  const { spec, measure = "area", advances = USUAL_ADVANCES, seed = 0, candidates = USUAL_CANDIDATES } = question;
  requirePositive({ candidates, "number of advances": advances.length });
  for (const advance of advances) requirePositive({ advance });
  const freedom = { ...USUAL_FREEDOM, ...question.freedom };
  const stock = faceStock(spec);
  const plain = generateLayout(spec);
  const start = candidateOf(planOfBit(spec, plain, stock));
  const portDiameter = question.portDiameter ?? SMALLEST_SOUND_PORT;
  return {
    spec,
    measure,
    response: question.response ?? usualRock(),
    advances,
    seed,
    candidates,
    freedom: spec.wings.angles ? { ...freedom, gap: 0 } : freedom,
    stock,
    holeRadius: spec.holeDiameter / 2,
    plain,
    start,
    mostApart: mostApart(spec, start, stock),
    portDiameter,
    gaps: gapBounds({ spec, plain, freedom, portDiameter }),
  };
}

/** Room over the even spacing that a bit with few cutters is left, so that not every station is forced [-]. */
const SPARE_SPACING = 1.1;

/** What the overlap asked for allows; on a bit with too few cutters for it, a little more than even spacing. */
function mostApart(spec: BitSpec, start: Candidate, stock: FaceStock): number {
  const { faceDiameter } = spec.cutter;
  const faces = facesOf(start, stock).sort((a, b) => a.arc - b.arc);
  let length = 0;
  for (let k = 1; k < faces.length; k++) {
    length += coverShortfall([faces[k - 1], faces[k]], { faceDiameter, mostApart: 1 }).widest;
  }
  // Half the wings keep their gauge cutters, which share one station.
  const gauge = spec.wings.wings - Math.floor(spec.wings.wings / 2);
  const spacings = Math.max(1, faces.length - gauge);
  return Math.max(1 - LEAST_FACE_OVERLAP, (SPARE_SPACING * length) / spacings);
}

/** Slack for the rounding of angles [rad]. */
const ANGLE_SLACK = 1e-6;

function gapBounds({
  spec,
  plain,
  freedom,
  portDiameter,
}: {
  readonly spec: BitSpec;
  readonly plain: GeneratedBit;
  readonly freedom: LayoutFreedom;
  readonly portDiameter: number;
}): GapBounds {
  const even = (2 * Math.PI) / spec.wings.wings;
  const standing = gapsBetweenWings(plain.wingAngles);
  const [narrowest, widest] = [Math.min(...standing), Math.max(...standing)];
  const ports = { count: 1, diameter: portDiameter };
  const body = bitBody({ layout: plain.layout, material: spec.material, wings: spec.wings.wings, ports });
  // A port too large even for the plain bit asks for no more than that bit has.
  const forPort = Math.min(narrowest, leastGapForPort({ ...body, portDiameter }));
  return {
    least: Math.min(narrowest, Math.max(forPort, even - freedom.gap)) - ANGLE_SLACK,
    most: Math.max(widest, even + freedom.gap) + ANGLE_SLACK,
    leastWidest: widest - ANGLE_SLACK,
  };
}
