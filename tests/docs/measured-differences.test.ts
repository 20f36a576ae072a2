/**
 * The figure tables of docs/guide/checks.md that say how far the engine stands from each outside figure. The reference
 * tests are run once more here with a listener in the place of their comparison, so that the page tells what they compare.
 */
import { describe, expect, it, vi } from "vitest";
import { holdSection, table } from "../support/checks-page.ts";
import { COMPARED, COMPARING_FILES, type ComparedGroup, TOLD_IN_WORDS } from "./measured-differences.ts";

interface Comparison {
  readonly test: string;
  readonly got: number;
  readonly expected: number;
  readonly relTol: number;
}

const heard = vi.hoisted((): Comparison[] => []);

vi.mock("../support/close-to.ts", () => ({
  expectClose: (got: number, expected: number, relTol: number) => {
    heard.push({ test: expect.getState().currentTestName ?? "", got, expected, relTol });
  },
}));

for (const file of COMPARING_FILES) {
  describe(file, async () => {
    await import(`../reference/${file}.test.ts`);
  });
}

describe("docs/guide/checks.md tells every comparison", () => {
  const groups = Object.values(COMPARED).flat();
  const groupOf = (test: string) => groups.find(({ of }) => of.test(test));

  it("in a group", () => {
    expect(heard.length).toBeGreaterThan(300);
    const homeless = heard
      .map(({ test }) => test)
      .filter((test) => groupOf(test) === undefined && !TOLD_IN_WORDS.test(test));
    expect([...new Set(homeless)], "add a group to tests/docs/measured-differences.ts").toEqual([]);
  });

  it.each(Object.entries(COMPARED))("%s", (name, own) => {
    holdSection(
      name,
      table([
        HEAD,
        ...own.map((group) =>
          rowOf(
            group,
            heard.filter(({ test }) => groupOf(test) === group),
          ),
        ),
      ]),
    );
  });
});

const HEAD = ["what", "source", "kind", "figures", "largest difference", "allowed"];

function rowOf({ what, source, kind }: ComparedGroup, comparisons: readonly Comparison[]): string[] {
  expect(comparisons.length, `nothing compares "${what}" any more`).toBeGreaterThan(0);
  const largest = Math.max(...comparisons.map(difference));
  const allowed = Math.max(...comparisons.map(({ relTol }) => relTol));
  return [what, source, kind, String(comparisons.length), percent(largest), percent(allowed)];
}

/** Difference as a share of the outside figure; from a zero, the difference itself. */
const difference = ({ got, expected }: Comparison) =>
  Math.abs(got - expected) / (expected === 0 ? 1 : Math.abs(expected));

/** Two figures; below a hundred-thousandth only that it is. */
function percent(share: number): string {
  return share < 1e-5 ? "under 0.001 %" : `${Number((100 * share).toPrecision(2))} %`;
}
