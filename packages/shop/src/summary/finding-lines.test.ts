import { commonPractice } from "@bitwright/engine";
import type { StationFinding, Workup } from "@bitwright/traveler";
import { expect, it } from "vitest";
import { figuresIn } from "./figures.ts";
import { findingLines } from "./finding-lines.ts";

const finding = (parts: Partial<StationFinding>): StationFinding => ({
  code: "any",
  severity: "caution",
  where: "shale",
  message: "Look out.",
  source: commonPractice(),
  station: "cut",
  ...parts,
});

const lines = (findings: readonly StationFinding[], units: "field" | "metric" = "field") =>
  findingLines({ findings } as unknown as Workup, figuresIn(units), 200);

it("says once what is found in several places, with the range of its figure", () => {
  const common = { unit: "N", limit: 27245 };
  expect(
    lines([
      finding({ ...common, value: 10000 }),
      finding({ ...common, value: 20000, where: "sandstone" }),
      finding({ ...common, value: 15000, where: "shale" }),
    ]),
  ).toEqual(["CAUTION shale; sandstone: Look out. [2,250 to 4,500 lbf, limit 6,120 lbf] (common practice)"]);
});

it("keeps apart what differs in message, limit or severity", () => {
  expect(
    lines([
      finding({ limit: 1, value: 2 }),
      finding({ limit: 1.5, value: 2 }),
      finding({ message: "Another." }),
      finding({ severity: "note" }),
    ]),
  ).toHaveLength(4);
});

it("gathers cutters of the same ground", () => {
  const at = (where: string) => finding({ where });
  expect(lines([at("cutter 1, in shale; chalk"), at("cutter 2, in shale; chalk"), at("cutter 7, in clay")])).toEqual([
    "CAUTION cutters 1, 2, in shale; chalk; cutter 7, in clay: Look out. (common practice)",
  ]);
});

it("shows as many digits as it takes to see that a figure passes its limit", () => {
  const [line] = lines([finding({ unit: "m", value: 0.15528, limit: 0.155194, station: "bit" })]);
  expect(line).toContain("[6.113 in, limit 6.11 in]");
});

it("reads the metre as depth, diameter or part by who says it, and free air as air", () => {
  const shown = (parts: Partial<StationFinding>, units?: "metric") => lines([finding(parts)], units)[0];
  expect(shown({ unit: "m", value: 0, code: "unfit-in-hole", station: "advice" })).toContain("[0 ft]");
  expect(shown({ unit: "m", value: 24.4, station: "string" })).toContain("[80.1 ft]");
  expect(shown({ unit: "m", value: 0.005, station: "bit" }, "metric")).toContain("[5 mm]");
  expect(shown({ unit: "m", value: 0.15875, station: "string", code: "string.pin-unusual" })).toContain("[6 1/4 in]");
  expect(shown({ unit: "m", value: 24.4, station: "life", code: "carbide-rubs" })).toContain("[80.1 ft]");
  const lost = { unit: "m", value: 1.5875e-3, limit: 1.5875e-3, station: "life", code: "life-ends-gauge" } as const;
  expect(shown(lost)).toContain("[0.0625 in, limit 0.0625 in]");
  expect(shown({ unit: "m³/s", limit: 0.24, code: "air-too-little", station: "flow" })).toContain("[limit 509 cfm]");
  expect(shown({ unit: "m³/s", value: 0.0095, station: "flow" })).toContain("[151 gpm]");
});
