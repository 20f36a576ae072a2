import type { BitLayout, PlacedCutter } from "@bitwright/engine";

/**
 * Brute force: a map of the hole bottom over radius and azimuth, lowered under every edge point as the bit turns in
 * small steps. It knows nothing of passing orders or envelopes, and turns its cutters with its own trigonometry.
 */
export interface DepthMapRun {
  readonly radialBins: number;
  readonly azimuthBins: number;
  readonly revolutions: number;
}

interface EdgePoint {
  readonly cutter: number;
  readonly radialBin: number;
  readonly azimuthBin: number;
  readonly depth: number;
}

/** Rock volume that each cutter takes in the last revolution [m³]. */
export function depthMapVolumes(layout: BitLayout, advance: number, run: DepthMapRun): number[] {
  const { radialBins, azimuthBins, revolutions } = run;
  const binWidth = layout.holeDiameter / 2 / radialBins;
  const points = layout.cutters.flatMap((cutter, index) => edgePoints(cutter, index, binWidth, run));
  const bottom = new Float64Array(radialBins * azimuthBins).fill(-1);
  const volumes = layout.cutters.map(() => 0);
  for (let step = 0; step < revolutions * azimuthBins; step++) {
    const down = (advance * step) / azimuthBins;
    const counts = step >= (revolutions - 1) * azimuthBins;
    for (const point of points) {
      const at = point.radialBin * azimuthBins + ((point.azimuthBin + step) % azimuthBins);
      const depth = point.depth + down;
      if (depth <= bottom[at]) continue;
      if (counts) {
        const cellArea = ((2 * Math.PI) / azimuthBins) * (point.radialBin + 0.5) * binWidth * binWidth;
        volumes[point.cutter] += (depth - bottom[at]) * cellArea;
      }
      bottom[at] = depth;
    }
  }
  return volumes;
}

/** Where the cutter's edge crosses the middle of each radial bin; both crossings are kept. */
function edgePoints(cutter: PlacedCutter, index: number, binWidth: number, run: DepthMapRun): EdgePoint[] {
  const around = 4000;
  const rim = Array.from({ length: around + 1 }, (_, k) => rimPoint(cutter, (2 * Math.PI * k) / around));
  const points: EdgePoint[] = [];
  for (let k = 0; k < around; k++) {
    const [one, two] = [rim[k], rim[k + 1]];
    const [near, far] = one.radius < two.radius ? [one, two] : [two, one];
    for (let bin = Math.ceil(near.radius / binWidth - 0.5); (bin + 0.5) * binWidth < far.radius; bin++) {
      if (bin >= run.radialBins) break;
      const share = ((bin + 0.5) * binWidth - near.radius) / (far.radius - near.radius);
      const x = near.x + share * (far.x - near.x);
      const y = near.y + share * (far.y - near.y);
      const turn = Math.atan2(y, x) / (2 * Math.PI);
      const azimuthBin = Math.floor((turn - Math.floor(turn)) * run.azimuthBins);
      points.push({ cutter: index, radialBin: bin, azimuthBin, depth: near.z + share * (far.z - near.z) });
    }
  }
  return points;
}

/**
 * A rim point by turning a disc step by step: lean it back about the radial line, swing it about the vertical by the
 * side rake, tip it along the profile, carry it out to its radius, swing it to its azimuth.
 */
function rimPoint(cutter: PlacedCutter, angle: number) {
  const half = cutter.faceDiameter / 2;
  let out = half * Math.cos(angle);
  let ahead = 0;
  let down = Math.min(half * Math.sin(angle), half - cutter.wornHeight);
  [ahead, down] = turnedBy(cutter.backRake, [ahead, down]);
  [out, ahead] = turnedBy(-cutter.sideRake, [out, ahead]);
  [out, down] = turnedBy(-cutter.profileAngle, [out, down]);
  out += cutter.radius;
  down += cutter.height;
  const [x, y] = turnedBy(cutter.azimuth, [out, ahead]);
  return { x, y, z: down, radius: Math.hypot(x, y) };
}

function turnedBy(angle: number, [p, q]: readonly [number, number]): [number, number] {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [c * p - s * q, s * p + c * q];
}
