import {
  type BitChoice,
  type BitSpec,
  type Cutter,
  catalogCutter,
  type RakeSchedule,
  USUAL_LEACHED_DEPTH,
} from "@bitwright/engine";
import type { ResolvedBitSpec, ResolvedPorts, ResolvedTraveler } from "../document/resolved-traveler.ts";
import { formatQuantity } from "../quantity/index.ts";

/** The bit as it will be laid out: what the traveler asks, the rest by the rules. */
export interface BitOrder {
  readonly spec: BitSpec;
  readonly ports: ResolvedPorts;
  readonly gaugeLength: number;
  /** Where the traveler asks for something else than the rules would choose, in words. */
  readonly departures: readonly string[];
}

/** Puts what the traveler asks of a bit over what the rules would choose. */
export function bitOrder(
  asked: ResolvedBitSpec,
  rules: BitChoice,
  { lists }: Pick<ResolvedTraveler, "lists">,
): BitOrder {
  const departures: string[] = [];
  const pick = <T>(name: string, wanted: T | undefined, ruled: T, show: (value: T) => string): T => {
    if (wanted === undefined) return ruled;
    if (show(wanted) !== show(ruled)) {
      departures.push(`${name}: ${show(wanted)} as asked; the rules would choose ${show(ruled)}.`);
    }
    return wanted;
  };
  const angle = (si: number) => formatQuantity("angle", si, "field", { figures: 3 });
  const even = ({ centre, gauge }: { centre: number; gauge: number }) => `${angle(centre)} to ${angle(gauge)}`;
  const words = (value: string | number) => String(value);
  const code = pick("cutter", asked.cutter, rules.cutter.value.code, words);
  const leached = pick("diamond", asked.leached, rules.leached.value, (on) => (on ? "leached" : "not leached"));
  const chamferAngle = pick("chamfer", asked.chamferAngle, rules.chamfer.value.angle, angle);
  const back = pick("back rake", asked.backRake, rules.backRake.value, even);
  const side = pick("side rake", asked.sideRake, rules.sideRake.value, even);
  const wings = pick("wings", asked.wings, rules.wings.value.wings, words);
  const onWing = pick("cutters on a wing", asked.cuttersPerWing, rules.wings.value.cuttersPerWing, words);
  const material = pick("body", asked.body, rules.body.value, words);
  const shape = pick("profile", asked.profile?.shape, rules.profile.value, words);
  const ports = pick(
    "ports",
    asked.ports,
    rules.ports.value,
    ({ count, diameter }) => `${count} of ${formatQuantity("diameter", diameter, "field")}`,
  );
  const gaugeLength = asked.gaugeLength ?? rules.gauge.value.padLength;
  return {
    spec: {
      holeDiameter: asked.diameter,
      profile: { ...asked.profile, shape, gaugeLength },
      wings: { wings, cuttersPerWing: onWing, sweep: asked.sweep ?? rules.sweep.value },
      cutter: {
        ...cutterOf(code, lists.cutters),
        chamferAngle,
        chamferWidth: asked.chamferWidth ?? (chamferAngle > 0 ? rules.chamfer.value.width : 0),
        leachedDepth: leached ? USUAL_LEACHED_DEPTH : 0,
      },
      rakes: evenRakes(back, side),
      material,
    },
    ports,
    gaugeLength,
    departures,
  };
}

/** A cutter of the shop's own list, else of the catalog. */
function cutterOf(code: string, own: ResolvedTraveler["lists"]["cutters"]): Cutter {
  const found = own.find((cutter) => cutter.code === code);
  return found ? { ...catalogCutter("1308"), ...found } : catalogCutter(code);
}

function evenRakes(back: { centre: number; gauge: number }, side: { centre: number; gauge: number }): RakeSchedule {
  return {
    kind: "even",
    centre: { backRake: back.centre, sideRake: side.centre },
    gauge: { backRake: back.gauge, sideRake: side.gauge },
  };
}
