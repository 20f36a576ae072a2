import { describe, expect, it } from "vitest";
import { expectClose } from "../../../../tests/support/close-to.ts";
import { mm } from "../../../../tests/support/field-units.ts";
import { profiledBit } from "../../../../tests/support/profiled-bit.ts";
import { cutSections } from "./cut-sections.ts";
import { engage } from "./engage.ts";
import { traceEdges } from "./trace-edges.ts";

describe("cutSections", () => {
  const trace = traceEdges(profiledBit());
  const engagement = engage(trace, 1 * mm);
  const sections = cutSections(trace, engagement);

  it("encloses the area of cut of every cutter", () => {
    engagement.area.forEach((area, cutter) => {
      const enclosed = sections
        .filter((section) => section.cutter === cutter)
        .flatMap(({ edge, rock }) => edge.map((z, k) => (z - rock[k]) * trace.cellWidth))
        .reduce((sum, strip) => sum + strip, 0);
      expectClose(enclosed, area, 1e-9);
    });
  });

  it("runs outward without a break and lies the same depth apart in the hole as on the bit", () => {
    for (const { radius, edge, rock, edgeInHole, rockInHole } of sections) {
      for (let k = 1; k < radius.length; k++) expectClose(radius[k] - radius[k - 1], trace.cellWidth, 1e-6);
      edge.forEach((z, k) => {
        expect(z).toBeGreaterThan(rock[k]);
        expectClose(edgeInHole[k] - rockInHole[k], z - rock[k], 1e-9);
        expect(edgeInHole[k]).toBeLessThanOrEqual(z);
      });
    }
  });
});
