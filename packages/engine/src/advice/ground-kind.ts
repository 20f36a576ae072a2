import type { RockFamily } from "../ground/index.ts";
import type { AdvisedBed } from "./advised-bed.ts";

/**
 * Ground as the choice of a tool sees it:
 * - `soil`: clay, silt, topsoil and other ground that cuts like soap
 * - `sand`: loose sand that runs into the hole
 * - `gravel`: loose or cemented stones: gravel, boulders, conglomerate
 * - `shale`: claystone, mudstone, shale, siltstone
 * - `carbonate`: limestone, dolomite, chalk, marble
 * - `sandstone`: cemented sand
 * - `evaporite`: gypsum, anhydrite, salt
 * - `coal`
 * - `tuff`: weak volcanic rock
 * - `slate`: slate and schist, which split along their leaves
 * - `chert`: chert, flint, vein quartz and quartzite
 * - `crystalline`: granite, gneiss, basalt and their like
 * - `unknown`: the log does not say
 */
export type GroundKind =
  | "soil"
  | "sand"
  | "gravel"
  | "shale"
  | "carbonate"
  | "sandstone"
  | "evaporite"
  | "coal"
  | "tuff"
  | "slate"
  | "chert"
  | "crystalline"
  | "unknown";

/** Rocks of the table whose family alone would put them in the wrong kind. */
const BY_ID: Readonly<Record<string, GroundKind>> = {
  sand: "sand",
  gravel: "gravel",
  boulders: "gravel",
  peat: "soil",
  "friable-sandstone": "sandstone",
  sandstone: "sandstone",
  "hard-sandstone": "sandstone",
  conglomerate: "gravel",
  tuff: "tuff",
  marble: "carbonate",
  slate: "slate",
  schist: "slate",
  quartzite: "chert",
};

const BY_FAMILY: Readonly<Record<RockFamily, GroundKind>> = {
  soil: "soil",
  clastic: "shale",
  carbonate: "carbonate",
  evaporite: "evaporite",
  organic: "coal",
  siliceous: "chert",
  igneous: "crystalline",
  metamorphic: "crystalline",
};

/**
 * The kind of ground a bed is for the choice of a tool: by the id of its rock, else by family, where hazards tell stones
 * and sand from mud.
 *
 * @source (c) common practice, no source: how the trade sorts ground by tool
 */
export function groundKind({ rock, hazards }: Pick<AdvisedBed, "hazards" | "rock">): GroundKind {
  if (!rock) return "unknown";
  const known = BY_ID[rock.id];
  if (known) return known;
  // A shop's own rocks have ids nobody foresaw; among layered ground what hurts the bit tells most.
  if (rock.family === "clastic" && hazards.includes("silica-dust") && rock.id !== "siltstone") {
    return hazards.includes("impact") ? "gravel" : "sandstone";
  }
  return BY_FAMILY[rock.family];
}
