import { type BitProfile, type EdgeTrace, type Engagement, uncutRings } from "@bitwright/engine";
import { formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { DRAWING_ROOM, drawingSheet, holeInBoth, rampStep, type SheetTitle, scaleThatFits } from "../sheet/index.ts";
import type { PagePoint, Svg } from "../svg/index.ts";
import { flatLayers } from "./flat-layers.ts";
import { type PlaneLine, passingPlane } from "./passing-plane.ts";
import { planeView, uncutHatch } from "./plane-view.ts";
import { drawnProfile } from "./profile-line.ts";
import { shareBars } from "./share-bars.ts";
import { tipLine, tipsOf } from "./tips.ts";
import { type UncutRings, uncutWords } from "./uncut-words.ts";

/** What the profile drawing is made from. */
export interface ProfileDrawingInput {
  readonly trace: EdgeTrace;
  /** What is cut at one advance; without it the cutters are drawn alone. */
  readonly engagement?: Engagement;
  /** What the colours and bars show; the area of cut where not given. */
  readonly share?: {
    /** What is shared out, in words: `cutting work`. */
    readonly of: string;
    /** For each cutter, in any one unit [unit of your choice]. */
    readonly perCutter: ArrayLike<number>;
  };
  readonly title: SheetTitle;
  readonly units: UnitSystem;
  /** What to write at each cutter; its number in the layout, from 1, where not given. */
  readonly numbers?: readonly string[];
  /** The profile the tips were laid on, with its zones; a line through the tips stands in for it where not known. */
  readonly profile?: BitProfile;
  /** Start of every id in the drawing; `profile` where not given. */
  readonly id?: string;
}

/** Rings narrower than this are thinner than the lines of the drawing and left to the findings [m]. */
const NARROWEST_DRAWN = 5e-5;
const MM_PER_M = 1000;
/** Room kept for the parts under the main picture [mm]. */
const BARS = 24;
const LAYERS = 30;
const LAYERS_WITH_AXES = LAYERS + 19;
/** Room around the main picture: for the axis name, gauge name, zones and numbers [mm]. */
const AROUND = { left: 5, right: 16, above: 7, below: 15 } as const;

/**
 * All cutters turned into one plane as a sheet of SVG, with the crescent each of them cuts at this advance, where and
 * how much; under it the same cut laid flat and every cutter's share.
 */
export function profileDrawing(input: ProfileDrawingInput): string {
  const { trace, engagement, title, units } = input;
  const { layout, holeRadius } = trace;
  const id = input.id ?? "profile";
  const advance = engagement?.advance ?? 0;
  const cuts = engagement !== undefined && advance > 0;
  const plane = passingPlane(trace, cuts ? engagement : undefined);
  const numbers = layout.cutters.map((_, k) => input.numbers?.[k] ?? String(k + 1));
  const uncut = uncutRings(layout).filter(([from, to]) => to - from >= NARROWEST_DRAWN);
  const drawn = input.profile ? drawnProfile(input.profile) : undefined;
  const below = cuts ? BARS + LAYERS_WITH_AXES : 0;
  const room = {
    width: DRAWING_ROOM.right - DRAWING_ROOM.left - AROUND.left - AROUND.right,
    height: DRAWING_ROOM.bottom - DRAWING_ROOM.top - below - AROUND.above - AROUND.below,
  };
  const heights = plane.outlines.flatMap(({ height }) => height);
  const lowest = Math.max(...heights, 0);
  const highest = Math.min(...heights, 0);
  const tall = (lowest - highest) * MM_PER_M;
  const scale = scaleThatFits({ width: holeRadius * MM_PER_M, height: tall, room });
  const perMetre = scale.factor * MM_PER_M;
  const left = DRAWING_ROOM.left + AROUND.left;
  const top = DRAWING_ROOM.top + AROUND.above;
  const toPage = (radius: number, height: number): PagePoint => [
    left + radius * perMetre,
    top + (height - highest) * perMetre,
  ];
  const spare = room.height - tall * scale.factor;
  const pictureBottom = top + tall * scale.factor + AROUND.below + (cuts ? 0.15 * spare : 0);
  const shares = sharesOf(input);
  const rampTop = niceTop(Math.max(...shares, 0));
  const steps = shares.map((share) => rampStep(rampTop > 0 ? share / rampTop : 0));
  const tips = tipsOf(layout.cutters, plane, toPage);
  const holeText = title.hole ?? formatQuantity("diameter", layout.holeDiameter, units);
  const advanceText = formatQuantity("advance", advance, units, { figures: 3 });
  const parts: Svg[] = planeView({
    plane,
    tips,
    steps,
    numbers,
    uncut,
    zones: drawn?.zones ?? [],
    profile: drawn ? raised(drawn.line, advance / 2) : tipLine(layout.cutters, plane, tips),
    holeRadius,
    toPage,
    top,
    bottom: pictureBottom,
    id,
  });
  if (cuts) {
    const foot = DRAWING_ROOM.bottom - 5;
    const layersBottom = foot - BARS - 10 - 0.15 * spare;
    parts.push(
      ...flatLayers({
        plane,
        advance,
        holeRadius,
        steps,
        numbers,
        uncut,
        left,
        bottom: layersBottom,
        perMetre,
        height: LAYERS + 0.5 * spare,
        advanceText,
        id,
      }),
      shareBars({
        of: input.share?.of ?? "area of cut",
        shares,
        steps,
        numbers,
        rampTop,
        left: DRAWING_ROOM.left + AROUND.left,
        right: DRAWING_ROOM.right,
        foot,
        height: BARS - 12,
      }),
    );
  }
  const sub = subheading(cuts ? advanceText : undefined, uncut, units, drawn ? "the profile" : "the line of tips");
  return drawingSheet({
    id,
    heading: "Profile and cut",
    subheading: sub,
    description: `All ${layout.cutters.length} cutters turned into one half-plane of a hole of ${holeText}, the bit axis at the left, the bottom of the hole down. ${sub.join(" ")}`,
    title,
    view: "cutters in one plane",
    units: units === "field" ? "mm; hole in inches, mm" : "mm",
    hole: holeInBoth(holeText, layout.holeDiameter),
    scale,
    definitions: [uncutHatch(id)],
    drawing: parts,
  });
}

function sharesOf({ engagement, share, trace }: ProfileDrawingInput): number[] {
  const count = trace.layout.cutters.length;
  const values = Array.from(share?.perCutter ?? engagement?.area ?? new Array<number>(count).fill(0));
  if (values.length !== count)
    throw new RangeError(`a share is needed for each of ${count} cutters, got ${values.length}`);
  const total = values.reduce((sum, value) => sum + value, 0);
  return values.map((value) => (total > 0 ? value / total : 0));
}

/** The top of the ramp: the largest share, rounded up so that the five steps have plain ends. */
function niceTop(largest: number): number {
  const tops = [0.01, 0.02, 0.025, 0.05, 0.075, 0.1, 0.125, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.75, 1];
  return tops.find((top) => largest <= top + 1e-12) ?? 1;
}

/** The profile where the cutters pass on average, half an advance above where the bit stands at the end of its turn. */
function raised({ radius, height }: PlaneLine, by: number): PlaneLine {
  return { radius, height: height.map((at) => at - by) };
}

function subheading(advanceText: string | undefined, uncut: UncutRings, units: UnitSystem, dashed: string): string[] {
  const first =
    advanceText === undefined
      ? `All cutters turned into one plane; dashed: ${dashed}.`
      : `All cutters in one plane of the hole at ${advanceText}. Filled: what each takes; dashed: ${dashed}.`;
  return [first, uncutWords(uncut, units)];
}
