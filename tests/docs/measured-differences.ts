/** How a source was used: read, recalled from memory, derived from stated inputs, or common practice. */
type Kind = "read" | "recalled" | "derived" | "common practice";

/** A group of comparisons of the reference tests, and the outside figure they are held against. */
export interface ComparedGroup {
  /** Which comparisons: matched against `file > describe > test`. */
  readonly of: RegExp;
  readonly what: string;
  readonly source: string;
  readonly kind: Kind | `${Kind}, ${Kind}`;
}

const BOTH_BOOKS = "Mavko, Mukerji & Dvorkin tables 7.14.2-3; Zhang, Applied Petroleum Geomechanics";

/**
 * The figure tables of docs/guide/checks.md by name, each a list of groups. Every comparison of the reference files
 * below belongs to the first group that it matches.
 */
export const COMPARED: Readonly<Record<string, readonly ComparedGroup[]>> = {
  "cutter geometry": [
    {
      of: /^cutter-geometry > wear flat .* > at /,
      what: "wear flat: area, volume, width, length",
      source: "exact geometry, the volume also by slicing",
      kind: "derived",
    },
    {
      of: /^cutter-geometry > wear flat .* > by wear grade/,
      what: "flat width and lost face for grades 0 to 8",
      source: "exact geometry of a circle",
      kind: "derived",
    },
    {
      of: /^cutter-geometry > wear flat .* > from a caliper/,
      what: "worn height and grade from a caliper on the flat",
      source: "exact geometry, printed to three figures",
      kind: "derived",
    },
    { of: /^cutter-geometry > groove/, what: "groove of one cutter", source: "exact geometry", kind: "derived" },
    {
      of: /^cutter-geometry > face seen/,
      what: "face seen along its travel",
      source: "projection of a disc",
      kind: "derived",
    },
    {
      of: /^cutter-geometry > chamfer/,
      what: "bevel height, ratio of normal to drag on the bevel",
      source: "exact geometry; the ratio printed to three figures",
      kind: "derived",
    },
    {
      of: /^cutter-geometry > sizes/,
      what: "millimetres behind the trade codes",
      source: "trade custom, no source; typed in, not computed",
      kind: "common practice",
    },
  ],
  "cutter and bit in closed form": [
    {
      of: /^cutting > single cutter/,
      what: "forces, E, S of one cutter, sharp and blunt",
      source: "form: Detournay & Defourny 1992",
      kind: "recalled, derived",
    },
    {
      of: /^cutting > whole bit/,
      what: "weight, torque, E, S of a bit; friction numbers",
      source: "form: Detournay & Defourny 1992",
      kind: "recalled, derived",
    },
    {
      of: /^cutting > three phases/,
      what: "corner points and two points of the three phases",
      source: "Detournay, Richard & Shepherd 2008, eqs 12, 25, 28, 33, from a public transcription",
      kind: "read, derived",
    },
    {
      of: /^cutting > mechanical specific energy/,
      what: "MSE whole, by parts and from the friction number",
      source: "form: Teale 1965; Pessier & Fear 1992, SPE 24584",
      kind: "read, derived",
    },
    {
      of: /^cutting > (advance and rate|side force)/,
      what: "advance from rate; side force of cutters on a circle",
      source: "algebra",
      kind: "derived",
    },
    {
      of: /^heat > /,
      what: "heat flux, temperature and critical load of a flat",
      source: "form: Glowka & Stone 1985",
      kind: "recalled, derived",
    },
  ],
  "published regression": [
    {
      of: /^laboratory-regression > published/,
      what: "rate, threshold weight and rate at two worked points",
      source: "Akhtarmanesh, Atashnezhad, Hareland & Al Dushaishi 2021",
      kind: "read, derived",
    },
  ],
  layout: [
    {
      of: /^layout > radii of equal area/,
      what: "radii of rings of equal area",
      source: "exact geometry",
      kind: "derived",
    },
    {
      of: /^layout > a tilted face/,
      what: "a tilted face in its frame",
      source: "projection of a disc",
      kind: "derived",
    },
  ],
  gauge: [
    {
      of: /^gauge > .*below nominal/,
      what: "tolerance below nominal, in inches",
      source: "API Spec 7-1 in trade reprints; typed in, not computed",
      kind: "read",
    },
    {
      of: /^gauge > .*millimetres/,
      what: "the same as printed in millimetres",
      source: "the reprints, rounded to 0.01 mm",
      kind: "read",
    },
    {
      of: /^gauge > .*between these limits/,
      what: "diameters a gauge may be ground to",
      source: "algebra on the tolerance",
      kind: "derived",
    },
  ],
  "strength from logs": [
    {
      of: /^logs > strength from (sonic|Young|porosity).* > .*(sandstone-gulf-weak|modulus-sandstone'|porosity-sandstone')/,
      what: "three of the sandstone relations",
      source: "Chang, Zoback & Khaksar 2006 table 1",
      kind: "recalled",
    },
    {
      of: /^logs > strength from (sonic|Young|porosity).* > .*porosity-sandstone-clean/,
      what: "porosity, clean sandstone",
      source: "Vernik, Bruno & Bovberg 1993, seen second-hand",
      kind: "recalled",
    },
    { of: /^logs > strength from sonic/, what: "the other sonic relations", source: BOTH_BOOKS, kind: "read" },
    { of: /^logs > strength from Young/, what: "the other modulus relations", source: BOTH_BOOKS, kind: "read" },
    { of: /^logs > strength from porosity/, what: "the other porosity relations", source: BOTH_BOOKS, kind: "read" },
    {
      of: /^logs > strength from wave speed/,
      what: "wave speed, limestone at 5 km/s",
      source: "Najibi et al. 2015 in Zhang",
      kind: "recalled",
    },
    {
      of: /^logs > strength from cohesion/,
      what: "strength from cohesion and friction, five rocks",
      source: "Goodman 1989 table 3.3, seen second-hand; the strength by the circle",
      kind: "recalled, derived",
    },
  ],
  cost: [
    {
      of: /^cost > cost of a length/,
      what: "cost of a length of hole, worked example",
      source: "teaching page; relation standard (Bourgoyne et al. 1986, recalled)",
      kind: "read",
    },
    {
      of: /^cost > a water well/,
      what: "cost of a water well with PDC and with a hammer; fuel; trips and connections",
      source: "algebra on planning values",
      kind: "derived",
    },
    {
      of: /^cost > where a bit begins to pay/,
      what: "rate and footage from which a bit pays beside a hammer",
      source: "algebra of the cost of a length",
      kind: "derived",
    },
    {
      of: /^cost > a rework/,
      what: "a rework beside a new bit, and the most it is worth",
      source: "algebra on planning values",
      kind: "derived",
    },
    {
      of: /^cost > fuel for each length/,
      what: "fuel for each length of a hammer and of a bit on mud",
      source: "algebra on planning values",
      kind: "derived",
    },
    {
      of: /^cost > best point/,
      what: "where to pull a bit whose rate halves on the way, and what the hole costs then",
      source: "the optimum found apart; the integral of the rate by hand",
      kind: "derived",
    },
  ],
  "rock table": [
    {
      of: /^rock-strength > confined strength/,
      what: "confined strength",
      source: "form: Caicedo, Calhoun & Ewy 2005",
      kind: "recalled, derived",
    },
    {
      of: /^(rock-strength > abrasivity|advice > which ground)/,
      what: "rock abrasivity index",
      source: "Plinninger 2010",
      kind: "recalled",
    },
    {
      of: /^rock-strength > strength ranges/,
      what: "strength ranges of ten rocks",
      source:
        "teaching list after Attewell & Farmer 1976 and a dam-foundation table, second-hand; typed in, not computed",
      kind: "read",
    },
  ],
  ports: [
    {
      of: /^flow > ports > (area of one port|constant of the field form)/,
      what: "area of a port; constant of the field form",
      source: "exact geometry and units",
      kind: "derived",
    },
    {
      of: /^flow > ports > area of seven/,
      what: "area of seven 9/32 in ports",
      source: "exact geometry; a trade table misprints it",
      kind: "derived",
    },
    {
      of: /^flow > ports > three 13/,
      what: "three 13/32 in ports: drop, power, impact, speed",
      source: "Bourgoyne et al. 1986, ch. 4",
      kind: "recalled",
    },
    {
      of: /^flow > ports > the same ports/,
      what: "the same with a coefficient of 1.03",
      source: "Ramsey 1983, Warren 1989 in Robinson, AADE-10-DF-HO-26",
      kind: "read",
    },
    {
      of: /^flow > ports > hydraulic power of/,
      what: "hydraulic power",
      source: "teaching page; Lapeyrouse 2002",
      kind: "read",
    },
    {
      of: /^flow > ports > water-well/,
      what: "water-well ports: drop, speed, power, impact",
      source: "unit algebra",
      kind: "derived",
    },
    {
      of: /^flow > ports > jet sizing/,
      what: "best split from two pump readings",
      source: "worked example of the Lapeyrouse 2002 kind; its printed flows are wrong and not reproduced",
      kind: "read, derived",
    },
  ],
  "pipe and annulus": [
    {
      of: /^flow > .*of water > Colebrook/,
      what: "Colebrook friction factor",
      source: "solved to convergence; documented value of a general fluid library",
      kind: "derived",
    },
    {
      of: /^flow > .*of water > (150 gpm|state|annulus)/,
      what: "water in pipe and annulus",
      source: "the same friction factor, worked apart; some printed to three figures",
      kind: "derived",
    },
    {
      of: /^flow > .*of water > smooth/,
      what: "smooth pipe form",
      source: "Guo & Liu 2011",
      kind: "read, derived",
    },
    {
      of: /^flow > .*of water > quick/,
      what: "quick bound of the annulus",
      source: "teaching page; rule in Lapeyrouse 2002",
      kind: "read",
    },
    {
      of: /^flow > .*of mud > power law/,
      what: "power-law mud in an annulus",
      source: "Guo & Liu 2011, worked example",
      kind: "read",
    },
    {
      of: /^flow > .*of mud > critical/,
      what: "critical Reynolds number",
      source: "Guo & Liu 2011",
      kind: "read",
    },
    {
      of: /^flow > .*of mud > (yield-stress|exact|pipe at)/,
      what: "yield-stress mud, engineering form and exact",
      source: "API RP 13D form; integration of the profile",
      kind: "recalled, derived",
    },
    {
      of: /^flow > .*of mud > the same mud as Bingham/,
      what: "Bingham mud",
      source: "Guo & Liu 2011 forms",
      kind: "read, derived",
    },
    {
      of: /^flow > .*of mud > regime/,
      what: "regime of a power-law mud",
      source: "teaching page, speeds worked again",
      kind: "read, derived",
    },
    {
      of: /^flow > (uphole speed and flow > (530|400|flow for|slim)|annuli cover)/,
      what: "uphole speed, flow and volume of an annulus",
      source: "teaching page; a drilling book; a core-drilling trade sheet",
      kind: "read",
    },
    {
      of: /^flow > uphole speed and flow > flow card/,
      what: "flow card of ten hole and pipe pairs",
      source: "geometry",
      kind: "derived",
    },
  ],
  "slip and cuttings": [
    {
      of: /^flow > slip of chips > constant/,
      what: "constant of the Stokes form",
      source: "unit algebra",
      kind: "derived",
    },
    {
      of: /^flow > slip of chips > by sphericity/,
      what: "slip by sphericity",
      source: "Guo & Liu 2011, worked example",
      kind: "read",
    },
    {
      of: /^flow > slip of chips > by Chien/,
      what: "slip by Chien, viscous form",
      source: "Lapeyrouse 2002",
      kind: "recalled",
    },
    {
      of: /^flow > slip of chips > of a/,
      what: "slip by Moore and by Chien in water and in a thin mud",
      source: "both forms, figures rounded to 1 ft/min",
      kind: "recalled, derived",
    },
    {
      of: /^flow > cuttings/,
      what: "share of cuttings, rate at 5 %",
      source: "Pigott form, constant derived again",
      kind: "recalled, derived",
    },
  ],
  air: [
    {
      of: /^air > air > (weight|fuel|flow at 6000)/,
      what: "weight of air, flow at 6,000 ft, compressor fuel",
      source: "Lyons, Guo & Seidel 2001",
      kind: "read",
    },
    {
      of: /^air > air > flow at 4000/,
      what: "flow at 4,000 ft",
      source: "the same, from a chart reading",
      kind: "read, derived",
    },
    {
      of: /^air > air > kinetic/,
      what: "kinetic pressure of standard air at 3,000 ft/min",
      source: "Angel 1957",
      kind: "recalled",
    },
    { of: /^air > air > surface/, what: "speed in an annulus", source: "unit algebra", kind: "derived" },
    {
      of: /^air > least flow of air > agrees/,
      what: "least flow at 2,400 ft",
      source: "chart of Lyons, Guo & Seidel 2001",
      kind: "read",
    },
    {
      of: /^air > least flow of air > /,
      what: "least flow of four hole and pipe pairs to 1,000 ft",
      source: "the same criterion summed apart; no published table at hand",
      kind: "derived",
    },
  ],
  string: [
    {
      of: /^string > pipe and collars > .*without joints/,
      what: "pipe without joints",
      source: "sizes: API 5DP, RP 7G; the printed constant 2.67 stands for 2.6725",
      kind: "recalled, derived",
    },
    {
      of: /^string > pipe and collars > .*collar/,
      what: "collars",
      source: "the same constant",
      kind: "derived",
    },
    {
      of: /^string > pipe and collars > .*joints/,
      what: "2 3/8 in pipe with its joints",
      source: "Lyons, Guo & Seidel 2001",
      kind: "read",
    },
    {
      of: /^string > buoyancy and balance > 350,000/,
      what: "buoyancy in 13 ppg",
      source: "Lyons, Carter & Lapeyrouse 2012, p. 24",
      kind: "read",
    },
    {
      of: /^string > buoyancy and balance/,
      what: "other factors, collars needed, balance depth, pull-down",
      source: "algebra",
      kind: "derived",
    },
    { of: /^string > turning/, what: "rotary power, advance of a turn", source: "algebra", kind: "derived" },
  ],
  "power and fuel": [
    {
      of: /^power > .*350 psi: power/,
      what: "compressor of 750 to 1,150 cfm at 350 psi",
      source: "adiabatic compression in two stages, worked apart from the program",
      kind: "derived",
    },
    {
      of: /^power > .*350 psi: fuel/,
      what: "fuel of its engine",
      source: "the same at 0.36 lb/(hp·h), 7.1 lb/gal",
      kind: "derived, common practice",
    },
    {
      of: /^power > .*fuel of one horsepower/,
      what: "fuel of one horsepower, 0.051 gal/h",
      source: "no source",
      kind: "common practice",
    },
    {
      of: /^power > .*torsional yield/,
      what: "torsional yield of new pipe, five sizes",
      source: "table of API RP 7G, to 10 lbf·ft",
      kind: "recalled",
    },
    {
      of: /^power > .*a mud rig/,
      what: "load of an engine in one bed",
      source: "the sum by hand in horsepower",
      kind: "derived",
    },
  ],
  connections: [
    {
      of: /^string > regular connections > .*sizes/,
      what: "sizes of four threads; taper over the pin",
      source: "API Spec 7-1, 7-2; typed in, only the taper is computed",
      kind: "recalled",
    },
    {
      of: /^string > regular connections/,
      what: "make-up torques of thirteen subs",
      source: "API RP 7G in a trade reprint; typed in, not computed",
      kind: "read",
    },
  ],
  rings: [
    {
      of: /^gauge > a bit in its ring > undergauge/,
      what: "undergauge over the gap in a ring, by first order and exactly",
      source: "circles and chords",
      kind: "derived",
    },
    {
      of: /^gauge > a bit in its ring > a gap/,
      what: "a gap of 0.100 in on three wings",
      source: "the two-thirds rule, in inches and sixteenths",
      kind: "derived",
    },
    {
      of: /^gauge > a bit in its ring > rings/,
      what: "bores of the go and no-go rings of 6 1/4 in",
      source: "ring practice of API Spec 7",
      kind: "recalled",
    },
    {
      of: /^gauge > a bit in its ring > grows/,
      what: "growth by 20 °F, printed to one figure",
      source: "6.5 millionths for each °F",
      kind: "derived",
    },
  ],
  "practice figures": [
    {
      of: /^advice > weight, speed and break-in/,
      what: "weight, speed, break-in and rates of the trade",
      source: "no source",
      kind: "common practice",
    },
    {
      of: /^advice > the bit/,
      what: "back rake near 10°",
      source: "ASME J. Energy Resour. Technol. 114:323, 1992, abstract",
      kind: "read",
    },
  ],
};

/** Comparisons that need open data, which may not be at hand; the page tells of them in words. */
export const TOLD_IN_WORDS = /^laboratory-regression > against the open rows/;

/** Reference files whose comparisons are gathered; those that need open data, or take long, hold tables of their own. */
export const COMPARING_FILES = [
  "advice",
  "air",
  "cost",
  "cutter-geometry",
  "cutting",
  "flow",
  "gauge",
  "heat",
  "laboratory-regression",
  "layout",
  "logs",
  "power",
  "rock-strength",
  "string",
] as const;
