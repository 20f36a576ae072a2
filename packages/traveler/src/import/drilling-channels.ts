import type { Dimension } from "../quantity/index.ts";
import type { ChannelColumn } from "./channel-table.ts";
import { type ChannelUnit, channelUnit } from "./channel-unit.ts";

/** What a drilling record can hold. */
export type ChannelName = "depth" | "rate" | "weight" | "rotarySpeed" | "torque" | "flow" | "pumpPressure";

export interface ChannelKind {
  readonly channel: ChannelName;
  /** What the trade calls it, for the report. */
  readonly words: string;
  /** Dimensions in which it is a reading of that name; a mass in a weight channel is the weight of that mass. */
  readonly dimensions: readonly Dimension[];
  /** Names it is recognised by, the likeliest first, in small letters with single spaces. */
  readonly names: readonly RegExp[];
}

/** Channels of a drilling record, in the order they are reported. */
export const CHANNEL_KINDS: readonly ChannelKind[] = [
  {
    channel: "depth",
    words: "depth",
    dimensions: ["length"],
    names: [/^dept(h)?$/, /^(hole|measured|bit|total) depth$/, /^(md|dmea|dhole|ddep|dbtm|dbot)$/, /^depth (md|hole)$/],
  },
  {
    channel: "rate",
    words: "rate of penetration",
    dimensions: ["speed"],
    names: [
      /^rop$/,
      /^rate of penetration$/,
      /^rop ?(a|avg|average|5|inst)$/,
      /^(penetration|drilling) rate$/,
      /^rate\d? of penetration$/,
    ],
  },
  {
    channel: "weight",
    words: "weight on bit",
    dimensions: ["force", "mass"],
    names: [/^wob$/, /^weight on bit$/, /^(wob ?(a|avg|average)|woba)$/, /^weight on bit \w+$/, /^bit weight$/],
  },
  {
    channel: "rotarySpeed",
    words: "rotary speed",
    dimensions: ["rotary speed"],
    names: [
      /^rpm$/,
      /^(rotary|bit) (speed|rpm)$/,
      /^(rpm ?(a|avg|average)|rpma)$/,
      /^surface (rpm|rotary speed)$/,
      /^top ?drive (speed|rpm)$/,
      /^total rpm\b/,
    ],
  },
  {
    channel: "torque",
    words: "torque",
    dimensions: ["torque"],
    names: [
      /^(tq|torque|torq|trq|tor)$/,
      /^(rotary|surface|bit) torque$/,
      /^(tq ?a|tqa|torque ?(avg|average))$/,
      /^top ?drive torque$/,
      /^torque\b(?!.*max)/,
    ],
  },
  {
    channel: "flow",
    words: "flow",
    dimensions: ["flow"],
    names: [
      /^flow in$/,
      /^(gpm|flow ?rate|flow pumps?|pump flow|mfi|mfia|flow)$/,
      /^(mud )?flow in\b/,
      /^pump (rate|output)$/,
    ],
  },
  {
    channel: "pumpPressure",
    words: "pump pressure",
    dimensions: ["pressure"],
    names: [/^(spp|sppa)$/, /^(pump|standpipe|stand pipe) press(ure)?$/, /^(pump|pump p|pp)$/],
  },
];

/** The column taken for a channel, and what else went by its name. */
export interface ChosenChannel {
  readonly kind: ChannelKind;
  readonly column: ChannelColumn;
  /** Absent where no unit of the right kind could be found. */
  readonly unit?: ChannelUnit;
  readonly unitFrom?: "the file" | "the user" | "its name" | "assumed";
  /** The unit as the file states it, where it is one of another kind. */
  readonly otherUnit?: ChannelUnit;
  /** Columns of the same name that were not taken. */
  readonly others: readonly ChannelColumn[];
}

export interface ChannelChoice {
  /** Heads or names of the columns that the user named. */
  readonly columns: Partial<Record<ChannelName, string>>;
  /** Units that the user said; they win over what the file states. */
  readonly units: Partial<Record<ChannelName, string>>;
}

