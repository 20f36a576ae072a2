import { describe, expect, it } from "vitest";
import { gallon, inch, psi } from "../../../../tests/support/field-units.ts";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { parseTraveler } from "./parse-traveler.ts";

const gpm = gallon / 60;
const read = (pump: object) =>
  parseTraveler({
    ...soundTraveler(),
    inquiry: { ...soundTraveler().inquiry, pump: { surfaceGear: "75 ft", ...pump } },
  });
function pumpOf(pump: object) {
  const parsed = read(pump);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join("\n"));
  return {
    ...parsed.resolved.inquiry.pump,
    assumed: parsed.assumed.flatMap(({ field }) => (field.startsWith("inquiry.pump.") ? [field.slice(13)] : [])),
    findings: parsed.resolved.findings.filter(({ where }) => where.startsWith("inquiry.pump")),
  };
}
const problemsOf = (pump: object) => {
  const parsed = read(pump);
  return parsed.ok ? [] : parsed.problems.map(({ message }) => message);
};

const duplex = { liner: "5 in", stroke: "6 in", strokes: "60 spm" };

describe("a pump by liner, stroke and strokes", () => {
  it("is a duplex at 85 % with a rod of three tenths where nobody said more, and each of these is named", () => {
    const { flow, piston, assumed } = pumpOf({ piston: duplex, pressureRating: "250 psi" });
    // 2 (π/4) (2 x 25 - 2.25) 6 = 450.04 in³ a stroke; 60 strokes, 85 %, 231 in³ a gallon: 99.36 gpm.
    expect(flow / gpm).toBeCloseTo(99.36, 2);
    expect(piston?.rodDiameter).toBeCloseTo(1.5 * inch, 12);
    expect(assumed).toEqual(["piston.cylinders", "piston.action", "piston.rod", "piston.efficiency"]);
  });

  it("is single acting from three cylinders on, and needs no rod", () => {
    const piston = { ...duplex, cylinders: 3, efficiency: "90 %" };
    const { flow, assumed } = pumpOf({ piston, pressureRating: "250 psi" });
    // 3 (π/4) 25 x 6 = 353.43 in³ a stroke; 60 strokes, 90 %: 82.62 gpm.
    expect(flow / gpm).toBeCloseTo(82.62, 2);
    expect(assumed).toEqual(["piston.action"]);
  });

  it("gives way to a flow that was measured, and says where the two part by more than a tenth", () => {
    const full = { ...duplex, cylinders: 2, action: "double", rod: "1.5 in", efficiency: 0.85 };
    const near = pumpOf({ piston: full, flow: "95 gpm", pressureRating: "250 psi" });
    expect(near.flow / gpm).toBeCloseTo(95, 9);
    expect(near.findings).toEqual([]);
    const low = pumpOf({ piston: full, flow: "70 gpm", pressureRating: "250 psi" }).findings;
    expect(low.map(({ code, severity }) => [code, severity])).toEqual([["pump-flow-disagrees", "caution"]]);
    expect((low[0].limit ?? 0) / gpm).toBeCloseTo(99.36, 2);
    expect(low[0].message).toMatch(/leak/);
    // All that is swept is 99.36/.85 = 116.9 gpm.
    const over = pumpOf({ piston: full, flow: "130 gpm", pressureRating: "250 psi" }).findings;
    expect(over[0].message).toMatch(/More than the pistons sweep, 116.9 gpm|More than the pistons sweep, 117 gpm/);
  });

  it("refuses a rod as thick as its liner", () => {
    expect(problemsOf({ piston: { ...duplex, rod: "5 in" } })[0]).toMatch(/^inquiry\.pump\.piston\.rod: got "5 in"/);
  });
});

describe("a pump by its curve", () => {
  const curve = [
    { flow: "300 gpm", pressure: "20 psi" },
    { flow: "0 gpm", pressure: "60 psi" },
  ];

  it("is put in order; half its largest flow is asked for where nobody said, and it holds what it can give", () => {
    const pump = pumpOf({ curve });
    expect(pump.pumpCurve?.map(({ flow }) => Math.round(flow / gpm))).toEqual([0, 300]);
    expect(pump.flow / gpm).toBeCloseTo(150, 9);
    expect(pump.pressureRating / psi).toBeCloseTo(60, 9);
    expect(pump.assumed).toEqual(["flow", "pressureRating"]);
  });

  it("refuses a pressure that rises with the flow, and a curve beside pistons", () => {
    const rising = [...curve, { flow: "350 gpm", pressure: "25 psi" }];
    expect(problemsOf({ curve: rising })[0]).toMatch(/^inquiry\.pump\.curve: got 25 psi at 350 gpm/);
    expect(problemsOf({ curve, piston: duplex })[0]).toMatch(/^inquiry\.pump: got piston and curve; give piston/);
  });
});
