export { cross, dot, length, minus, plus, times, unit, type Vector } from "./vector.ts";
