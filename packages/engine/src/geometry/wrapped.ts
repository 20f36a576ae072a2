const TURN = 2 * Math.PI;

/**
 * The same direction in 0 to 2π, 2π itself left out.
 *
 * θ - 2π ⌊θ/2π⌋.
 *
 * @returns angle [rad]
 * @source (d) geometry
 * @example
 * wrapped(-Math.PI / 2) // → 4.712389
 */
export function wrapped(angle: number): number {
  const rest = angle - TURN * Math.floor(angle / TURN);
  // An angle a hair under 0 rounds to a whole turn, or stays where it is.
  return rest >= 0 && rest < TURN ? rest : 0;
}
