import { describe, expect, it } from "vitest";
import { slotArea } from "./slot-area.ts";
import { wingSlots } from "./wing-slots.ts";

const deg = Math.PI / 180;
const body = { holeDiameter: 0.1556, wingThickness: 0.02, coreRadius: 0.0389 };
const even = (wings: number) => Array.from({ length: wings }, (_, k) => (k / wings) * 2 * Math.PI);

describe("wingSlots", () => {
  it.each([3, 4, 5, 6])("adds up to the slot area of %i even wings", (wings) => {
    const slots = wingSlots({ ...body, wingAngles: even(wings) });
    expect(slots).toHaveLength(wings);
    const together = slots.reduce((sum, { area }) => sum + area, 0);
    expect(together).toBeCloseTo(slotArea({ ...body, wings }), 10);
  });

  it("counts the same points as a fine grid over the widest and the narrowest of uneven wings", () => {
    const wingAngles = [0, 80 * deg, 200 * deg];
    const slots = wingSlots({ ...body, wingAngles });
    const step = 1e-4;
    const counted = [0, 0, 0];
    for (let x = -0.078; x <= 0.078; x += step) {
      for (let y = -0.078; y <= 0.078; y += step) {
        const radius = Math.hypot(x, y);
        if (radius > body.holeDiameter / 2 || radius < body.coreRadius) continue;
        const onWing = wingAngles.some((angle) => {
          const along = x * Math.cos(angle) + y * Math.sin(angle);
          return along > 0 && Math.abs(y * Math.cos(angle) - x * Math.sin(angle)) < body.wingThickness / 2;
        });
        if (onWing) continue;
        const azimuth = (Math.atan2(y, x) + 2 * Math.PI) % (2 * Math.PI);
        counted[azimuth < wingAngles[1] ? 0 : azimuth < wingAngles[2] ? 1 : 2] += step ** 2;
      }
    }
    for (const [k, { area }] of slots.entries()) expect(Math.abs(area / counted[k] - 1)).toBeLessThan(0.005);
    // 2 r_c sin(40°) - t by hand: 2 · 38.9 · 0.642788 - 20 = 30.009 mm.
    expect(slots[0].footWidth).toBeCloseTo(0.030009, 6);
  });
});
