import { requireNotNegative, requirePositive } from "../../quantity/index.ts";
import { cutSurface } from "./cut-surface.ts";
import type { March, MarchInput } from "./march-input.ts";
import { type MarchMode, marchRecord } from "./march-record.ts";

const TURN = 2 * Math.PI;
/** Steps to the shortest of the delay at steady speed and a radian of either swing, along the hole and in twist [-]. */
const STEPS_TO_SHORTEST = 25;
/** Halvings by which a change of state is found within a step: to a part in 10¹². */
const HALVINGS = 40;
/** First turns of the delay at which a kick at the start comes back as a kink; they are stepped on exactly. */
const KINKS = 4;
const ASK_EVERY = 2048;

/**
 * Marches the published delay equations of a bit on a string in time.
 *
 * x'' = ψ (W' - n δ - n λ g), φ'' + φ = ω0 τ - n δ - n β λ g, with the cut of a wing δ = x - x(τ - τ_n) and the delay from
 * φ(τ) - φ(τ - τ_n) = 2π/n. g = 1 while the bit goes down, 0 while it goes up; standing still along the hole it takes
 * what balances the load. Taken from steady drilling at v0 = ω0 (W' - n λ)/2π these are the equations of the paper.
 *
 * Beyond the paper: a bit that leaves the bottom (δ < 0) flies free of all rock load until it lands, and the rock keeps
 * the lowest mark of all wings before. A bit whose turning comes to rest stands, also along the hole, until the
 * string's twist is what the rock can bear.
 *
 * Steps of fourth order, cut at every change of state; the delayed place is read off cubics of the same order. The string
 * is one mass on one spring under a constant weight. The paper has no damping; `twistDamping` ξ adds -2 ξ (φ' - ω0).
 *
 * @throws RangeError when an input is not positive, or the weight does not get past the contact load of all wings
 * @source (b) Richard, Germay & Detournay 2007, J. Sound Vib. 305:432-456, recalled; (d) scaling derived again; bounce and
 *   rest as described
 */
