import { type CardFigure, cardDepth } from "./card-figure.ts";

/** What the rig has to do with its feed at one depth. */
export interface CardFeedInput {
  /** Depth it holds for [m]. */
  readonly depth: number;
  /** Push of the rig on the string; negative where it holds back [N]. */
  readonly feedForce: number;
  /** Weight wanted on the bit there [N]. */
  readonly targetWeight?: number;
  /** Reading of the feed gauge for it, where the rig's gauge factor is known [Pa]. */
  readonly gaugeReading?: number;
}

/** The feed at one depth as the card prints it. */
export interface CardFeed {
  readonly depth: CardFigure;
  readonly act: "hold back" | "let it hang" | "pull down";
  readonly force: CardFigure;
  /** Weight wanted on the bit. */
  readonly wanted?: CardFigure;
  /** What string and top head give by themselves, drag taken off. */
  readonly string?: CardFigure;
  readonly gauge?: CardFigure;
}

/**
 * Push on the string under which the rig neither pushes nor holds back worth a word [N].
 *
 * @source (c) common practice, no source: about 100 lbf, under what a feed gauge shows
 */
export const FEED_DEAD_BAND = 445;

/** The feed at one depth in the words of the card. */
export function cardFeed({ depth: at, feedForce, targetWeight, gaugeReading }: CardFeedInput): CardFeed {
  const still = Math.abs(feedForce) < FEED_DEAD_BAND;
  return {
    depth: cardDepth(at),
    act: still ? "let it hang" : feedForce > 0 ? "pull down" : "hold back",
    force: { kind: "force", value: Math.abs(feedForce) },
    ...(targetWeight === undefined
      ? {}
      : ({
          wanted: { kind: "force", value: targetWeight },
          string: { kind: "force", value: targetWeight - feedForce },
        } as const)),
    ...(gaugeReading === undefined ? {} : { gauge: { kind: "pressure", value: gaugeReading } as const }),
  };
}
