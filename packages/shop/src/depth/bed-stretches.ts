import type { DepthStudy } from "@bitwright/traveler";
import { type ChartPanel, onPanel, panelLine } from "../chart/index.ts";
import { HALO, SOFT_INK, TYPE, textAt, textWidth } from "../sheet/index.ts";
import { element, linePath, type Svg } from "../svg/index.ts";

type Joint = DepthStudy["joints"][number];

/** Joints of one bed, from the top down. */
function bedsOf(joints: readonly Joint[]): Joint[][] {
  return joints.reduce<Joint[][]>((beds, joint) => {
    const last = beds.at(-1);
    if (last?.[0]?.bed === joint.bed) last.push(joint);
    else beds.push([joint]);
    return beds;
  }, []);
}

/** A figure of the joints as one line of points for each bed. */
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

/** How a line of a sheet by depth looks. */
export interface LineLook {
  readonly stroke: string;
  readonly class: string;
  readonly dash?: string;
}

/** The lines of all beds; a bed with one joint has a dot. */
export function bedLinesOn(panel: ChartPanel, beds: readonly [number, number][][], look: LineLook): Svg[] {
  return beds.flatMap((points) => {
    if (points.length !== 1) return [panelLine(panel, points, { ...look, width: 0.6 })];
    const [cx, cy] = onPanel(panel, ...points[0]);
    return [element("circle", { class: look.class, cx, cy, r: 0.7, fill: look.stroke })];
  });
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
