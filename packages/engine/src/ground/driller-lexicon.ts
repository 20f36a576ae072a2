import type { Hazard } from "./hazard.ts";

/** What a driller says of the state of the ground. */
export type GroundModifier =
  | "hard"
  | "soft"
  | "broken"
  | "weathered"
  | "decomposed"
  | "cemented"
  | "loose"
  | "dense"
  | "sticky"
  | "cavernous"
  | "water-bearing";

/** What a word of a driller's log does in the phrase. */
export type LexiconEntry =
  /** A material. One that yields gives way to any plainer name; one without `rockId` names no rock at all. */
  | {
      readonly does: "name";
      readonly rockId?: string;
      readonly yields?: boolean;
      /** The name leaves doubt about the rock. */
      readonly guess?: boolean;
      /** Never the bed itself while anything else is named. */
      readonly lesser?: boolean;
      /** The rock meant when the phrase calls it soft or hard. */
      readonly soft?: string;
      readonly hard?: string;
      readonly modifier?: GroundModifier;
      readonly hazards?: readonly Hazard[];
    }
  /** An adjective made from a material: it is there, but is not the bed. */
  | { readonly does: "tinge"; readonly rockId: string }
  | { readonly does: "modify"; readonly modifier: GroundModifier; readonly hazards?: readonly Hazard[] }
  /** Makes the names after it lesser parts. */
  | { readonly does: "lessen" }
  /** Makes the name after it the bed, whatever stood before. */
  | { readonly does: "promote" }
  /** Opens what the named material lies in or on: the names after it count in full again. */
  | { readonly does: "set-in" }
  /** Shape of a lesser part: bands, veins, pieces. Makes the name before it a lesser part. */
  | { readonly does: "shape"; readonly hard?: boolean }
  | { readonly does: "deny" }
  | { readonly does: "doubt" }
  | { readonly does: "refer-back" }
  | { readonly does: "warn"; readonly hazards: readonly Hazard[] }
  | { readonly does: "nothing" };

type Name = Omit<Extract<LexiconEntry, { does: "name" }>, "does" | "rockId">;

const name = (rockId: string | undefined, more: Name = {}): LexiconEntry =>
  rockId === undefined ? { does: "name", ...more } : { does: "name", rockId, ...more };
const guess = (rockId: string, more: Name = {}): LexiconEntry => name(rockId, { guess: true, ...more });
const vague = (rockId?: string, more: Name = {}): LexiconEntry => name(rockId, { yields: true, guess: true, ...more });
const tinge = (rockId: string): LexiconEntry => ({ does: "tinge", rockId });
const modify = (modifier: GroundModifier, hazards: readonly Hazard[] = []): LexiconEntry => ({
  does: "modify",
  modifier,
  hazards,
});

/**
 * Words of drillers' logs, with the short forms in use; several spellings in one row. Plurals need no row of their own.
 * Colours, sizes and all other words are passed over.
 */
