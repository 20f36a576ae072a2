/**
 * The bottom of the hole as the wings leave it, by the angle the bit has turned: the next wing comes by one n-th of a turn
 * later and finds it there. Written node by node as the bit turns, read at the angle of the wing before.
 *
 * Between nodes angle and height run as cubics of time, so that the reading is as good as the stepping that wrote it.
 */
export interface CutSurface {
  /** Writes a node: time, angle, turning speed, height, and how fast the height changes in time. */
  readonly write: (time: number, angle: number, turning: number, height: number, heightRate: number) => void;
  /** Height at an angle. */
  readonly heightAt: (angle: number) => number;
  /** Change of height with angle where it was last read. */
  readonly slopeRead: () => number;
}

const FIRST_ROOM = 4096;
const NEWTON_STEPS = 4;
/** Off by less than this the angle is met [rad]. */
const ANGLE_MET = 1e-13;
/** Step for the slope of what lay there before the start [rad]. */
const SLOPE_STEP = 1e-6;

/** A surface that is known before the first node as a function of the angle. */
export function cutSurface(before: (angle: number) => number): CutSurface {
  let room = FIRST_ROOM;
  let [times, angles, turnings, heights, rates] = Array.from({ length: 5 }, () => new Float64Array(room));
  let count = 0;
  let at = 0;
  const read = { slope: 0 };

  function grow(): void {
    room *= 2;
    [times, angles, turnings, heights, rates] = [times, angles, turnings, heights, rates].map((row) => {
      const larger = new Float64Array(room);
      larger.set(row);
      return larger;
    });
  }

  function write(time: number, angle: number, turning: number, height: number, heightRate: number): void {
    if (count === room) grow();
    times[count] = time;
    angles[count] = angle;
    turnings[count] = turning;
    heights[count] = height;
    rates[count] = heightRate;
    count++;
  }

  function heightAt(angle: number): number {
    if (count < 2 || angle < angles[0]) {
      const height = before(angle);
      read.slope = (height - before(angle - SLOPE_STEP)) / SLOPE_STEP;
      return height;
    }
    // Readings move on with the bit; only a step that is taken again looks back a little.
    while (at > 0 && angles[at] > angle) at--;
    while (at < count - 2 && angles[at + 1] <= angle) at++;
    const span = times[at + 1] - times[at];
    const turned = angles[at + 1] - angles[at];
    if (!(turned > 0 && span > 0)) {
      read.slope = 0;
      return heights[at + 1];
    }
    const w0 = turnings[at] * span;
    const w1 = turnings[at + 1] * span;
    // Angle as a cubic of s in 0 to 1: a0 + w0 s + b s² + c s³.
    const b = 3 * turned - 2 * w0 - w1;
    const c = w0 + w1 - 2 * turned;
    const wanted = angle - angles[at];
    let s = Math.min(1, Math.max(0, wanted / turned));
    for (let n = 0; n < NEWTON_STEPS; n++) {
      const off = s * (w0 + s * (b + c * s)) - wanted;
      const rate = w0 + s * (2 * b + 3 * c * s);
      if (Math.abs(off) < ANGLE_MET || !(rate > 0)) break;
      s = Math.min(1, Math.max(0, s - off / rate));
    }
    const rise = heights[at + 1] - heights[at];
    const r0 = rates[at] * span;
    const r1 = rates[at + 1] * span;
    const d = 3 * rise - 2 * r0 - r1;
    const e = r0 + r1 - 2 * rise;
    const turning = w0 + s * (2 * b + 3 * c * s);
    read.slope = turning > 0 ? (r0 + s * (2 * d + 3 * e * s)) / turning : rise / turned;
    return heights[at] + s * (r0 + s * (d + e * s));
  }

  return { write, heightAt, slopeRead: () => read.slope };
}
