import { formatQuantity } from "../../quantity/index.ts";
import { oneOf } from "../nearest-names.ts";
import { present } from "../present.ts";
import type { ResolvedBit, ResolvedBitSpec, ResolvedPorts } from "../resolved-traveler.ts";
import type { ReadTraveler } from "../traveler-schema.ts";
import type { KnownCutters } from "./cutters.ts";
import { measuredCutters } from "./measured-bit.ts";
import type { ReadingNotes } from "./reading-notes.ts";

type GivenBit = NonNullable<ReadTraveler["bit"]>;
type GivenSpec = NonNullable<GivenBit["spec"]>;

/** Largest share of the bit's face that ports may take and leave a bit [-]: a quarter, far above any in use. */
const MOST_PORT_SHARE = 0.25;

/** The bit as it was asked for or measured; nothing where something is wrong with it. */
export function resolveBit(
  { bit, diameter, cutters }: { bit: GivenBit | undefined; diameter: number; cutters: KnownCutters },
  notes: ReadingNotes,
): ResolvedBit | undefined {
  if (bit?.spec && bit.measured) {
    const expected = "give spec for a bit to be laid out or measured for one on the bench, not both";
    notes.refuse({ field: "bit", got: "spec and measured", expected });
    return undefined;
  }
  if (!bit?.measured) return resolveSpec(bit?.spec ?? {}, diameter, cutters, notes);
  const { measured } = bit;
  const rows = measuredCutters(measured, cutters, notes);
  const ports = portsOf(measured.ports, "bit.measured.ports", diameter, notes);
  if (!rows) return undefined;
  const reach = Math.max(...rows.map(({ radius }) => radius));
  if (reach > diameter / 2 + 1e-3) {
    notes.refuse({
      field: "bit.measured",
      got: formatQuantity("length", reach, "field"),
      wrong: `got a cutter centred at a radius of ${formatQuantity("length", reach, "field")}, outside a bit of ${formatQuantity("diameter", diameter, "field")}`,
      expected: "give radii within half the bit's diameter, or the table's true unit in units",
    });
    return undefined;
  }
  return {
    kind: "measured",
    diameter,
    cutters: rows,
    measuredAt: measured.measuredAt ?? "face centre",
    ...present({ maker: measured.maker, body: measured.body, leached: measured.leached, ports }),
    ...present({ gaugeLength: measured.gaugeLength?.si, gaugeProtection: measured.gaugeProtection }),
  };
}

function resolveSpec(
  spec: GivenSpec | Record<string, never>,
  diameter: number,
  known: KnownCutters,
  notes: ReadingNotes,
): ResolvedBitSpec {
  const { cutter, wings, cuttersPerWing, profile } = spec;
  if (cutter !== undefined && !known.find(cutter)) {
    const wrong = `got "${cutter}", which is no cutter of the list`;
    notes.refuse({ field: "bit.spec.cutter", got: `"${cutter}"`, wrong, expected: oneOf(cutter, known.codes) });
  }
  const code = cutter === undefined ? undefined : known.find(cutter)?.code;
  return {
    kind: "spec",
    diameter,
    ...present({ cutter: code, wings, cuttersPerWing, body: spec.body, leached: spec.leached }),
    ...present({ backRake: spec.backRake, sideRake: spec.sideRake }),
    ...present({ chamferAngle: spec.chamferAngle?.si, chamferWidth: spec.chamferWidth?.si }),
    ...present({ sweep: spec.sweep?.si, gaugeLength: spec.gaugeLength?.si, gaugeProtection: spec.gaugeProtection }),
    ...present({ ports: portsOf(spec.ports, "bit.spec.ports", diameter, notes) }),
    ...present({
      profile: profile && {
        ...present({ shape: profile.shape, coneAngle: profile.coneAngle?.si }),
        ...present({ noseRadiusShare: profile.noseRadiusShare?.si, height: profile.height?.si }),
        ...present({ noseCurve: profile.noseCurve?.si, shoulderCurve: profile.shoulderCurve?.si }),
        ...present({ steps: profile.steps, stepHeight: profile.stepHeight?.si }),
      },
    }),
  };
}

function portsOf(
  given: GivenSpec["ports"],
  field: string,
  bitDiameter: number,
  notes: ReadingNotes,
): ResolvedPorts | undefined {
  if (!given) return undefined;
  const { count, diameter } = given;
  const share = (count * diameter.si ** 2) / bitDiameter ** 2;
  if (share > MOST_PORT_SHARE) {
    const got = `${count} of "${diameter.text}"`;
    const percent = formatQuantity("share", share, "field", { figures: 3 });
    notes.refuse({
      field,
      got,
      wrong: `got ${got}, which would take ${percent} of the bit's face`,
      expected: `give ports that take less than ${formatQuantity("share", MOST_PORT_SHARE, "field")} of it`,
    });
  }
  return { count, diameter: diameter.si };
}
