import fc from "fast-check";
import { expect, it } from "vitest";
import { largest } from "./largest.ts";

it("is in the row, with nothing above it, in whatever order", () => {
  const share = fc.double({ min: 0, max: 1e9, noNaN: true });
  fc.assert(
    fc.property(fc.array(share, { minLength: 1 }), (row) => {
      const most = largest(Float64Array.from(row));
      expect(row).toContain(most);
      expect(row.every((each) => each <= most)).toBe(true);
      expect(largest([...row].reverse())).toBe(most);
    }),
  );
});

it("does not hide a value that is no number", () => {
  expect(largest([1, Number.NaN, 2])).toBeNaN();
});
