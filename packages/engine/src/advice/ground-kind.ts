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

/** The rocks of the table. */
const BY_ID: Readonly<Record<string, GroundKind>> = {
  topsoil: "soil",
  fill: "soil",
  peat: "soil",
  clay: "soil",
  silt: "soil",
  till: "soil",
  sand: "sand",
  gravel: "gravel",
  boulders: "gravel",
  claystone: "shale",
  mudstone: "shale",
  shale: "shale",
  siltstone: "shale",
  "friable-sandstone": "sandstone",
  sandstone: "sandstone",
  "hard-sandstone": "sandstone",
  conglomerate: "gravel",
  chert: "chert",
  "soft-limestone": "carbonate",
  limestone: "carbonate",
  dolomite: "carbonate",
  gypsum: "evaporite",
  anhydrite: "evaporite",
  "rock-salt": "evaporite",
  coal: "coal",
  granite: "crystalline",
  dacite: "crystalline",
  tuff: "tuff",
  basalt: "crystalline",
  gneiss: "crystalline",
  schist: "slate",
  slate: "slate",
  marble: "carbonate",
  quartzite: "chert",
  unnamed: "unknown",
};

/**
 * Confined strength under which an unlisted rock from melt counts as weak volcanic rock, and one changed by heat as
 * slate [Pa].
 *
 * @source (c) common practice, no source
 */
export const WEAK_CRYSTALLINE_STRENGTH = 60e6;

/**
 * The kind of ground a bed is for the choice of a tool: by the id of its rock; a shop's own rock by its family, its
 * hazards and its strength.
 *
 * @source (c) common practice, no source: how the trade sorts ground by tool
 */
export function groundKind(bed: Pick<AdvisedBed, "confinedStrength" | "hazards" | "rock">): GroundKind {
  return BY_ID[bed.rock.id] ?? kindByFamily(bed);
}

/** Ids of a shop's own rocks nobody foresaw, so the hazards tell stones and sand from mud. */
function kindByFamily({
  rock,
  hazards,
  confinedStrength,
}: Pick<AdvisedBed, "confinedStrength" | "hazards" | "rock">): GroundKind {
  const has = (hazard: AdvisedBed["hazards"][number]) => hazards.includes(hazard);
  const weak = confinedStrength.mid < WEAK_CRYSTALLINE_STRENGTH;
  switch (rock.family) {
    case "soil":
      if (!(has("caving") && has("abrasion"))) return "soil";
      return has("impact") ? "gravel" : "sand";
    case "clastic":
      if (!has("silica-dust")) return "shale";
      return has("impact") ? "gravel" : "sandstone";
    case "carbonate":
      return "carbonate";
    case "evaporite":
      return "evaporite";
    case "organic":
      return "coal";
    case "siliceous":
      return "chert";
    case "igneous":
      return weak ? "tuff" : "crystalline";
    case "metamorphic":
      return weak ? "slate" : "crystalline";
  }
}
