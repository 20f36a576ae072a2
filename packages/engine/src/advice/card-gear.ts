import type { Band } from "../quantity/index.ts";
import type { CardFigure } from "./card-figure.ts";

/** How hard the bit is to be made up. */
export interface CardMakeUpInput {
  readonly thread: string;
  /** Normal make-up torque of its joint [N·m]. */
  readonly normal: number;
  /** Least make-up torque of its joint [N·m]. */
  readonly least: number;
  /** Largest torque of the rig [N·m]. */
  readonly torqueRating: number;
}

/** What the rig burns. */
export interface CardFuelInput {
  /** While drilling, the least and the most of any bed [m³/s]. */
  readonly fuelFlow: Pick<Band, "low" | "high">;
  /** Of the whole hole [m³]. */
  readonly fuelVolume: number;
}

/** Make-up of the bit as the card prints it. */
export interface CardMakeUp {
  readonly thread: string;
  readonly torque: CardFigure;
  /** The rig's own torque where it does not reach the least; the joint then makes up in the hole. */
  readonly short?: CardFigure;
}

/** Fuel as the card prints it. */
export interface CardFuel {
  readonly drilling: CardFigure;
  readonly hole: CardFigure;
}

/** How hard to make the bit up, and whether the rig can. */
export function cardMakeUp({ thread, normal, least, torqueRating }: CardMakeUpInput): CardMakeUp {
  const short = torqueRating < least ? { short: { kind: "torque", value: torqueRating } as const } : {};
  return { thread, torque: { kind: "torque", value: normal }, ...short };
}

/** What is burnt while drilling and for the whole hole. */
export function cardFuel({ fuelFlow: { low, high }, fuelVolume }: CardFuelInput): CardFuel {
  return { drilling: { kind: "fuel flow", value: low, to: high }, hole: { kind: "volume", value: fuelVolume } };
}
