import { spoilt } from "./spoilt.ts";

const open = ["inquiry", "holes", 1] as const;
const shaleOverLimestone = [
  { bottom: "100 ft", rock: "shale" },
  { bottom: "300 ft", rock: "limestone" },
];

/** The least that a person can say: a name, a hole, one bed. */
const minimal = {
  format: "bitwright-traveler",
  version: 1,
  job: { name: "A hole" },
  inquiry: { holes: [{ diameter: "6 in", to: "100 ft" }] },
  ground: { beds: [{ bottom: "100 ft", rock: "shale" }] },
};

/** The least, with another hole. */
const hole = (diameter: string, beds: readonly object[] = shaleOverLimestone) => ({
  ...minimal,
  inquiry: { holes: [{ diameter, to: "300 ft" }] },
  ground: { beds },
});

const fluid = (kind: string, more: object = {}) => {
  const { inquiry, ...rest } = hole("6 1/8 in");
  return { ...rest, inquiry: { ...inquiry, fluid: { kind }, ...more } };
};

const overrides = (value: object) => spoilt(["overrides"], value);

/** Jobs that are sound and off the beaten track; every one of them has to be worked up without a stumble. */
export const ODD_TRAVELERS = {
  minimal,
  "air with its compressor": fluid("air", { compressor: { flow: "750 cfm", pressure: "250 psi" } }),
  "air without a compressor": fluid("air"),
  mist: fluid("mist"),
  foam: fluid("foam"),
  "polymer by dial readings": spoilt(["inquiry", "fluid"], {
    kind: "polymer",
    density: "8.5 ppg",
    dialReadings: { at600: 24, at300: 16, at6: 4, at3: 3 },
  }),
  "no gauge factor": spoilt(["inquiry", "rig", "gaugeForceFactor"], undefined),
  "no collars": spoilt(["inquiry", "collars"], undefined),
  "heavy collars": spoilt(["inquiry", "collars", 0, "length"], "90 ft"),
  "only gravel": hole("6 1/8 in", [{ bottom: "300 ft", phrase: "gravel and boulders" }]),
  "only granite": hole("6 1/8 in", [{ bottom: "300 ft", rock: "granite" }]),
  "only clay": hole("6 1/8 in", [{ bottom: "300 ft", rock: "clay" }]),
  "quartzite between shales": hole("6 1/8 in", [
    { bottom: "100 ft", rock: "shale" },
    { bottom: "200 ft", rock: "quartzite" },
    { bottom: "300 ft", rock: "shale" },
  ]),
  "a phrase that names nothing": hole("6 1/8 in", [{ bottom: "300 ft", phrase: "blue stuff" }]),
  "12 in hole": hole("12 in"),
  "3 in hole": hole("3 in"),
  "17 1/2 in hole": hole("17 1/2 in"),
  "beds that end above the bottom": hole("6 1/8 in", [{ bottom: "100 ft", rock: "shale" }]),
  "a gap between beds": spoilt(["ground", "beds", 3, "top"], "200 ft"),
  "a bit for the upper hole": spoilt(
    ["inquiry", "bitHole"],
    "surface hole",
    spoilt(["bit", "spec"], {}, spoilt(["ground", "beds", 1], { bottom: "45 ft", rock: "sandstone" })),
  ),
  "a very deep hole": spoilt([...open, "to"], "6000 ft", spoilt(["ground", "beds", 3, "bottom"], "6000 ft")),
  "weight by hand": overrides({ weight: "3000 lbf" }),
  "too much weight by hand": overrides({ weight: "60 klbf" }),
  "speed by hand": overrides({ rotarySpeed: "60 rpm" }),
  "flow by hand": overrides({ flow: "90 gpm" }),
  "a piston pump by its liners": spoilt(["inquiry", "pump"], {
    piston: { liner: "5 in", stroke: "6 in", strokes: "90 spm" },
  }),
  "a centrifugal pump": spoilt(["inquiry", "pump"], {
    curve: [
      { flow: "0 gpm", pressure: "60 psi" },
      { flow: "150 gpm", pressure: "52 psi" },
      { flow: "300 gpm", pressure: "20 psi" },
    ],
  }),
  "a pump too weak for its hole": spoilt(["inquiry", "pump", "pressureRating"], "40 psi"),
  "limits and rocks by hand": overrides({
    limits: { rate: "60 ft/h", torque: "600 ft-lbf" },
    rocks: { shale: { ucs: "4000 psi" } },
  }),
  "a weak rig": spoilt(["inquiry", "rig"], { pullDown: "500 lbf", torque: "150 ft-lbf", hoist: "12 klbf" }),
  "rock and cutter of the shop's own": {
    ...hole("6 1/8 in", [{ bottom: "300 ft", rock: "hollin-blue" }]),
    lists: {
      rocks: [{ id: "hollin-blue", name: "Hollin blue shale", like: "shale", ucs: "3500 psi" }],
      cutters: [{ code: "1410", faceDiameter: "14 mm", length: "10 mm" }],
    },
    bit: { spec: { cutter: "1410" } },
  },
  "one wing": spoilt(["bit", "spec"], { wings: 1, cuttersPerWing: 2 }),
  "one measured cutter": spoilt(["bit"], {
    measured: { rows: [{ radius: 20, azimuth: 0, height: 0, backRake: 15, cutter: "1308" }] },
  }),
} as const satisfies Readonly<Record<string, unknown>>;

/** Name of one of them. */
export type OddTraveler = keyof typeof ODD_TRAVELERS;
