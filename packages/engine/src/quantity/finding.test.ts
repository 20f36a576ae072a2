import { expect, it } from "vitest";
import { type Finding, gravestFirst, type Severity } from "./finding.ts";
import { commonPractice } from "./source.ts";

const of = (code: string, severity: Severity): Finding => ({
  code,
  severity,
  where: "bed 1",
  message: "-",
  source: commonPractice(),
});

it("puts stops before cautions before notes and keeps the order within each", () => {
  const sorted = gravestFirst([of("a", "note"), of("b", "caution"), of("c", "stop"), of("d", "caution")]);
  expect(sorted.map((f) => f.code)).toEqual(["c", "b", "d", "a"]);
});
