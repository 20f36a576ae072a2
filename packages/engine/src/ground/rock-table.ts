import { crystallineRocks } from "./crystalline-rocks.ts";
import { nearestWords } from "./edit-distance.ts";
import type { Rock } from "./rock.ts";
import { sedimentaryRocks } from "./sedimentary-rocks.ts";
import { soils } from "./soils.ts";

/**
 * All classes of ground the program knows, soft cover first. The ends of each band are those of its source; the middle
 * is chosen here, near the geometric middle, since the sources give ranges only.
 *
 * @source (b) mostly recalled; each property carries its own in `sources` of its entry
 */
export const rockTable: readonly Rock[] = [...soils, ...sedimentaryRocks, ...crystallineRocks];

/** The ids of the rock table, in its order. */
export const rockIds: readonly string[] = rockTable.map((rock) => rock.id);

/**
 * The rock that has this id: of the shop's own first, else of the table.
 *
 * @throws RangeError when there is none; the message lists ids of like spelling
 * @source (d) look-up in the table
 * @example
 * rockById("shale").name // → "shale"
 */
export function rockById(id: string, shopRocks: readonly Rock[] = []): Rock {
  const rock = shopRocks.find((own) => own.id === id) ?? byId.get(id);
  if (!rock) {
    const near = nearestWords(id, [...shopRocks.map((own) => own.id), ...rockIds]);
    throw new RangeError(`rockId "${id}" is not in the rock table; near it: ${near.join(", ")}`);
  }
  return rock;
}

const byId: ReadonlyMap<string, Rock> = new Map(rockTable.map((rock) => [rock.id, rock]));
