import type { RateLimitName, RunningMap, RunningMapPoint } from "@bitwright/engine";

/** The most that a bed takes at one speed. */
export interface InsidePoint extends RunningMapPoint {
  /** The limit that holds it. */
  readonly binds: RateLimitName;
  /** Why its speed is kept out of; absent where it is not. */
  readonly keptOut?: string;
}

/** Steps between the speeds of the list of most weights [rad/s]. */
const LISTED = (20 * 2 * Math.PI) / 60;

/** The most weight at twenties of turns a minute that the rotary turns, those to keep out of marked. */
export function insidePoints({ lines, rotary, rotarySpeeds, avoid }: RunningMap): InsidePoint[] {
  const whole = (speed: number) => Math.abs(speed / LISTED - Math.round(speed / LISTED)) < 1e-6;
  const turned = (speed: number) => speed >= rotary.slowest * (1 - 1e-9) && speed <= rotary.fastest * (1 + 1e-9);
  return rotarySpeeds.flatMap((speed, k) => {
    if (!(turned(speed) && whole(speed))) return [];
    const keptOut = avoid.find(({ from, to }) => speed > from && speed < to)?.why;
    const here = lines.flatMap(({ limit, points }): InsidePoint[] => {
      const point = points.find(({ rotarySpeed }) => rotarySpeed === rotarySpeeds[k]);
      return point ? [{ ...point, binds: limit, ...(keptOut === undefined ? {} : { keptOut }) }] : [];
    });
    return here.length === 0 ? [] : [here.reduce((least, one) => (one.advance < least.advance ? one : least))];
  });
}
