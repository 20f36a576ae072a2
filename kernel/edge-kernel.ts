// AssemblyScript, not TypeScript: `npm run kernel` compiles it to WebAssembly.
//
// The loops of `engage` and `edgeLoads`, operation for operation and in the same order, so that both kernels give the
// same figures to the last bit. What the lines mean is told there, in packages/engine/src/cutting.
//
// Memory, from address 0, as compiled-kernel.ts lays it: rows of doubles of one entry per pass, then one row per cell,
// then the rows of the cutters, then the whole numbers.

const DOUBLE: usize = 8;
const WHOLE: usize = 4;
const LAW: usize = 5 * DOUBLE;
const SUMS: usize = 15 * DOUBLE;
const PASS_ROWS: usize = 9;

let cells: i32 = 0;
let cutters: i32 = 0;
let cellWidth: f64 = 0;
let height: usize = 0;
let azimuth: usize = 0;
let cosAzimuth: usize = 0;
let sinAzimuth: usize = 0;
let slope: usize = 0;
let cosSlope: usize = 0;
let flatLength: usize = 0;
let chamferHeight: usize = 0;
let depth: usize = 0;
let cellRadius: usize = 0;
let area: usize = 0;
let volume: usize = 0;
let laws: usize = 0;
let sums: usize = 0;
let firstPass: usize = 0;
let cutter: usize = 0;

export function lay(cellCount: i32, passCount: i32, cutterCount: i32, width: f64): void {
  const row = DOUBLE * <usize>passCount;
  cells = cellCount;
  cutters = cutterCount;
  cellWidth = width;
  height = 0;
  azimuth = row;
  cosAzimuth = 2 * row;
  sinAzimuth = 3 * row;
  slope = 4 * row;
  cosSlope = 5 * row;
  flatLength = 6 * row;
  chamferHeight = 7 * row;
  depth = 8 * row;
  cellRadius = PASS_ROWS * row;
  area = cellRadius + DOUBLE * <usize>cellCount;
  volume = area + DOUBLE * <usize>cutterCount;
  laws = volume + DOUBLE * <usize>cutterCount;
  sums = laws + LAW * <usize>cutterCount;
  firstPass = sums + SUMS * <usize>cutterCount;
  cutter = firstPass + WHOLE * <usize>(cellCount + 1);
}

function double(row: usize, at: i32): f64 {
  return load<f64>(row + DOUBLE * <usize>at);
}

function put(row: usize, at: i32, value: f64): void {
  store<f64>(row + DOUBLE * <usize>at, value);
}

function whole(row: usize, at: i32): i32 {
  return load<i32>(row + WHOLE * <usize>at);
}

function add(place: usize, value: f64): void {
  store<f64>(place, load<f64>(place) + value);
}

export function engage(advance: f64): void {
  const perRadian = advance / (2 * Math.PI);
  memory.fill(area, 0, DOUBLE * <usize>cutters);
  memory.fill(volume, 0, DOUBLE * <usize>cutters);
  for (let cell = 0; cell < cells; cell++) {
    const from = whole(firstPass, cell);
    const to = whole(firstPass, cell + 1);
    let deepest: f64 = -Infinity;
    for (let k = from; k < to; k++) {
      const passing = double(height, k) - perRadian * double(azimuth, k);
      put(depth, k, passing);
      if (passing > deepest) deepest = passing;
    }
    const ringPerDepth = 2 * Math.PI * double(cellRadius, cell) * cellWidth;
    let surface = deepest - advance;
    for (let k = from; k < to; k++) {
      const taken = double(depth, k) - surface;
      if (taken > 0) {
        const by = DOUBLE * <usize>whole(cutter, k);
        put(depth, k, taken);
        surface += taken;
        add(area + by, taken * cellWidth);
        add(volume + by, taken * ringPerDepth);
      } else {
        put(depth, k, 0);
      }
    }
  }
}

export function edgeLoads(contactStress: f64, flatFriction: f64, kappa: f64): void {
  memory.fill(sums, 0, SUMS * <usize>cutters);
  for (let cell = 0; cell < cells; cell++) {
    const radius = double(cellRadius, cell);
    const to = whole(firstPass, cell + 1);
    for (let k = whole(firstPass, cell); k < to; k++) {
      const taken = double(depth, k);
      if (!(taken > 0)) continue;
      const by = <usize>whole(cutter, k);
      const law = laws + LAW * by;
      const sum = sums + SUMS * by;
      const faceDrag = load<f64>(law);
      const faceNormal = load<f64>(law, 8);
      const chamferDrag = load<f64>(law, 16);
      const chamferNormal = load<f64>(law, 24);
      const chamferLength = load<f64>(law, 32);
      const cosine = double(cosSlope, k);
      const width = cellWidth / cosine;
      const deep = taken * cosine;
      const bevel: f64 = chamferLength > 0 ? min(deep, double(chamferHeight, k)) : 0;
      const flat = min(double(flatLength, k), kappa * deep);
      const cutting = faceNormal * (deep - bevel) * width;
      const onFlat = contactStress * flat * width;
      const contact = chamferNormal * bevel * width + onFlat;
      const faceAndBevelDrag = faceDrag * (deep - bevel) + chamferDrag * bevel;
      const drag = faceAndBevelDrag * width + flatFriction * onFlat;
      const axial = (cutting + contact) * cosine;
      const outward = axial * double(slope, k);
      const cosAngle = double(cosAzimuth, k);
      const sinAngle = double(sinAzimuth, k);
      add(sum, cutting);
      add(sum + 8, contact);
      add(sum + 16, cutting * cosine);
      add(sum + 24, contact * cosine);
      add(sum + 32, drag);
      add(sum + 40, outward);
      add(sum + 48, radius * drag);
      add(sum + 56, outward * cosAngle + drag * sinAngle);
      add(sum + 64, outward * sinAngle - drag * cosAngle);
      add(sum + 72, -(radius * sinAngle * axial));
      add(sum + 80, radius * cosAngle * axial);
      add(sum + 88, width);
      if (contact > 0) {
        add(sum + 96, width);
        add(sum + 104, (flat + chamferLength * bevel) * width);
      }
      if (deep > load<f64>(sum, 112)) store<f64>(sum, deep, 112);
    }
  }
}
