import type { DepthStudy } from "@bitwright/traveler";
import { type ChartPanel, onPanel } from "../chart/index.ts";
import { HALO, SOFT_INK, TYPE, textAt, textWidth } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";

type Joint = DepthStudy["joints"][number];

/** Joints of one bed, from the top down. */
export function bedsOf(joints: readonly Joint[]): Joint[][] {
  return joints.reduce<Joint[][]>((beds, joint) => {
    const last = beds.at(-1);
    if (last?.[0]?.bed === joint.bed) last.push(joint);
    else beds.push([joint]);
    return beds;
  }, []);
}

/** A figure of the joints as one line for each bed that goes back to where the bed above ended, so that lines meet at the boundary. */
export function stretches(
  joints: readonly Joint[],
  across: (joint: Joint) => number,
  up: (joint: Joint) => number | undefined,
): [number, number][][] {
  return bedsOf(joints).map((bed) =>
    bed.flatMap((joint): [number, number][] => {
      const value = up(joint);
      return value === undefined ? [] : [[across(joint), value]];
    }),
  );
}

/** Boundaries of the beds across a panel; their names where they have room, shortened. */
export function bedMarks(panel: ChartPanel, joints: readonly Joint[], across: (joint: Joint) => number): Svg[] {
  let start = panel.x.from;
  return bedsOf(joints).flatMap((bed) => {
    const [from] = onPanel(panel, start, panel.y.from);
    start = across(bed[bed.length - 1]);
    const [to] = onPanel(panel, start, panel.y.from);
    const name = shortened(bed[0].bed, to - from - 2);
    return [
      element("path", {
        d: linePath([
          [to, panel.top],
          [to, panel.bottom],
        ]),
        stroke: SOFT_INK,
        "stroke-width": 0.2,
        "stroke-dasharray": "1 1",
      }),
      ...(name === "" ? [] : [textAt([from + 1, panel.top + 3.4], name, TYPE.caption, { fill: SOFT_INK, ...HALO })]),
    ];
  });
}

function shortened(name: string, room: number): string {
  if (textWidth(name, TYPE.caption) <= room) return name;
  const letters = [...name];
  while (letters.length > 0 && textWidth(`${letters.join("")}…`, TYPE.caption) > room) letters.pop();
  return letters.length < 3 ? "" : `${letters.join("")}…`;
}
