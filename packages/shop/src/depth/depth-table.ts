import { FEED_DEAD_BAND } from "@bitwright/engine";
import type { DepthStudy } from "@bitwright/traveler";
import type { Figures } from "../summary/figures.ts";
import { textTable } from "../summary/text-table.ts";

/** Joints that a terminal shows without scrolling far. */
const MOST_JOINTS = 40;

/** Joint by joint as lines of text; of a long string every so many joints, and both ends of each bed. */
export function depthTable({ joints }: DepthStudy, figures: Figures): string[] {
  const step = Math.ceil(joints.length / MOST_JOINTS);
  const shown = joints.filter(
    ({ bed }, at) => at % step === 0 || bed !== joints[at - 1]?.bed || bed !== joints[at + 1]?.bed,
  );
  const column = (values: readonly number[]) => figures.column("force", values);
  const wanted = column(shown.map(({ targetWeight }) => targetWeight));
  const hanging = column(shown.map(({ hangingWeight }) => hangingWeight));
  const feed = column(shown.map(({ feedForce }) => Math.abs(feedForce)));
  const gauge = figures.column(
    "pressure",
    shown.map(({ gaugeReading = 0 }) => gaugeReading),
  );
  const time = (seconds: number | undefined) => (seconds === undefined ? "no end" : figures.of("duration", seconds));
  const rows = shown.map(({ depth, bed, feedForce, gaugeReading, neutralPoint, rate, cleaning, verdict }, at) => [
    figures.of("depth", depth),
    bed,
    wanted[at],
    hanging[at],
    Math.abs(feedForce) < FEED_DEAD_BAND ? "let it hang" : `${feedForce > 0 ? "push" : "hold back"} ${feed[at]}`,
    gaugeReading === undefined ? "-" : gauge[at],
    neutralPoint === undefined ? "all pressed" : figures.of("depth", neutralPoint),
    verdict,
    figures.of("rate", rate),
    cleaning ? figures.of("rate", cleaning.rateCeiling.mid) : "-",
    cleaning ? time(cleaning.chipsUpTime) : "-",
    cleaning ? time(cleaning.circulationTime) : "-",
  ]);
  const heads = ["bit at", "ground", "wanted", "string", "feed", "gauge", "neutral", "rig", "rate", "cleans"];
  return textTable([...heads, "chips up", "before connection"], rows, [1, 4, 7]);
}
