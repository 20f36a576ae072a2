import { commonPractice } from "../quantity/index.ts";
import { type Rock, rockFromRow } from "./rock.ts";
import {
  BY_ANALOGY,
  cerchar,
  degrees,
  equivalentQuartz,
  looseCutterAnswer,
  megapascals,
  sourced,
  thermal,
} from "./rock-sources.ts";

const ANYTHING = commonPractice("stands for ground that nobody named: as wide as rock goes, no source");

/**
 * Stands in for a bed whose log does not say what the ground is. Not in the rock table, for nobody should pick it.
 *
 * @source (c) as wide as rock goes, no source
 */
export const unnamedGround: Rock = rockFromRow({
  id: "unnamed",
  name: "ground not named",
  family: "soil",
  hazards: [],
  ucs: megapascals(0.1, 20, 200, ANYTHING),
  frictionAngle: degrees(15, 32, 50, ANYTHING),
  density: sourced(1600, 2200, 2800, ANYTHING),
  quartzShare: sourced(0, 0.3, 0.95, ANYTHING),
  equivalentQuartz: equivalentQuartz(0.05, 0.35, 0.95),
  cerchar: cerchar(0.2, 1.5, 5.5),
  ...looseCutterAnswer(0.25),
  ...thermal(1, 2, 4, BY_ANALOGY),
});