export const lexiconRows: readonly (readonly [LexiconEntry, string])[] = [
  [name("topsoil"), "topsoil|top soil|soil|subsoil|loam|ts|tpsl|dirt"],
  [vague("topsoil"), "humus|earth|turf"],
  [vague("fill", { hazards: ["impact", "caving"] }), "fill|made ground|rubble|backfill|roadbase|road base"],
  [name("peat"), "peat|muck|peat moss"],
  [name("clay"), "clay|cly|cl|pipe clay|fat clay|blue clay|clay loam"],
  [guess("clay"), "mud|fire clay|fireclay"],
  [guess("clay", { modifier: "sticky", hazards: ["sticky"] }), "gumbo"],
  [guess("clay", { hazards: ["swelling", "sticky"] }), "bentonite"],
  [name("silt"), "silt|slt|loess"],
  [name("sand"), "sand|sd|sds|sugar sand"],
  [guess("sand", { modifier: "loose", hazards: ["caving"] }), "quicksand|quick sand|running sand|heaving sand"],
  [vague("sand", { hazards: ["impact"] }), "alluvium|alluvial|outwash|drift|wash"],
  [name("gravel"), "gravel|gravels|gvl|grvl|grav|pea gravel|river gravel|wash gravel|shingle"],
  [name("gravel"), "pebble|pebbles|pbl|pbls"],
  [guess("gravel"), "granite wash|grit|river run"],
  [vague("gravel"), "stone|stones|colluvium|slopewash|slope wash|scree|talus"],
  [name("boulders"), "boulder|boulders|bldr|bldrs|cobble|cobbles|cobb|cobs|floater|floaters|hardheads"],
  [vague("boulders"), "rocks"],
  [name("till"), "till|glacial till|boulder clay|diamicton|moraine"],
  [guess("till"), "hardpan|hard pan"],
  [guess("soft-limestone"), "marl|caliche|calcrete|coquina|shell rock|shellrock"],

  [name("claystone"), "claystone|clay stone|clst"],
  [name("mudstone"), "mudstone|mud stone|mdst|mudrock|mud rock"],
  [guess("mudstone"), "red bed|red beds|redbed|redbeds|argillite"],
  [name("shale"), "shale|sh|shle"],
  [guess("claystone"), "soapstone|soap stone"],
  [name("siltstone"), "siltstone|silt stone|slst|sltst|sltstn"],
  [
    name("sandstone", { soft: "friable-sandstone", hard: "hard-sandstone" }),
    "sandstone|sand stone|sandrock|sand rock|ss|sst|sdst|s.s.",
  ],
  [guess("hard-sandstone"), "greywacke|graywacke|arkose|ganister"],
  [name("conglomerate"), "conglomerate|cgl|congl|puddingstone"],
  [guess("conglomerate"), "breccia"],
  [name("chert"), "chert|flint|cht|chrt"],
  [guess("chert"), "jasper"],
  [name("limestone", { soft: "soft-limestone" }), "limestone|lime stone|lime|limerock|lime rock|ls|lst|lmst|lms"],
  [name("soft-limestone"), "chalk|chk"],
  [name("dolomite"), "dolomite|dolostone|dol|dolo"],
  [guess("dolomite"), "magnesian limestone"],
  [name("gypsum"), "gypsum|gyp"],
  [name("anhydrite"), "anhydrite|anhy"],
  [name("rock-salt"), "salt|rock salt|halite"],
  [name("coal"), "coal|lignite|lig"],

  [name("granite"), "granite|grnt|granodiorite|granodorite|adamellite|monzonite|syenite"],
  [guess("granite"), "diorite|tonalite|pegmatite|aplite"],
  [name("dacite"), "dacite|rhyolite|rhyodacite|rhyro dacite|porphyry|ignimbrite|felsite|trachyte"],
  [guess("dacite"), "andesite"],
  [vague("dacite"), "volcanic|volcanics|lava"],
  [name("tuff"), "tuff|ashstone|volcanic ash|ash|pumice|cinders"],
  [name("basalt"), "basalt|bslt|dolerite|diabase|gabbro|trap rock|traprock|trap"],
  [guess("basalt"), "blue metal|bluestone|greenstone"],
  [name("gneiss"), "gneiss"],
  [name("schist"), "schist|phyllite|mica schist"],
  [name("slate"), "slate"],
  [name("marble"), "marble"],
  [name("quartzite"), "quartzite|qtzt|qtzite"],
  [guess("quartzite"), "hornfels"],
  [vague("quartzite"), "quartz|qtz|vein quartz|silica"],

  [vague(), "rock|bedrock|bed rock|basement|ground|formation|sediment|sedimentary|overburden|material|deposits"],
  [vague(), "shell|shells|shelly|cap rock|caprock|ledge rock"],
  [vague(undefined, { hazards: ["hard-stringers"] }), "ironstone|iron stone|pyrite"],
  [vague(undefined, { hazards: ["impact"] }), "concrete|asphalt|brick|steel"],

  [tinge("topsoil"), "loamy|earthy"],
  [tinge("clay"), "clayey|clayish|argillaceous|muddy|clyey"],
  [tinge("silt"), "silty|slty|silted"],
  [tinge("sand"), "sandy|sdy|arenaceous"],
  [tinge("gravel"), "gravelly|gravely|gravelley|gvly|grvly|pebbly|stony|stoney|rocky|gritty"],
  [tinge("boulders"), "bouldery|cobbly"],
  [tinge("till"), "tilly"],
  [tinge("peat"), "peaty"],
  [tinge("chert"), "cherty|flinty|chty"],
  [tinge("shale"), "shaly|shaley|shley"],
  [tinge("slate"), "slaty|slatey"],
  [tinge("limestone"), "limy|limey|calcareous|calc"],
  [tinge("soft-limestone"), "chalky|marly"],
  [tinge("dolomite"), "dolomitic"],
  [tinge("gypsum"), "gypsiferous"],
  [tinge("coal"), "coaly|lignitic"],
  [tinge("granite"), "granitic"],
  [tinge("dacite"), "dacitic|porphyritic|rhyolitic|porphry"],
  [tinge("basalt"), "basaltic"],
  [tinge("tuff"), "tuffaceous|ashy"],
  [tinge("schist"), "schistose|micaceous"],
  [tinge("quartzite"), "quartzitic|quartzose|quartzie"],

  [modify("hard"), "hard|harder|hd|tough|tight|strong|firm|dense rock|massive|solid|drills hard|well indurated"],
  [modify("soft"), "soft|softer|sft|weak|friable|crumbly|punky|rotten|drills easy|poorly cemented"],
  [
    modify("broken", ["caving", "lost-circulation"]),
    "broken|brkn|fractured|fracture|fractures|frac|fract|fracd|fracturing|shattered|sheared|faulted|faulty|fault|jointed|creviced|crevices|seamy",
  ],
  [modify("weathered"), "weathered|wthrd|weathering|wx|altered"],
  [
    modify("decomposed"),
    "decomposed|decomposing|deco|decomp|completely weathered|extremely weathered|highly decomposed|d.g.|residual",
  ],
  [modify("cemented"), "cemented|cmtd|cemtd|cem|well cemented|indurated|consolidated"],
  [modify("cemented", ["abrasion"]), "siliceous|silicious|silicified"],
  [modify("loose", ["caving"]), "loose|unconsolidated|running|heaving|caving|caves|sloughing"],
  [modify("dense"), "dense|compact|compacted|packed|hard packed|hardpacked|stiff|very stiff"],
  [modify("sticky", ["sticky"]), "sticky|puggy|plastic|gummy|tacky|high plasticity|swelling"],
  [
    modify("cavernous", ["lost-circulation"]),
    "cavernous|cavern|cavity|cavities|cave|void|voids|vugs|vuggy|honeycombed|solution channels|karst",
  ],
  [
    modify("water-bearing"),
    "water bearing|waterbearing|water supply|aquifer|saturated|wb|w.b.|water zone|waterzone|seepage|soak|makes water|wet",
  ],

  [
    { does: "lessen" },
    "with|w|wth|some|trace|traces|tr|minor|little|few|occasional|frequent|rare|containing|contains|includes|including|interbedded with|less|more|increasing|decreasing|plus|odd|scattered|streaked with",
  ],
  [{ does: "promote" }, "mainly|mostly|chiefly|predominantly|predominately|primarily"],
  [{ does: "set-in" }, "in|within|on|over|overlying|above"],
  [
    { does: "shape" },
    "band|banding|vein|veining|veinlet|seam|lens|lenses|layer|streak|parting|bed|interbed|intrusion|nodule|fragment|frag|frags|piece|inclusion|shard|chip|grain|grained|sized|clasts|clast|phenocryst|xenoliths|horizon",
  ],
  [{ does: "shape", hard: true }, "stringer|ledge|strks|shell bands"],
  [{ does: "deny" }, "no|not|without|nil|none|w/o"],
  [{ does: "doubt" }, "possibly|possible|probable|probably|maybe|could be|may be|perhaps|?"],
  [{ does: "refer-back" }, "as above|ditto|same|same as above|as before"],
  [
    { does: "warn", hazards: ["lost-circulation"] },
    "lost circulation|lost returns|mud loss|water loss|fluid loss|loses water|no returns",
  ],
  [{ does: "warn", hazards: ["swelling"] }, "squeezing|squeezes|swells"],
  [{ does: "warn", hazards: ["gas"] }, "gas|gassy|methane"],
  // Words that would otherwise be read as a material or a state.
  [
    { does: "nothing" },
    "slightly weathered|medium hard|med hard|moderately hard|mod hard|medium soft|moderately strong|fresh|not cored|no core|non plastic|low plasticity|medium plasticity|hard water|salt water|saltwater|drilling mud|gravel pack",
  ],
  [name("clay", { lesser: true }), "clayband|clay bands"],
  [vague("gravel", { lesser: true, hazards: ["impact"] }), "rock fragment|rock pieces|rock piece"],
];

const LEXICON: ReadonlyMap<string, LexiconEntry> = new Map(
  lexiconRows.flatMap(([entry, spellings]) => spellings.split("|").map((spelling) => [spelling, entry] as const)),
);

/** The names of rocks long enough to be told apart when one letter is wrong. */
export const MATERIAL_NAMES: readonly string[] = [...LEXICON]
  .filter(([spelling, entry]) => entry.does === "name" && entry.rockId !== undefined && /^[a-z]{5,}$/.test(spelling))
  .map(([spelling]) => spelling);

/** The most words one entry of the lexicon spans. */
export const LONGEST_ENTRY = Math.max(...[...LEXICON.keys()].map((spelling) => spelling.split(" ").length));

/**
 * The entry for a word or a run of words in lower case, single spaces between them; a plural is found by its singular.
 *
 * @source (c) words in use in drillers' logs
 */
export function lexiconEntry(words: string): LexiconEntry | undefined {
  const found = LEXICON.get(words);
  if (found) return found;
  // Short forms such as "ss" and "ls" must not lose their last letter.
  return words.length >= 4 && words.endsWith("s") ? LEXICON.get(words.slice(0, -1)) : undefined;
}
