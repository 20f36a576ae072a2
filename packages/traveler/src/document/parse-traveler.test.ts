import { expect, it } from "vitest";
import { parseTraveler } from "./parse-traveler.ts";
import { travelerJsonSchema } from "./traveler-schema.ts";

it("x", () => {
  const t = {
    format: "bitwright-traveler",
    version: 1,
    job: { name: "A" },
    inquiry: { holes: [{ diameter: "6 1/8 in", to: "300 ft" }], rig: { pulldown: "3 lbf" } },
    ground: {
      beds: [
        { thickness: "42 ft", phrase: "brown sandy clay w/ gravel" },
        { bottom: "200 ft", rock: "limestone" },
      ],
    },
    bit: { spec: { profile: "flat" } },
  };
  console.log(JSON.stringify(parseTraveler(t), null, 1));
  console.log(JSON.stringify(travelerJsonSchema(), null, 1).slice(0, 6000));
});
