import { describe, expect, it } from "vitest";
import { soundTraveler } from "../../../../tests/support/sound-traveler.ts";
import { parseTraveler } from "./parse-traveler.ts";

function problems(change: { readonly washouts?: readonly object[]; readonly joint?: object; readonly pipe?: object }) {
  const sound = soundTraveler();
  const { washouts, joint, ...more } = change;
  const pipe = { ...sound.inquiry.pipe, ...more.pipe, ...(joint ? { joint } : {}) };
  const read = parseTraveler({ ...sound, inquiry: { ...sound.inquiry, ...(washouts ? { washouts } : {}), pipe } });
  return read.ok ? [] : read.problems.map(({ message }) => message);
}

describe("washouts", () => {
  it("lie in their hole, one below the other, each wider than the hole", () => {
    const sound = { from: "90 ft", to: "110 ft", diameter: "8 in" };
    expect(problems({ washouts: [sound, { ...sound, from: "110 ft", to: "120 ft" }] })).toEqual([]);
    expect(problems({ washouts: [{ ...sound, from: "30 ft" }] })).toEqual([
      'inquiry.washouts[0].from: got "30 ft"; give a depth from 45 ft down',
    ]);
    expect(problems({ washouts: [{ ...sound, to: "400 ft" }] })).toEqual([
      'inquiry.washouts[0].to: got "400 ft"; give a depth of at most 300 ft, where the hole ends',
    ]);
    expect(problems({ washouts: [{ ...sound, to: "90 ft" }] })).toEqual([
      'inquiry.washouts[0].to: got "90 ft"; give a depth below 90 ft',
    ]);
    expect(problems({ washouts: [{ ...sound, diameter: "6 in" }] })).toEqual([
      'inquiry.washouts[0].diameter: got "6 in"; give a diameter over the 6 1/8 in that was drilled',
    ]);
    expect(problems({ washouts: [sound, sound] })).toEqual([
      'inquiry.washouts[1].from: got "90 ft"; give a depth from 110 ft down',
    ]);
  });
});

describe("the joint of a pipe", () => {
  it("goes into the hole, has a wall, and is shorter than the whole", () => {
    const sound = { outsideDiameter: "4 3/4 in", bore: "1 3/4 in", length: "18 in" };
    expect(problems({ joint: sound })).toEqual([]);
    expect(problems({ joint: { ...sound, outsideDiameter: "6 1/2 in" } })).toEqual([
      'inquiry.pipe.joint.outsideDiameter: got "6 1/2 in", which does not go into the hole of 6 1/8 in; give an outside diameter under 6 1/8 in',
    ]);
    expect(problems({ joint: { ...sound, bore: "5 in" } })).toEqual([
      'inquiry.pipe.joint.bore: got "5 in", which is not less than the outside diameter of 4 3/4 in; give a bore under 4 3/4 in',
    ]);
    expect(problems({ joint: { ...sound, length: "4 ft" }, pipe: { jointLength: "5 ft" } })).toEqual([]);
    expect(problems({ joint: { ...sound, length: "5 ft" }, pipe: { jointLength: "5 ft" } })).toEqual([
      'inquiry.pipe.joint.length: got "5 ft", which is not less than the whole joint of 5 ft; give the length of pin and box together, under 5 ft',
    ]);
  });
});
