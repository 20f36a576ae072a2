import type { BitChoice, Choice } from "@bitwright/engine";
import { formatQuantity, type UnitSystem } from "@bitwright/traveler";
import type { Path } from "../../job/path.ts";

/** One choice of the advice, with the fields of the document that set another over it. */
export interface ShownChoice {
  readonly name: string;
  /** What the rules choose, in words. */
  readonly words: string;
  readonly choice: Choice<unknown>;
  readonly fields: readonly { readonly path: Path; readonly label: string }[];
}

const field = (label: string, ...steps: string[]) => ({ path: ["bit", "spec", ...steps], label });

/** Every choice of the advice in the order in which a bit is thought of. */
export function shownChoices(bit: BitChoice, units: UnitSystem): readonly ShownChoice[] {
  const angle = (si: number) => formatQuantity("angle", si, units, { figures: 2 });
  const rake = ({ centre, gauge }: { readonly centre: number; readonly gauge: number }) =>
    centre === gauge ? angle(centre) : `${angle(centre)} at the centre to ${angle(gauge)} at the gauge`;
  const length = (si: number) => formatQuantity("length", si, units, { figures: 3 });
  const { cutter, chamfer, backRake, sideRake, wings, sweep, profile, body, leached, ports, gauge } = bit;
  return [
    { name: "Cutter", words: cutter.value.code, choice: cutter, fields: [field("Cutter", "cutter")] },
    {
      name: "Chamfer",
      words: `${length(chamfer.value.width)} at ${angle(chamfer.value.angle)}`,
      choice: chamfer,
      fields: [field("Chamfer width", "chamferWidth"), field("Chamfer angle", "chamferAngle")],
    },
    { name: "Back rake", words: rake(backRake.value), choice: backRake, fields: [field("Back rake", "backRake")] },
    { name: "Side rake", words: rake(sideRake.value), choice: sideRake, fields: [field("Side rake", "sideRake")] },
    {
      name: "Wings",
      words: `${wings.value.wings} wings of ${wings.value.cuttersPerWing}`,
      choice: wings,
      fields: [field("Wings", "wings"), field("Cutters on a wing", "cuttersPerWing")],
    },
    { name: "Sweep", words: angle(sweep.value), choice: sweep, fields: [field("Sweep of a wing", "sweep")] },
    { name: "Profile", words: profile.value, choice: profile, fields: [field("Shape", "profile", "shape")] },
    { name: "Body", words: body.value, choice: body, fields: [field("Body", "body")] },
    {
      name: "Diamond",
      words: leached.value ? "leached" : "not leached",
      choice: leached,
      fields: [field("Leached", "leached")],
    },
    {
      name: "Ports",
      words: `${ports.value.count} of ${formatQuantity("diameter", ports.value.diameter, units)}`,
      choice: ports,
      fields: [field("Ports", "ports", "count"), field("Diameter of one", "ports", "diameter")],
    },
    {
      name: "Gauge",
      words: `pads of ${length(gauge.value.padLength)}, ${gauge.value.protection}`,
      choice: gauge,
      fields: [field("Length of the pads", "gaugeLength"), field("Faced with", "gaugeProtection")],
    },
  ];
}
