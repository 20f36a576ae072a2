// One layout search: `tsx bench/layout-search-time.ts <layouts> <threads>` prints its seconds by the clock.
import { catalogCutter, chunksOfSearch, type LayoutQuestion, usualRakes } from "@bitwright/engine";
import { inch } from "../tests/support/field-units.ts";

const [candidates, threads] = process.argv.slice(2).map(Number);

const question: LayoutQuestion = {
  spec: {
    holeDiameter: 6.125 * inch,
    profile: { shape: "short parabolic" },
    wings: { wings: 5, cuttersPerWing: 3 },
    cutter: catalogCutter("1308"),
    rakes: usualRakes(),
    material: "steel",
  },
  seed: 1,
  candidates,
};

// Only the built program has a worker to start.
const built = new URL("../packages/cli/dist/workers/chunks-in-threads.js", import.meta.url).href;
const { chunksInThreads } = (await import(built)) as typeof import("../packages/cli/src/workers/chunks-in-threads.ts");
const start = performance.now();
await chunksInThreads({ question, chunks: chunksOfSearch(candidates), threads, onProgress: () => {} }).results;
console.log((performance.now() - start) / 1e3);
