/** What kind of quantity a figure of the card is; decides the unit it is printed in. */
export type CardFigureKind =
  | "depth"
  | "diameter"
  | "flow"
  | "force"
  | "fuel flow"
  | "length"
  | "pressure"
  | "rate"
  | "rotary speed"
  | "torque"
  | "volume";

/** A figure of the card, or a range of it. */
export interface CardFigure {
  readonly kind: CardFigureKind;
  /** The figure, or the low end of its range [SI unit of the kind]. */
  readonly value: number;
  /** The high end where it is a range [SI unit of the kind]. */
  readonly to?: number;
}

/** A depth as the card prints it. */
export function cardDepth(value: number): CardFigure {
  return { kind: "depth", value };
}
