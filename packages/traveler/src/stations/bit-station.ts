import {
  type BitLayout,
  type BitProfile,
  type BitReview,
  type Cutter,
  type CutterPlace,
  type CuttingKernel,
  catalogCutter,
  type Finding,
  generateLayout,
  measuredLayout,
  profileShapeOf,
  reviewBit,
  sideForceJudge,
  type Working,
} from "@bitwright/engine";
import type {
  ResolvedBitSpec,
  ResolvedMeasuredBit,
  ResolvedPorts,
  ResolvedTraveler,
} from "../document/resolved-traveler.ts";
import { formatQuantity } from "../quantity/index.ts";
import type { AdviceStation } from "./advice-station.ts";
import { bitOrder } from "./bit-order.ts";

/** Where each cutter sits, and what that makes of the bit. */
export interface BitStation {
  readonly layout: BitLayout;
  /** Number, wing, role and zone of each cutter; absent for a measured bit. */
  readonly places?: readonly CutterPlace[];
  /** The line that the tips were laid on; absent for a measured bit. */
  readonly profile?: BitProfile;
  /** The bit in one line, in the words of the shop. */
  readonly inWords: string;
  /** Where the traveler asks for something else than the rules would choose, in words. */
  readonly departures: readonly string[];
  readonly ports: ResolvedPorts;
  readonly review: BitReview;
  readonly findings: readonly Finding[];
  readonly working: readonly Working[];
}

/** Lays the bit out as ordered, or takes it as it was measured, and looks it over. */
export function bitStation(
  traveler: ResolvedTraveler,
  advice: AdviceStation,
  /** What runs the loops; the plain kernel where none is named. No figure depends on it. */
  kernel?: CuttingKernel,
): BitStation {
  const { bit } = traveler;
  return bit.kind === "spec" ? orderedBit(bit, { traveler, advice, kernel }) : measuredBit(bit, traveler, advice);
}

function orderedBit(
  asked: ResolvedBitSpec,
  {
    traveler,
    advice,
    kernel,
  }: {
    readonly traveler: ResolvedTraveler;
    readonly advice: AdviceStation;
    readonly kernel: CuttingKernel | undefined;
  },
): BitStation {
  const { spec, ports, departures } = bitOrder(asked, advice.bit, traveler);
  const { layout, places, profile: line, findings } = generateLayout(spec, sideForceJudge({ kernel }));
  const { wings } = spec.wings;
  const { material, profile } = spec;
  const zones = places.map(({ zone }) => zone);
  const review = reviewBit({ layout, material, profile: profile.shape, wings, ports, zones, ...casingOver(traveler) });
  const perWing = [
    ...new Set(Array.from({ length: wings }, (_, k) => layout.cutters.filter((c) => c.wing === k + 1).length)),
  ];
  const cutters = perWing.length === 1 ? `${perWing[0]}` : `${Math.min(...perWing)} to ${Math.max(...perWing)}`;
  return {
    layout,
    places,
    profile: line,
    inWords: [
      `${diameter(asked.diameter)} ${spec.material}`,
      `${counted(wings, "wing")} of ${cutters}`,
      ...cutterWords(spec.cutter, layout),
      portWords(ports),
      review.classification,
    ].join(", "),
    departures,
    ports,
    review,
    findings: [...findings, ...review.findings],
    working: review.working,
  };
}

function measuredBit(bit: ResolvedMeasuredBit, traveler: ResolvedTraveler, advice: AdviceStation): BitStation {
  const rules = advice.bit;
  const rows = bit.cutters.map(({ profileAngle, ...row }) => ({
    ...row,
    wing: row.wing ?? 0,
    length: row.length ?? catalogCutter("1308").length,
    chamferWidth: row.chamferWidth ?? 0,
    chamferAngle: row.chamferAngle ?? 0,
    ...(profileAngle === undefined ? {} : { profileAngle }),
  }));
  const { layout, findings } = measuredLayout({ holeDiameter: bit.diameter, rows, measuredAt: bit.measuredAt });
  const ports = bit.ports ?? rules.ports.value;
  const material = bit.body ?? rules.body.value;
  const review = reviewBit({ layout, material, profile: profileShapeOf(layout), ports, ...casingOver(traveler) });
  const worn = layout.cutters.filter(({ wornHeight }) => wornHeight > 0).length;
  const { wings } = review.body;
  return {
    layout,
    inWords: [
      `${diameter(bit.diameter)} ${material} as measured`,
      ...(wings > 0 ? [counted(wings, "wing")] : []),
      counted(layout.cutters.length, "cutter"),
      worn > 0 ? `${worn} of them worn` : "none worn",
      portWords(ports),
      review.classification,
    ].join(", "),
    departures: [],
    ports,
    review,
    findings: [...findings, ...review.findings],
    working: review.working,
  };
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

function diameter(si: number): string {
  return formatQuantity("diameter", si, "field");
}

function degrees(si: number): string {
  return `${Math.round((si * 180) / Math.PI)}°`;
}

function cutterWords({ code, chamferAngle, leachedDepth }: Cutter, { cutters }: BitLayout): string[] {
  const rakes = cutters.map(({ backRake }) => backRake);
  return [
    `${code} cutters${leachedDepth > 0 ? ", leached" : ""}`,
    chamferAngle > 0 ? `${degrees(chamferAngle)} bevel` : "sharp edges",
    `back rake ${degrees(Math.min(...rakes))} to ${degrees(Math.max(...rakes))}`,
  ];
}

function portWords({ count, diameter: one }: ResolvedPorts): string {
  return `${counted(count, "port")} of ${diameter(one)}`;
}

/** The bore of the casing that the bit has to pass, where one is set above its hole. */
function casingOver({ inquiry }: ResolvedTraveler): { casingDrift?: number } {
  const bores = inquiry.holes.flatMap(({ casingBore, to }) =>
    casingBore !== undefined && to <= inquiry.bitHole.from ? [casingBore] : [],
  );
  return bores.length === 0 ? {} : { casingDrift: Math.min(...bores) };
}
