import { describe, expect, it } from "vitest";
import { type WingSlot, wingSlots } from "../bit/index.ts";
import { plugRisk } from "./plug-risk.ts";

const inch = 0.0254;
const holeDiameter = 6.125 * inch;
// Wing of steel, common practice as in `bitBody`: an 8 mm cutter, two thirds of it behind, 3 mm lip.
const bodyOf = (wings: number) => ({
  holeDiameter,
  wingAngles: Array.from({ length: wings }, (_, k) => (k / wings) * 2 * Math.PI),
  wingThickness: 0.008 * (5 / 3) + 0.003,
  coreRadius: holeDiameter / 4,
});
const slotsAsPassages = (slots: readonly WingSlot[]) =>
  slots.map(({ footWidth }, k) => ({ where: `slot ${k + 1}`, width: footWidth }));
const ports = (count: number, width: number) =>
  Array.from({ length: count }, (_, k) => ({ where: `port ${k + 1}`, width }));

describe("plugRisk", () => {
  it("tells five wings with big ports, which rarely plug, from six with less slot and small ports, which plug more", () => {
    // Common practice, no source: 5 wings with big ports rarely plug, 6 wings plug more.
    const lump = 0.3 * inch;
    const five = plugRisk([...ports(3, 0.625 * inch), ...slotsAsPassages(wingSlots(bodyOf(5)))], [lump]);
    const six = plugRisk([...ports(6, 0.375 * inch), ...slotsAsPassages(wingSlots(bodyOf(6)))], [lump]);
    expect(five.level).toBe("rarely");
    expect(six.level).toBe("may bridge");
    expect(six.ratio).toBeGreaterThan(five.ratio);
    const [wide] = wingSlots(bodyOf(5));
    const [narrow] = wingSlots(bodyOf(6));
    expect(narrow.footWidth).toBeLessThan(wide.footWidth);
    expect(narrow.area).toBeLessThan(wide.area);
  });

  it("holds the larger lump of pump and ground against the narrowest passage, and names it", () => {
    const passages = [...ports(1, 0.5 * inch), { where: "slot 2", width: 0.4 * inch }];
    const risk = plugRisk(passages, [0.1 * inch, 0.4 * inch]);
    expect(risk).toMatchObject({ level: "will plug", lump: 0.4 * inch, narrowest: { where: "slot 2" } });
    expect(risk.reason).toContain("slot 2");
  });

  it("goes by 3/8 and 1/2 in where no lump is known, the limits of practice in the handbook", () => {
    expect(plugRisk(ports(1, 0.37 * inch), []).level).toBe("will plug");
    expect(plugRisk(ports(1, 0.375 * inch), []).level).toBe("may bridge");
    expect(plugRisk(ports(1, 0.5 * inch), []).level).toBe("rarely");
  });

  it("refuses to judge without a passage", () => {
    expect(() => plugRisk([], [0.01])).toThrow(RangeError);
  });
});