export function marchSelfExcitation(input: MarchInput): March {
  const { bit, scaledWeight, scaledSpeed, duration, rotation = "twisting", twistDamping = 0 } = input;
  const { start = {}, shouldStop } = input;
  const { wings, cutStiffness, contactLoad, contactFriction } = bit;
  requirePositive({ wings, cutStiffness, scaledWeight, scaledSpeed, duration, samples: input.samples ?? 1 });
  requireNotNegative({ contactLoad, contactFriction, twistDamping });
  const allContact = wings * contactLoad;
  if (!(scaledWeight > allContact)) {
    throw new RangeError(`scaledWeight must be over the contact load of ${allContact}, got ${scaledWeight}`);
  }
  const steadyCut = (scaledWeight - allContact) / wings;
  const delayAngle = TURN / wings;
  const steadySpeed = (steadyCut * scaledSpeed) / delayAngle;
  const steadyTorque = wings * steadyCut + wings * contactFriction * contactLoad;
  const usualStep = Math.min(delayAngle / scaledSpeed, 1 / Math.sqrt(wings * cutStiffness), 1) / STEPS_TO_SHORTEST;
  const { timeStep = usualStep } = input;
  requirePositive({ timeStep });
  const twists = rotation === "twisting";
  const hasContact = contactLoad > 0;
  const firstAngle = twists ? -steadyTorque : 0;
  const { ripple, axialOffset = 0, axialSpeedRatio = 1, turningSpeedRatio = 1 } = start;
  const surface = cutSurface(
    (angle) => (steadyCut * (angle - firstAngle)) / delayAngle + (ripple ? ripple(angle - firstAngle) : 0),
  );

  // State, laws and ends of steps live in objects that are written over: numbers captured singly would be allocated anew
  // at every step.
  const now = {
    time: 0,
    place: axialOffset,
    down: steadySpeed * axialSpeedRatio,
    angle: firstAngle,
    turning: scaledSpeed * (twists ? turningSpeedRatio : 1),
  };
  const end = { ...now };
  const law = { cut: 0, contact: 0, downRate: 0, turningRate: 0 };
  const here = { ...law };
  let mode = "pressing" as MarchMode;
  let kink = firstAngle + delayAngle;
  let kinksLeft = KINKS;

  /** Share of the contact that balances the load of a bit at rest along the hole. */
  const balance = (cut: number) => (scaledWeight - wings * cut) / allContact;

  const stringTorque = (time: number, angle: number, turning: number) =>
    scaledSpeed * time - angle - 2 * twistDamping * (turning - scaledSpeed);

  function look(time: number, place: number, angle: number, turning: number): void {
    const cut = place - surface.heightAt(angle - delayAngle);
    const flies = mode === "flying";
    const held = mode === "held";
    const contact = mode === "pressing" ? 1 : held ? balance(cut) : 0;
    const load = flies ? 0 : wings * (cut + contactLoad * contact);
    const torque = flies ? 0 : wings * (cut + contactFriction * contactLoad * contact);
    law.cut = cut;
    law.contact = contact;
    law.downRate = held ? 0 : cutStiffness * (scaledWeight - load);
    const turningRate = twists ? stringTorque(time, angle, turning) - torque : 0;
    // Off bottom nothing but the string's own twist could turn the bit backward; it is held there instead.
    law.turningRate = flies && now.turning <= 0 ? Math.max(0, turningRate) : turningRate;
  }

  /** Looks at the laws where the bit now is and writes the bottom it leaves there. */
  function write(): void {
    look(now.time, now.place, now.angle, now.turning);
    Object.assign(here, law);
    // The rock keeps the lowest mark of all wings before: under a flying bit that is the one it was to cut from.
    const flies = mode === "flying" && law.cut < 0;
    const height = flies ? now.place - law.cut : now.place;
    surface.write(now.time, now.angle, now.turning, height, flies ? surface.slopeRead() * now.turning : now.down);
  }

  function tryStep(step: number): void {
    const half = step / 2;
    const { time, place, down, angle, turning } = now;
    const [d1, t1] = [here.downRate, here.turningRate];
    look(time + half, place + half * down, angle + half * turning, turning + half * t1);
    const [d2, t2] = [law.downRate, law.turningRate];
    look(time + half, place + half * (down + half * d1), angle + half * (turning + half * t1), turning + half * t2);
    const [d3, t3] = [law.downRate, law.turningRate];
    look(time + step, place + step * (down + half * d2), angle + step * (turning + half * t2), turning + step * t3);
    end.time = time + step;
    end.place = place + step * down + ((step * step) / 6) * (d1 + d2 + d3);
    end.down = down + (step / 6) * (d1 + 2 * d2 + 2 * d3 + law.downRate);
    end.angle = angle + step * turning + ((step * step) / 6) * (t1 + t2 + t3);
    end.turning = turning + (step / 6) * (t1 + 2 * t2 + 2 * t3 + law.turningRate);
    look(end.time, end.place, end.angle, end.turning);
  }

  /** Least of what must not fall below nothing within a step; what does so first ends it. */
  function margin(): number {
    let least = kinksLeft > 0 ? kink - end.angle : 1;
    if (twists) least = Math.min(least, end.turning);
    if (mode === "flying") return Math.min(least, -law.cut);
    least = Math.min(least, law.cut);
    if (!hasContact) return least;
    if (mode === "pressing") return Math.min(least, end.down);
    if (mode === "lifting") return Math.min(least, -end.down);
    return Math.min(least, law.contact, 1 - law.contact);
  }

  /** The laws that hold for a bit on the bottom, from where it is going. */
  function modeAtBottom(cut: number): MarchMode {
    if (!hasContact || now.down > 0) return "pressing";
    if (now.down < 0) return "lifting";
    const share = balance(cut);
    return share > 1 ? "pressing" : share < 0 ? "lifting" : "held";
  }

  /** Puts the state right after a change and takes up the laws that hold from here. */
  function settle(): void {
    const { cut, contact } = here;
    record.event();
    if (kinksLeft > 0 && now.angle >= kink - 1e-12) {
      kink += delayAngle;
      kinksLeft--;
    }
    if (twists && now.turning <= 0) {
      now.turning = 0;
      if (mode !== "flying") {
        now.down = 0;
        mode = "standing";
        return;
      }
    }
    if (mode === "flying") {
      if (cut >= 0) mode = modeAtBottom(cut);
    } else if (cut <= 0) {
      mode = "flying";
    } else if (hasContact) {
      if (mode === "held") {
        if (contact >= 1) mode = "pressing";
        else if (contact <= 0) mode = "lifting";
      } else if ((mode === "pressing" && now.down <= 0) || (mode === "lifting" && now.down >= 0)) {
        now.down = 0;
        mode = modeAtBottom(cut);
      }
    }
  }

  function step(): void {
    let size = Math.min(timeStep, duration - now.time);
    tryStep(size);
    const changes = margin() < 0;
    if (changes) {
      let [low, high] = [0, size];
      for (let n = 0; n < HALVINGS; n++) {
        size = (low + high) / 2;
        tryStep(size);
        if (margin() < 0) high = size;
        else low = size;
      }
      tryStep(high);
    }
    record.keep(now, here, mode, end.time);
    Object.assign(now, end);
    if (changes) {
      write();
      settle();
    }
    write();
  }

  /** The twist of a standing bit's string grows evenly until it is what cut and contact can bear. */
  function stand(): void {
    look(now.time, now.place, now.angle, now.turning);
    here.cut = law.cut;
    here.contact = hasContact ? Math.min(1, Math.max(0, balance(law.cut))) : 0;
    const bears = wings * (here.cut + contactFriction * contactLoad * here.contact);
    const breaksAt = now.time + (bears - stringTorque(now.time, now.angle, 0)) / scaledSpeed;
    const until = Math.min(duration, Math.max(now.time, breaksAt));
    record.keep(now, here, mode, until);
    now.time = until;
    mode = modeAtBottom(here.cut);
    write();
  }

  const record = marchRecord(input, { steadySpeed, steadyCut });
  look(now.time, now.place, now.angle, now.turning);
  mode = law.cut < 0 ? "flying" : modeAtBottom(law.cut);
  write();
  let finished = true;
  for (let steps = 1; now.time < duration; steps++) {
    if (shouldStop && steps % ASK_EVERY === 0 && shouldStop()) {
      finished = false;
      break;
    }
    if (mode === "standing") stand();
    else step();
  }
  record.last(now, here, mode);
  return record.result({ finished, duration: now.time });
}