/** A name or unit that the user gave and that fits nothing. */
export interface UnknownChoice {
  readonly reason: string;
}

/** The column for a channel: the one the user named, else by its name, the one with a unit of the right kind first. */
export function chosenChannel(
  kind: ChannelKind,
  columns: readonly ChannelColumn[],
  choice: ChannelChoice,
  depthUnit: ChannelUnit | undefined,
): ChosenChannel | UnknownChoice | undefined {
  const named = choice.columns[kind.channel];
  const candidates = named === undefined ? byName(kind, columns) : columns.filter((column) => isCalled(column, named));
  if (named !== undefined && candidates.length === 0) {
    const heads = columns.map((column) => column.header).join(", ");
    return { reason: `there is no column "${named}" for ${kind.words}; the columns are ${heads}` };
  }
  const best = [...candidates].sort(
    (a, b) => unitRank(kind, a) - unitRank(kind, b) || systemRank(a, depthUnit) - systemRank(b, depthUnit),
  )[0];
  if (!best) return undefined;
  const others = byName(kind, columns).filter((column) => column !== best);
  const said = choice.units[kind.channel];
  if (said !== undefined) {
    const unit = channelUnit(said, kind.dimensions);
    if (!unit) return { reason: `"${said}" is no unit of ${kind.words}` };
    return { kind, column: best, unit, unitFrom: "the user", others };
  }
  const stated = best.unit === undefined ? undefined : channelUnit(best.unit, kind.dimensions);
  if (stated) return { kind, column: best, unit: stated, unitFrom: "the file", others };
  const other = best.unit === undefined ? undefined : channelUnit(best.unit);
  if (other) return { kind, column: best, otherUnit: other, others };
  const byItsName = channelUnit(best.name, kind.dimensions);
  if (byItsName) return { kind, column: best, unit: byItsName, unitFrom: "its name", others };
  const assumed = assumedUnit(kind, depthUnit);
  return assumed ? { kind, column: best, unit: assumed, unitFrom: "assumed", others } : { kind, column: best, others };
}

const plain = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[_.\-/]+/g, " ")
    .replace(/\s+/g, " ")
    .trim();

function byName(kind: ChannelKind, columns: readonly ChannelColumn[]): ChannelColumn[] {
  const rank = (column: ChannelColumn) => kind.names.findIndex((pattern) => pattern.test(plain(column.name)));
  return columns.filter((column) => rank(column) >= 0).sort((a, b) => rank(a) - rank(b));
}

function isCalled(column: ChannelColumn, name: string): boolean {
  return column.header.toLowerCase() === name.trim().toLowerCase() || plain(column.name) === plain(name);
}

/** A unit of the right kind before none, none before one of another kind. */
function unitRank(kind: ChannelKind, column: ChannelColumn): number {
  if (column.unit === undefined) return 1;
  return channelUnit(column.unit, kind.dimensions) ? 0 : 2;
}

const FEET = /^(ft|lbf|klbf|psi|ksi|gpm|ft-lbf|kft-lbf|in-lbf|in|lb|bbl\/min|ft\/.*)$/;

/** Columns of the depth's own system of units before the others: files with both repeat every channel. */
function systemRank(column: ChannelColumn, depthUnit: ChannelUnit | undefined): number {
  if (!depthUnit) return 0;
  const stated = column.unit === undefined ? undefined : channelUnit(column.unit)?.name;
  const inAside = /\b(ft|m)\b/.exec(column.aside ?? "")?.[1];
  const name = stated ?? inAside;
  return name !== undefined && FEET.test(name) === FEET.test(depthUnit.name) ? 0 : 1;
}

/** What the trade writes where it writes no unit: turns a minute, and the depth's unit an hour. */
function assumedUnit(kind: ChannelKind, depthUnit: ChannelUnit | undefined): ChannelUnit | undefined {
  if (kind.channel === "rotarySpeed") return channelUnit("rpm", kind.dimensions);
  if (kind.channel === "rate" && depthUnit) return channelUnit(`${depthUnit.name}/h`, kind.dimensions);
  return undefined;
}
