import { expect, it } from "vitest";
import { demoWorkup } from "../../../../tests/support/demo-workup.ts";
import { gpm } from "../../../../tests/support/field-units.ts";
import { figuresIn } from "./figures.ts";
import { flowLines } from "./string-flow-lines.ts";

it("calls a cooling flow set by hand no practice", () => {
  const { inquiry, ...rest } = demoWorkup("house-well");
  const overrides = { ...inquiry.overrides, limits: { ...inquiry.overrides.limits, coolingFlow: 60 * gpm } };
  const said = (workup: Parameters<typeof flowLines>[0]) => flowLines(workup, figuresIn("field")).join("\n");
  // 12 and 15 gpm for each inch of 6 1/8 in.
  expect(said({ ...rest, inquiry })).toMatch(/practice asks for 73.5 to 91.9 gpm to cool/);
  expect(said({ ...rest, inquiry: { ...inquiry, overrides } })).toMatch(
    /the limit set by hand asks for 60(.0)? gpm to cool/,
  );
});
