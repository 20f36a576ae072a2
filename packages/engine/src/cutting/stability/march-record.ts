import type { March, MarchInput, MarchRegime } from "./march-input.ts";

/**
 * Which laws hold: flats pressed on the rock, lifted off it, at rest along the hole; the whole bit flying off bottom; or
 * standing, its turning at rest.
 */
export type MarchMode = "pressing" | "lifting" | "held" | "flying" | "standing";

/** The state at the beginning of a stretch. */
interface StretchState {
  readonly time: number;
  readonly place: number;
  readonly down: number;
  readonly angle: number;
  readonly turning: number;
}

/** Cut and contact at the beginning of a stretch. */
interface StretchCut {
  readonly cut: number;
  readonly contact: number;
}

const USUAL_SAMPLES = 1500;
/** Swing under which the bit counts as steady [-]: a tenth of the steady speed, our choice. */
const STEADY_SWING = 0.1;
const NAMES = [
  "time",
  "axialSpeed",
  "turningSpeed",
  "cutRatio",
  "axialOffset",
  "scaledTorque",
  "scaledWeight",
] as const satisfies readonly (keyof March["series"])[];

/** Keeps what a march is asked for: moments for drawing, and means and extremes of its second half. */
export function marchRecord(
  { duration, scaledSpeed, scaledWeight: held, bit, samples = USUAL_SAMPLES, twistDamping = 0 }: MarchInput,
  { steadySpeed, steadyCut }: { readonly steadySpeed: number; readonly steadyCut: number },
) {
  const { wings, contactLoad, contactFriction } = bit;
  const room = Math.ceil(samples) + 2;
  const rows = NAMES.map(() => new Float64Array(room));
  const [times, axialSpeeds, turningSpeeds, cutRatios, offsets, torques, loads] = rows;
  const apart = duration / samples;
  let kept = 0;
  let events = 0;
  const sums = { next: 0, whole: 0, stands: 0, lifts: 0, flies: 0, torque: 0, contact: 0 };
  const turning = extremes();
  const axial = extremes();
  const thirdQuarter = extremes();
  const lastQuarter = extremes();

  /** Torque of the rock; on a standing bit it is what the string asks for, which grows. */
  function torqueOf(state: StretchState, { cut, contact }: StretchCut, mode: MarchMode, at: number): number {
    if (mode === "standing") return scaledSpeed * (at + 2 * twistDamping) - state.angle;
    return mode === "flying" ? 0 : wings * (cut + contactFriction * contactLoad * contact);
  }

  function sample(state: StretchState, found: StretchCut, mode: MarchMode, at: number): void {
    const flies = mode === "flying";
    times[kept] = at;
    axialSpeeds[kept] = state.down / steadySpeed;
    turningSpeeds[kept] = state.turning / scaledSpeed;
    cutRatios[kept] = flies ? 0 : found.cut / steadyCut;
    offsets[kept] = state.place - steadySpeed * at;
    torques[kept] = torqueOf(state, found, mode, at);
    // Under a standing bit the rock bears all of the weight, whatever cut it stopped in.
    loads[kept] = mode === "standing" ? held : flies ? 0 : wings * (found.cut + contactLoad * found.contact);
    kept++;
  }

  /** The state holds from its own time up to `nextTime`, but for the torque on a standing bit, which grows. */
  function keep(state: StretchState, { cut, contact }: StretchCut, mode: MarchMode, nextTime: number): void {
    const { time } = state;
    const flies = mode === "flying";
    const stands = mode === "standing";
    while (sums.next < nextTime && kept < room - 1) {
      const at = stands ? Math.max(sums.next, time) : time;
      sample(state, { cut, contact }, mode, at);
      sums.next += apart;
    }
    const from = Math.max(time, duration / 2);
    const long = nextTime - from;
    if (!(long > 0)) return;
    sums.whole += long;
    if (stands) sums.stands += long;
    if (flies || mode === "lifting") sums.lifts += long;
    if (flies) sums.flies += long;
    sums.torque += long * torqueOf(state, { cut, contact }, mode, (from + nextTime) / 2);
    sums.contact += long * contact;
    turning.see(state.turning / scaledSpeed);
    // What the turning speed explains of the speed along the hole is no vibration along it.
    const beyondTurning = state.down / steadySpeed - state.turning / scaledSpeed;
    axial.see(beyondTurning);
    (time < 0.75 * duration ? thirdQuarter : lastQuarter).see(beyondTurning);
  }

  function result(ran: Pick<March, "finished" | "duration">): March {
    const per = (sum: number) => (sums.whole > 0 ? sum / sums.whole : 0);
    const shares = { stickShare: per(sums.stands), liftShare: per(sums.lifts), bounceShare: per(sums.flies) };
    const swings = { turningSwing: turning.swing(), axialSwing: axial.swing() };
    const before = thirdQuarter.swing();
    const [time, axialSpeed, turningSpeed, cutRatio, axialOffset, scaledTorque, scaledWeight] = rows.map((row) =>
      row.slice(0, kept),
    );
    return {
      regime: regimeOf({ ...swings, ...shares }),
      ...ran,
      ...shares,
      ...swings,
      fastestRatio: turning.most(),
      growthRatio: before > 0 ? lastQuarter.swing() / before : 0,
      meanScaledTorque: per(sums.torque),
      meanContactShare: per(sums.contact),
      steadyCut,
      events,
      series: { time, axialSpeed, turningSpeed, cutRatio, axialOffset, scaledTorque, scaledWeight },
    };
  }

  return {
    keep,
    /** The moment at which the march ends. */
    last: (state: StretchState, found: StretchCut, mode: MarchMode) => sample(state, found, mode, state.time),
    result,
    event: () => {
      events++;
    },
  };
}

function extremes() {
  const ends = { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };
  return {
    see: (value: number) => {
      if (value < ends.low) ends.low = value;
      if (value > ends.high) ends.high = value;
    },
    swing: () => (ends.high >= ends.low ? ends.high - ends.low : 0),
    most: () => (ends.high >= ends.low ? ends.high : 0),
  };
}

function regimeOf({
  stickShare,
  bounceShare,
  turningSwing,
  axialSwing,
}: Pick<March, "stickShare" | "bounceShare" | "turningSwing" | "axialSwing">): MarchRegime {
  if (stickShare > 0) return "stick-slip";
  if (bounceShare > 0) return "bit bounce";
  if (axialSwing > STEADY_SWING) return "axial vibration";
  return turningSwing > STEADY_SWING ? "torsional vibration" : "steady";
}
