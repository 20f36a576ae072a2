import type { AdvisedBed } from "./advised-bed.ts";
import { groundKind } from "./ground-kind.ts";

/** Whether a bed is loose or soft cover: tools, casing and abrasivity speak of it otherwise than of rock. */
export function isOverburden(bed: AdvisedBed): boolean {
  const kind = groundKind(bed);
  if (kind === "soil" || kind === "sand") return true;
  // Conglomerate counts as gravel for the bit, but it is rock.
  return kind === "gravel" && bed.rock.family !== "clastic";
}
