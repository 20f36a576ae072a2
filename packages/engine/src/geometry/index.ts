export { type CircleSegment, segmentArea, segmentChord, segmentHalfAngle } from "./circle-segment.ts";
export { type Cylinder, cylinderDistance, cylinderOverlap } from "./cylinder-distance.ts";
export { type CountedInterval, coverCounts, gapsBetween, type Interval } from "./interval.ts";
export { cross, dot, length, minus, plus, times, unit, type Vector } from "./vector.ts";
export { wrapped } from "./wrapped.ts";
