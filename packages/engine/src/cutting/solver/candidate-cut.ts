import type { CutterRole, StationedFace } from "../../bit/index.ts";
import type { CutLine, CutLines } from "./cut-line.ts";
import { evenSpread } from "./even-spread.ts";
import { FIRST_FLAT, type SolverSetting } from "./solver-setting.ts";

/** What a candidate is judged by, the worst over the advances. */
export interface CandidateCut {
  /** Deviation of the measure over all cutters but the centre one, over its mean [-]. */
  readonly evenness: number;
  /** Side force as a share of the weight [-]. */
  readonly imbalance: number;
}

/** Sums one candidate: its faces, their azimuths and their roles, in one order. */
export type CandidateSum = (
  faces: readonly StationedFace[],
  azimuths: Float64Array,
  roles: readonly CutterRole[],
) => CandidateCut;

const TURN = 2 * Math.PI;
/** A cutter that reaches across the axis goes by a radius twice. */
const MOST_PASSES = 2;

/**
 * The engagement and force law of `engage` and `edgeLoads`, summed in one go for what the search asks after. The lines of
 * the faces come ready; what is left is to sort the few passes of each cell and to turn each cutter's side force by its
 * azimuth. Nothing is allocated from candidate to candidate but the result.
 *
 * @source (d) the sums of `engage` and `edgeLoads`; held to them by test
 */
export function candidateSum(
  { measure, response, advances, holeRadius, start }: SolverSetting,
  lineOf: CutLines,
  /** Radial cells from the axis to the hole radius [-]. */
  cells: number,
): CandidateSum {
  const cutters = start.role.length;
  const room = MOST_PASSES * cutters;
  const cellWidth = holeRadius / cells;
  const count = new Int32Array(cells);
  // The passes of cell c stand from c * room on, the one that comes by first in front.
  const azimuthAt = new Float64Array(cells * room);
  const cutterAt = new Int32Array(cells * room);
  const passAt = new Int32Array(cells * room);
  const row = () => new Float64Array(cutters);
  const [area, work, contact, sideX, sideY] = [row(), row(), row(), row(), row()];
  const { kappa, contactStress, flatFriction } = response;

  const layPasses = (lines: readonly CutLine[], azimuths: Float64Array) => {
    count.fill(0);
    for (let i = 0; i < lines.length; i++) {
      const { cell, azimuth } = lines[i];
      const turned = azimuths[i];
      for (let k = 0; k < cell.length; k++) {
        const c = cell[k];
        const sum = azimuth[k] + turned;
        const at = sum - TURN * Math.floor(sum / TURN);
        const from = c * room;
        let place = from + count[c]++;
        while (place > from && at > azimuthAt[place - 1]) {
          azimuthAt[place] = azimuthAt[place - 1];
          cutterAt[place] = cutterAt[place - 1];
          passAt[place] = passAt[place - 1];
          place--;
        }
        azimuthAt[place] = at;
        cutterAt[place] = i;
        passAt[place] = k;
      }
    }
  };

  /** Fills the rows for one advance; gives the weight. */
  const cutAt = (lines: readonly CutLine[], advance: number): number => {
    for (const values of [area, work, contact, sideX, sideY]) values.fill(0);
    const perRadian = advance / TURN;
    let weight = 0;
    for (let c = 0; c < cells; c++) {
      const from = c * room;
      const to = from + count[c];
      let deepest = Number.NEGATIVE_INFINITY;
      for (let p = from; p < to; p++) {
        const passing = lines[cutterAt[p]].height[passAt[p]] - perRadian * azimuthAt[p];
        if (passing > deepest) deepest = passing;
      }
      let surface = deepest - advance;
      const radius = (c + 0.5) * cellWidth;
      for (let p = from; p < to; p++) {
        const i = cutterAt[p];
        const k = passAt[p];
        const line = lines[i];
        const taken = line.height[k] - perRadian * azimuthAt[p] - surface;
        if (!(taken > 0)) continue;
        surface += taken;
        const { law } = line;
        const cosine = line.cosSlope[k];
        const width = cellWidth / cosine;
        const depth = taken * cosine;
        const bevel = law.chamferLength > 0 ? Math.min(depth, line.chamferHeight[k]) : 0;
        const pressed = contactStress * width;
        const onChamfer = law.chamferNormal * bevel * width;
        const onFlat = pressed * Math.min(line.flatLength[k], kappa * depth);
        const drag = (law.faceDrag * (depth - bevel) + law.chamferDrag * bevel) * width + flatFriction * onFlat;
        const axial = (law.faceNormal * (depth - bevel) * width + onChamfer + onFlat) * cosine;
        const outward = axial * line.slope[k];
        weight += axial;
        area[i] += taken * cellWidth;
        work[i] += radius * drag;
        contact[i] += onChamfer + pressed * Math.min(Math.max(line.flatLength[k], FIRST_FLAT), kappa * depth);
        sideX[i] += outward * line.cosAzimuth[k] + drag * line.sinAzimuth[k];
        sideY[i] += outward * line.sinAzimuth[k] - drag * line.cosAzimuth[k];
      }
    }
    return weight;
  };

  return (faces, azimuths, roles) => {
    const lines = faces.map(lineOf);
    layPasses(lines, azimuths);
    let evenness = 0;
    let imbalance = 0;
    for (const advance of advances) {
      const weight = cutAt(lines, advance);
      let x = 0;
      let y = 0;
      for (let i = 0; i < cutters; i++) {
        const [cosine, sine] = [Math.cos(azimuths[i]), Math.sin(azimuths[i])];
        x += sideX[i] * cosine - sideY[i] * sine;
        y += sideX[i] * sine + sideY[i] * cosine;
        if (measure === "wear") contact[i] *= faces[i].tipRadius;
      }
      const values = measure === "area" ? area : measure === "work" ? work : contact;
      evenness = Math.max(evenness, evenSpread(values, (at) => roles[at] !== "centre").deviation);
      if (weight > 0) imbalance = Math.max(imbalance, Math.hypot(x, y) / weight);
    }
    return { evenness, imbalance };
  };
}
