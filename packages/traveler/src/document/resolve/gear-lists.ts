import {
  commonPractice,
  DRILL_PIPES,
  JOINT_LENGTHS,
  jointedPipeWeight,
  RATED_RIGS,
  type RatedRig,
  REGULAR_CONNECTIONS,
  RIG_CLASSES,
  type RigClass,
  type Source,
  STANDARD_GRAVITY,
} from "@bitwright/engine";

/**
 * The engine's lists of gear as a traveler picks from them: each with an id to write down, a class of rig with the low
 * side of its range, because nothing may be promised that the rig cannot do.
 */

/** Short name of an entry, fit to be typed: `3 1/2 in, 13.30 lb/ft` is `3-1/2-13.30`. */
function idOf(name: string): string {
  return name.replace(" in, ", "-").replace(" lb/ft", "").replace(/,.*$/, "").replace(/ /g, "-");
}

/** A pipe of the list. */
export interface ListedPipe {
  readonly id: string;
  readonly name: string;
  /** Outside diameter [m]. */
  readonly outsideDiameter: number;
  /** Bore [m]. */
  readonly bore: number;
  /** Mass of a length with its joints [kg/m]. */
  readonly linearMass: number;
  readonly source: Source;
}

/** Pipe that a traveler may name as its preset. */
export const LISTED_PIPE: readonly ListedPipe[] = DRILL_PIPES.map((pipe) => ({
  id: idOf(pipe.name),
  name: pipe.name,
  outsideDiameter: pipe.outerDiameter,
  bore: pipe.bore,
  linearMass: (pipe.jointedWeight ?? jointedPipeWeight(pipe).mid) / STANDARD_GRAVITY,
  source: pipe.source,
}));

/** The joint taken where nobody gave its length. */
export const USUAL_JOINT = JOINT_LENGTHS.find(({ name }) => name === "20 ft") ?? {
  name: "20 ft",
  length: 6.096,
  source: commonPractice(),
};

/** A figure of a listed rig or pump and where it comes from. */
export interface ListedFigure {
  /** The figure [coherent SI unit of the field]. */
  readonly si: number;
  readonly source: Source;
}

/** A rig or a class of rigs of the list; figures it does not have are those of the class usual for the hole. */
export interface ListedRig {
  readonly id: string;
  readonly name: string;
  readonly figures: Readonly<Partial<Record<RigFigure, ListedFigure>>>;
}

/** The figures a rig is known by. */
export type RigFigure =
  | "pullDown"
  | "hoist"
  | "topHeadWeight"
  | "torque"
  | "rotarySpeedMin"
  | "rotarySpeedMax"
  | "enginePower";

/** Share of the hoist's pull that the feed usually pushes [-]: that of the rated rig of the list, 15 of 30 klbf. */
const PULL_DOWN_SHARE = 0.5;
const HALF_THE_HOIST = commonPractice("half the pull of the hoist, as the rated rig of the list has it; no source");
/** Weight of a top head taken where nobody gave it [N]: 1,000 lbf; (c) no source. */
const USUAL_TOP_HEAD = 4448.2216152605;

const [ratedRig] = RATED_RIGS;

function classFigures({ hoist, torque, enginePower, source }: RigClass): Readonly<Record<RigFigure, ListedFigure>> {
  const custom = commonPractice();
  return {
    pullDown: { si: PULL_DOWN_SHARE * hoist.low, source: HALF_THE_HOIST },
    enginePower: { si: enginePower.low, source },
    hoist: { si: hoist.low, source },
    topHeadWeight: { si: USUAL_TOP_HEAD, source: custom },
    torque: { si: torque.low, source },
    rotarySpeedMin: { si: 0, source: ratedRig?.source ?? custom },
    rotarySpeedMax: { si: ratedRig?.rotarySpeed ?? 0, source: ratedRig?.source ?? custom },
  };
}

function ratedFigures({ pullDownRating, hoistRating, rotarySpeed, source }: RatedRig): ListedRig["figures"] {
  return {
    pullDown: { si: pullDownRating, source },
    hoist: { si: hoistRating, source },
    rotarySpeedMin: { si: 0, source },
    rotarySpeedMax: { si: rotarySpeed, source },
  };
}

/** The classes of rigs, each with every figure. */
export const RIG_CLASS_FIGURES = RIG_CLASSES.map((rig) => ({
  id: idOf(rig.name),
  name: `${idOf(rig.name)} rig`,
  figures: classFigures(rig),
}));

/** Rigs that a traveler may name as its preset. */
export const LISTED_RIGS: readonly ListedRig[] = [
  ...RIG_CLASS_FIGURES,
  ...RATED_RIGS.map((rig) => ({ id: idOf(rig.name), name: rig.name, figures: ratedFigures(rig) })),
];

/** The mud pump usual on a class of rigs. */
export interface ListedPump {
  readonly id: string;
  readonly name: string;
  readonly flow: ListedFigure;
  readonly pressureRating: ListedFigure;
}

/** Where a class of rigs names no pump pressure, the low side of the largest class that does [Pa]. */
function pumpPressure({ pumpPressure: own, source }: RigClass): ListedFigure {
  if (own) return { si: own.low, source };
  const below = RIG_CLASSES.flatMap((rig) => (rig.pumpPressure ? [rig.pumpPressure.low] : []));
  return { si: Math.max(...below), source: commonPractice("taken as for the class below, no source") };
}

/** Pumps that a traveler may name as its preset: those of the classes of rigs. */
export const LISTED_PUMPS: readonly ListedPump[] = RIG_CLASSES.map((rig) => ({
  id: idOf(rig.name),
  name: `${idOf(rig.name)} rig's pump (${rig.pump})`,
  flow: { si: rig.flow.low, source: rig.source },
  pressureRating: pumpPressure(rig),
}));

const threadKey = (text: string) => text.toUpperCase().replace(/[^A-Z0-9/]/g, "");

/** The thread of the list that a person's text names (`2-3/8 reg`), else the text as it is. */
export function connectionName(text: string): string {
  return REGULAR_CONNECTIONS.find(({ thread }) => threadKey(thread) === threadKey(text))?.thread ?? text;
}
