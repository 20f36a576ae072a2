/** Beyond this many wings not every order is tried [-]: (c) our choice, 6! orders of the six others. */
const MOST_PERMUTED = 7;

/** Every order of `of`, in the order of its members. */
function orders(of: readonly number[]): number[][] {
  if (of.length <= 1) return [[...of]];
  return of.flatMap((first) => orders(of.filter((each) => each !== first)).map((rest) => [first, ...rest]));
}

/**
 * Orders in which wings 0 to n - 1 can take turns, wing 0 first. Past seven wings only even steps around the bit.
 *
 * @source (d) search of all orders
 */
export function wingOrders(wings: number): number[][] {
  const others = Array.from({ length: wings - 1 }, (_, at) => at + 1);
  if (wings <= MOST_PERMUTED) return orders(others).map((rest) => [0, ...rest]);
  return others.flatMap((step) => {
    const round = Array.from({ length: wings }, (_, at) => (at * step) % wings);
    return new Set(round).size === wings ? [round] : [];
  });
}

/**
 * Which wing takes each station, from the centre outward, when wings take turns in `order` and each holds only so many:
 * turns are counted from the outside in, so that the wings with fewer cutters are the ones that stop short of the centre.
 *
 * @throws RangeError when the wings hold fewer than there are stations
 * @source (d) bookkeeping
 */
export function wingsOfStations({
  order,
  holds,
  stations,
}: {
  /** The wings in the order they take turns, from the centre outward. */
  readonly order: readonly number[];
  /** Stations each wing holds, by wing. */
  readonly holds: readonly number[];
  /** Number of stations [-]. */
  readonly stations: number;
}): number[] {
  const left = [...holds];
  const room = left.reduce((sum, each) => sum + each, 0);
  if (room < stations) throw new RangeError(`stations must be at most ${room}, got ${stations}`);
  const taken: number[] = [];
  const turns = order.length;
  // The turn that the outermost station falls on, so that with equal wings the innermost falls on the first of the order.
  let turn = (stations - 1) % turns;
  while (taken.length < stations) {
    const wing = order[turn] ?? 0;
    turn = (turn + turns - 1) % turns;
    if ((left[wing] ?? 0) > 0) {
      left[wing] = (left[wing] ?? 0) - 1;
      taken.push(wing);
    }
  }
  return taken.reverse();
}
