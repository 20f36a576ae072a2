import { FEED_DEAD_BAND, STANDARD_GRAVITY } from "@bitwright/engine";
import type { Workup } from "@bitwright/traveler";
import type { Figures } from "./figures.ts";
import { returnTable } from "./return-table.ts";
import { textTable, wrapped } from "./text-table.ts";

type WorkedString = NonNullable<Workup["string"]>;
type JointInBed = WorkedString["joints"][number];

/** What the rig does with its feed, joint by joint. */
export function stringLines({ string, inquiry }: Workup, figures: Figures, width: number): string[] {
  if (!string) return ["Nothing is drilled with this bit, so no string is worked out."];
  const { neutralPoint, balanceDepth, targetWeight } = string;
  const gauge = inquiry.inquiry.rig.gaugeForceFactor !== undefined;
  const shown = jointsToShow(string.joints);
  const wanted = figures.column(
    "force",
    shown.map((joint) => joint.targetWeight),
  );
  const hanging = figures.column(
    "force",
    shown.map((joint) => joint.hangingWeight),
  );
  const feed = figures.column(
    "force",
    shown.map((joint) => Math.abs(joint.feedForce)),
  );
  const readings = figures.column(
    "pressure",
    shown.map((joint) => joint.gaugeReading ?? 0),
  );
  const rows = shown.map(({ depth, bed, feedForce, gaugeReading }, at) => [
    figures.of("depth", depth),
    bed,
    wanted[at],
    hanging[at],
    actOf(feedForce),
    Math.abs(feedForce) < FEED_DEAD_BAND ? "-" : feed[at],
    ...(gauge ? [gaugeReading === undefined ? "-" : readings[at]] : []),
  ]);
  const heads = [
    "bit at",
    "ground",
    "weight wanted",
    "string in fluid",
    "feed",
    "by",
    ...(gauge ? ["feed gauge"] : []),
  ];
  const most = `The largest weight wanted, ${figures.of("force", targetWeight)}, is the string's own`;
  const words = [
    ...(shown.length < string.joints.length
      ? [
          `${shown.length} of ${string.joints.length} joints are shown: both ends of each bed and of each act of the feed.`,
        ]
      : []),
    balanceDepth < inquiry.inquiry.bitHole.to
      ? `${most} from ${figures.of("depth", balanceDepth)}; deeper, hold back.`
      : `${most} only from ${figures.of("depth", balanceDepth)}, which this hole does not reach.`,
    neutralPoint.part === "above the string"
      ? "With that weight at the end of the hole the whole string is pressed; it has no neutral point."
      : `With that weight at the end of the hole the neutral point is ${figures.of("depth", neutralPoint.aboveBit)} above the bit, in the ${neutralPoint.part}.`,
    ...collarWords(string, figures),
    ...torqueWords(string, inquiry.inquiry.rig.torque, figures),
    ...motionWords(string, figures),
  ];
  return [...textTable(heads, rows, [1, 4]), "", ...words.flatMap((line) => wrapped(line, width))];
}

/** What collars would do: make up what lacks at the start, or carry all the weight. */
function collarWords({ collar, collarsForWeight }: WorkedString, figures: Figures): string[] {
  return [
    ...(collar
      ? [
          `Where the bit starts, rig and string lack ${figures.of("force", collar.missingWeight)}: ${figures.of("depth", collar.collarLength)} of collar in the place of pipe would give it.`,
        ]
      : []),
    ...(collarsForWeight
      ? [
          `${figures.of("depth", collarsForWeight.collarLength)} of collar of ${figures.of("linear mass", collarsForWeight.collarWeight / STANDARD_GRAVITY)} would carry that weight alone, with the neutral point in it.`,
        ]
      : []),
  ];
}

/** Torque of the hardest bed beside what rig, joint and pipe bear. */
function torqueWords(string: WorkedString, rigTorque: number, figures: Figures): string[] {
  const { hardestBed, drillingTorque, makeUpTorque: row, torsionalYield } = string;
  const torque = (si: number) => figures.of("torque", si);
  const pipe = torsionalYield === undefined ? "" : `; new pipe bears ${torque(torsionalYield)}`;
  const reach =
    row && rigTorque < row.least
      ? " The rig does not reach that: the joint goes on making up in the hole. Use tongs with a gauge."
      : "";
  return [
    `The most torque is asked for in ${hardestBed}, ${torque(drillingTorque)}; the rig has ${torque(rigTorque)}${pipe}.`,
    ...(row
      ? [
          `Make the bit up to ${torque(row.normal)}, at least ${torque(row.least)} and at most ${torque(row.most)} (${row.thread} on a sub of ${figures.of("diameter", row.subDiameter)}).${reach}`,
        ]
      : []),
  ];
}

