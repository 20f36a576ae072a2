import {
  commonPractice,
  type FeedGauge,
  type Finding,
  gravestFirst,
  type JointRow,
  REGULAR_CONNECTIONS,
  type RegularThread,
  type StringStation as StringAtOneWeight,
  stringStation as stringAtOneWeight,
  stringMode,
} from "@bitwright/engine";
import type { ResolvedRig, ResolvedTraveler } from "../document/resolved-traveler.ts";
import type { BedCut } from "./cut-station.ts";
import { sectionsOf, stringDrag, stringOf } from "./string-of.ts";

/** One joint of the way down, with the bed it stands in and the weight wanted there. */
interface JointInBed extends JointRow {
  readonly bed: string;
  /** Weight wanted on the bit in that bed [N]. */
  readonly targetWeight: number;
}

/** What weight is really on the bit. */
export interface StringStation extends Omit<StringAtOneWeight, "rows"> {
  /** Weight that the neutral point and the depth of balance are reckoned for: the largest wanted in any bed [N]. */
  readonly targetWeight: number;
  /** Bed whose torque at the top of the string is the largest. */
  readonly hardestBed: string;
  /** That torque, the drag of the string counted [N·m]. */
  readonly drillingTorque: number;
  /** Joint by joint over the stretch that the bit drills. */
  readonly joints: readonly JointInBed[];
}

/** Works the string up: joint by joint with each bed's own weight, and as a whole with the largest of them. */
export function stringStation(traveler: ResolvedTraveler, beds: readonly BedCut[]): StringStation | undefined {
  const { inquiry } = traveler;
  const { rig, fluid, bitHole } = inquiry;
  if (beds.length === 0) return undefined;
  const gauge = gaugeOf(rig);
  const common = {
    makeUp: stringOf(inquiry),
    fluidDensity: fluid.density,
    topHeadWeight: rig.topHeadWeight,
    drag: rig.drag,
    limits: { pullDownRating: rig.pullDown, hoistRating: rig.hoist, ...(gauge ? { gauge } : {}) },
  };
  const targetWeight = Math.max(...beds.map(({ weight }) => weight));
  const hardest = beds.reduce((most, bed) => (bed.drilling.bit.torque > most.drilling.bit.torque ? bed : most));
  const drillingTorque = hardest.drilling.bit.torque + stringDrag(inquiry);
  const thread = threadOf(inquiry.pipe.connection);
  const { subDiameter, yieldStrength } = inquiry.pipe;
  const { rows: _, ...whole } = stringAtOneWeight({
    ...common,
    depth: bitHole.to,
    targetWeight,
    bitDiameter: bitHole.diameter,
    torqueRating: rig.torque,
    drillingTorque,
    yieldStrength,
    ...(subDiameter === undefined ? {} : { subDiameter }),
    rotarySpeed: hardest.rotarySpeed,
    startDepth: Math.min(...beds.map(({ bed }) => bed.top)),
    torsionalStiffness: stringMode(sectionsOf(inquiry, bitHole.to)).torsionalStiffness,
    pipeSize: { outerDiameter: inquiry.pipe.outsideDiameter, bore: inquiry.pipe.bore },
    ...(thread ? { thread } : {}),
  });
  const perBed = beds.map(({ bed, weight }) => {
    const down = stringAtOneWeight({
      ...common,
      depth: bed.bottom,
      targetWeight: weight,
      bitDiameter: bitHole.diameter,
    });
    const joints = down.rows
      .filter(({ depth }) => depth > bed.top)
      .map((row) => ({ ...row, bed: bed.name, targetWeight: weight }));
    const ofJoints = joints.flatMap(({ joint }) =>
      down.working.filter(({ name }) => name.endsWith(`, joint ${joint}`)),
    );
    return { joints, working: ofJoints.map((one) => ({ ...one, name: `${one.name}, ${bed.name}` })) };
  });
  return {
    ...whole,
    targetWeight,
    hardestBed: hardest.bed.name,
    drillingTorque,
    findings: gravestFirst([...whole.findings, ...unlistedThread(inquiry.pipe.connection, thread)]),
    joints: perBed.flatMap(({ joints }) => joints),
    // The feed is shown for the weight of each bed: its workings take the place of those for the largest weight.
    working: [
      ...whole.working.filter(({ name }) => !/, joint \d+$/.test(name)),
      ...perBed.flatMap(({ working }) => working),
    ],
  };
}

/** A connection that the list of make-up torques does not have. */
function unlistedThread(connection: string | undefined, thread: RegularThread | undefined): Finding[] {
  if (connection === undefined || thread !== undefined) return [];
  return [
    {
      code: "string.make-up-not-listed",
      severity: "note",
      where: `bit joint, ${connection}`,
      message:
        "The list of make-up torques has regular threads only. Ask the maker of this connection, and hold the torque of drilling against what he says.",
      source: commonPractice(),
    },
  ];
}

/** The feed gauge, where its force for each unit of pressure is known. */
function gaugeOf({ gaugeForceFactor, holdBackGaugeForceFactor, feedGaugeZero }: ResolvedRig): FeedGauge | undefined {
  if (gaugeForceFactor === undefined) return undefined;
  const holdBack = holdBackGaugeForceFactor === undefined ? {} : { holdBackGaugeForceFactor };
  return { gaugeForceFactor, zeroReading: feedGaugeZero, ...holdBack };
}

/** The regular thread a connection's name means, whether written with a hyphen or a space. */
function threadOf(connection: string | undefined): RegularThread | undefined {
  const plain = (name: string) =>
    name
      .toUpperCase()
      .replace(/[\s-]+/g, " ")
      .trim();
  return REGULAR_CONNECTIONS.map(({ thread }) => thread).find(
    (thread) => connection !== undefined && plain(thread) === plain(connection),
  );
}
