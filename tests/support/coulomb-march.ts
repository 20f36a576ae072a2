/**
 * The bit on its string marched by other means, in SI: small even steps of first order, friction by the rule of impulses
 * (what the contact may bear in a step takes speed down to nothing and no further), the hole bottom a plain list of
 * places by angle. It shares no code, no scaling and no order of steps with the program.
 */
export interface CoulombBit {
  readonly inertia: number;
  readonly stiffness: number;
  readonly mass: number;
  readonly radius: number;
  readonly zeta: number;
  readonly epsilon: number;
  readonly sigma: number;
  readonly flatLength: number;
  readonly friction: number;
  readonly blades: number;
  readonly weight: number;
}

export interface CoulombRun {
  /** Share of the second half in which the bit stands. */
  readonly stands: number;
  /** Share in which it is off bottom. */
  readonly flies: number;
  readonly meanTorque: number;
  /** Fastest turning over that of the top. */
  readonly fastest: number;
}

export function coulombMarch(
  bit: CoulombBit,
  run: { topSpeed: number; seconds: number; step: number; kick: { down: number; turning: number } },
): CoulombRun {
  const { inertia, stiffness, mass, radius, zeta, epsilon, sigma, flatLength, friction, blades, weight } = bit;
  const { topSpeed, seconds, step, kick } = run;
  const steps = Math.ceil(seconds / step);
  const angles = new Float64Array(steps + 1);
  const bottom = new Float64Array(steps + 1);
  const onFlats = blades * radius * sigma * flatLength;
  const flatTorque = (friction * radius * onFlats) / 2;
  const perTurn = (weight - onFlats) / (zeta * epsilon * radius);
  const perRadian = perTurn / (2 * Math.PI);
  let angle = -(((epsilon * radius ** 2) / 2) * perTurn + flatTorque) / stiffness;
  let place = 0;
  let down = perRadian * topSpeed * kick.down;
  let turning = topSpeed * kick.turning;
  let at = 0;
  let [seen, stood, flown, torques, fastest] = [0, 0, 0, 0, 0];
  angles[0] = angle;
  for (let k = 0; k < steps; k++) {
    const wanted = angle - (2 * Math.PI) / blades;
    let under = perRadian * (wanted - angles[0]);
    if (wanted > angles[0]) {
      while (at + 1 <= k && angles[at + 1] < wanted) at++;
      const turned = angles[at + 1] - angles[at];
      under = turned > 0 ? bottom[at] + ((bottom[at + 1] - bottom[at]) * (wanted - angles[at])) / turned : bottom[at];
    }
    const cut = blades * (place - under);
    const flying = cut < 0;
    const cutWeight = flying ? 0 : zeta * epsilon * radius * cut;
    const free = down + (step * (weight - cutWeight)) / mass;
    down = !flying && free > 0 ? Math.max(0, free - (step * onFlats) / mass) : free;
    const bearing = ((free - down) * mass) / (step * onFlats);
    const torque = flying ? 0 : ((epsilon * radius ** 2) / 2) * cut + flatTorque * bearing;
    const spring = stiffness * (topSpeed * k * step - angle);
    turning += (step * (spring - torque)) / inertia;
    const stands = turning <= 0;
    if (stands) {
      turning = 0;
      if (!flying) down = 0;
    }
    place += step * down;
    angle += step * turning;
    angles[k + 1] = angle;
    bottom[k + 1] = flying ? Math.max(under, place) : place;
    if (k < steps / 2) continue;
    seen++;
    if (stands && !flying) stood++;
    if (flying) flown++;
    torques += stands && !flying ? spring : torque;
    fastest = Math.max(fastest, turning / topSpeed);
  }
  return { stands: stood / seen, flies: flown / seen, meanTorque: torques / seen, fastest };
}