/** How far the string winds up, and where its joints whip. */
function motionWords({ twist, criticalSpeed }: WorkedString, figures: Figures): string[] {
  return [
    ...(twist === undefined
      ? []
      : [`At the torque of the hardest bed the string winds up by ${figures.of("angle", twist)}.`]),
    ...(criticalSpeed === undefined
      ? []
      : [`A joint of this pipe whips at about ${figures.of("rotary speed", criticalSpeed)} (recalled, in air).`]),
  ];
}

/** What the rig does at a joint, in the words of the card. */
function actOf(feedForce: number): string {
  if (Math.abs(feedForce) < FEED_DEAD_BAND) return "let it hang";
  return feedForce > 0 ? "push" : "hold back";
}

/** Joints that an office reads in one go. */
const MOST_JOINTS = 40;

/** All joints, or of a long string both ends of each bed and each act of the feed, and evenly spread ones between. */
function jointsToShow(joints: readonly JointInBed[]): readonly JointInBed[] {
  if (joints.length <= MOST_JOINTS) return joints;
  const step = Math.ceil(joints.length / MOST_JOINTS);
  const differ = (one: JointInBed, other: JointInBed | undefined) =>
    other === undefined || one.bed !== other.bed || actOf(one.feedForce) !== actOf(other.feedForce);
  return joints.filter(
    (joint, at) => at % step === 0 || differ(joint, joints[at - 1]) || differ(joint, joints[at + 1]),
  );
}

/** What the flow loses, lifts and cools. */
export function flowLines({ cut, flow, bit, inquiry }: Workup, figures: Figures): string[] {
  if (cut.beds.length === 0) return ["Nothing is drilled with this bit, so no flow is asked for."];
  const { circuit, leastAirFlow, foam } = flow;
  const ports = `${bit.ports.count} ports of ${figures.of("diameter", bit.ports.diameter)}`;
  if (!circuit) {
    return [
      ports,
      ...(leastAirFlow === undefined
        ? []
        : [`Least free air at the site to lift the chips: ${figures.of("air flow", leastAirFlow)}.`]),
      ...(foam
        ? [
            `The foam is ${figures.of("share", foam.bottomQuality)} gas at the bottom and ${figures.of("share", foam.topQuality)} at the top, where it rises at ${figures.of("uphole speed", foam.topSpeed)}; ${figures.of("pressure", foam.bottomPressure)} of absolute pressure stand on the bottom.`,
          ]
        : []),
    ];
  }
  const { cleaning, coolingFlow } = circuit;
  const coolingSet = inquiry.overrides.limits?.coolingFlow;
  const cooling =
    coolingSet === undefined
      ? `practice asks for ${figures.range("flow", coolingFlow.low, coolingFlow.high)}`
      : `the limit set by hand asks for ${figures.of("flow", coolingSet)}`;
  return [
    ...textTable(
      ["stretch", "length", "speed", "loss", "flow is"],
      [
        ...circuit.losses.map(({ name, part, length, speed, pressureDrop, regime }) => [
          part === "annulus" ? `annulus, ${name}` : name,
          figures.of("depth", length),
          part === "annulus" ? figures.of("uphole speed", speed) : figures.of("speed", speed),
          figures.of("pressure", pressureDrop),
          regime,
        ]),
        [ports, "-", figures.of("speed", circuit.ports.speed), figures.of("pressure", circuit.ports.pressureDrop), "-"],
        ["pump", "-", "-", figures.of("pressure", circuit.pumpPressure), "-"],
      ],
      [0, 4],
    ),
    "",
    `Flow ${figures.of("flow", flow.flow)}; ${cooling} to cool the bit.`,
    ...(flow.byFunnel
      ? [
          `By a funnel alone the pump pressure lies anywhere from ${figures.range("pressure", flow.byFunnel.pumpPressure.low, flow.byFunnel.pumpPressure.high)}, what the flow cleans from ${figures.range("rate", flow.byFunnel.rateCeiling.low, flow.byFunnel.rateCeiling.high)}.`,
        ]
      : []),
    `Uphole ${figures.of("uphole speed", circuit.slowestAnnulus.speed)} at the slowest, ${circuit.slowestAnnulus.name}; chips fall back at ${figures.range("uphole speed", cleaning.slip.speed.low, cleaning.slip.speed.high)}.`,
    `The flow cleans up to ${figures.range("rate", cleaning.rateCeiling.low, cleaning.rateCeiling.high)}.`,
    "",
    ...returnTable(flow.beds, figures),
  ];
}
