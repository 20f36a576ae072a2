import type { FieldGroup } from "./field-group.ts";

/** Everything that a person gives at the inquiry, in the order in which it is asked on the phone. */
export const INQUIRY_GROUPS: readonly FieldGroup[] = [
  {
    heading: "The job",
    path: ["job"],
    open: true,
    fields: [
      { step: "name", label: "Name of the job" },
      { step: "number", label: "Job number" },
      { step: "customer", label: "Customer" },
      { step: "shop", label: "Shop" },
      { step: "date", label: "Date" },
      { step: "currency", label: "Currency" },
      { step: "notes", label: "Notes", lines: true },
    ],
  },
  {
    heading: "Holes, from the top down",
    path: ["inquiry", "holes"],
    open: true,
    list: { one: "Hole", add: "Add a hole" },
    fields: [
      { step: "name", label: "Called" },
      { step: "diameter", label: "Hole diameter" },
      { step: "from", label: "From" },
      { step: "to", label: "To" },
      { step: "casingBore", label: "Bore of its casing" },
    ],
  },
  {
    heading: "This bit and the site",
    path: ["inquiry"],
    open: true,
    fields: [
      { step: "bitHole", label: "Hole that this bit drills", picks: "holes" },
      { step: "depth", label: "Finished depth" },
      { step: "waterLevel", label: "Standing water at" },
      { step: "altitude", label: "Height above the sea" },
    ],
  },
  {
    heading: "Rig",
    path: ["inquiry", "rig"],
    open: true,
    fields: [
      { step: "preset", label: "Rig of the list", picks: "rigs" },
      { step: "name", label: "Rig" },
      { step: "pullDown", label: "Pull-down" },
      { step: "hoist", label: "Hoist" },
      { step: "topHeadWeight", label: "Weight of the top head" },
      { step: "torque", label: "Torque" },
      { step: "rotarySpeedMin", label: "Slowest rotary" },
      { step: "rotarySpeedMax", label: "Fastest rotary" },
      { step: "power", label: "Rotary power" },
      { step: "gaugeForceFactor", label: "Force for each unit on the feed gauge" },
      { step: "feedGaugeZero", label: "Gauge that just moves the empty feed" },
      { step: "drag", label: "Drag of the string" },
    ],
  },
  {
    heading: "Gears of the rotary",
    path: ["inquiry", "rig", "rotarySpeeds"],
    list: { one: "Gear", add: "Add a gear" },
    fields: [{ step: "", label: "Speed" }],
  },
  {
    heading: "Mud pump",
    path: ["inquiry", "pump"],
    open: true,
    fields: [
      { step: "preset", label: "Pump of the list", picks: "pumps" },
      { step: "name", label: "Pump" },
      { step: "flow", label: "Flow at the bit" },
      { step: "pressureRating", label: "Pressure it holds all day" },
      { step: "lumpSize", label: "Largest lump let through" },
      { step: "surfaceGear", label: "Surface gear as length of pipe" },
    ],
  },
  {
    heading: "Fluid end of a piston pump",
    path: ["inquiry", "pump", "piston"],
    fields: [
      { step: "liner", label: "Liner bore" },
      { step: "stroke", label: "Stroke" },
      { step: "strokes", label: "Strokes" },
      { step: "cylinders", label: "Cylinders" },
      { step: "action", label: "Acting" },
      { step: "rod", label: "Piston rod" },
      { step: "efficiency", label: "Delivered share" },
    ],
  },
  {
    heading: "Curve of a centrifugal pump",
    path: ["inquiry", "pump", "curve"],
    list: { one: "Point", add: "Add a point" },
    fields: [
      { step: "flow", label: "Flow" },
      { step: "pressure", label: "Pressure" },
    ],
  },
  {
    heading: "Compressor",
    path: ["inquiry", "compressor"],
    caution:
      "Air under pressure can kill. Hoses, relief valves and their ratings are the maker's and the code's to say.",
    fields: [
      { step: "flow", label: "Free air" },
      { step: "pressure", label: "Delivery pressure" },
    ],
  },
  {
    heading: "Drill pipe",
    path: ["inquiry", "pipe"],
    open: true,
    fields: [
      { step: "preset", label: "Pipe of the list", picks: "pipe" },
      { step: "name", label: "Pipe" },
      { step: "outsideDiameter", label: "Outside diameter" },
      { step: "bore", label: "Bore" },
      { step: "weight", label: "Weight with joints" },
      { step: "jointLength", label: "Length of a joint" },
      { step: "connection", label: "Connection", suggests: "connections" },
    ],
  },
  {
    heading: "Collars, from the bit upward",
    path: ["inquiry", "collars"],
    list: { one: "Collars", add: "Add collars" },
    fields: [
      { step: "outsideDiameter", label: "Outside diameter" },
      { step: "bore", label: "Bore" },
      { step: "length", label: "Length" },
      { step: "weight", label: "Weight" },
    ],
  },
  {
    heading: "Drilling fluid",
    path: ["inquiry", "fluid"],
    open: true,
    fields: [
      { step: "kind", label: "Fluid" },
      { step: "density", label: "Density" },
      { step: "plasticViscosity", label: "Plastic viscosity" },
      { step: "yieldPoint", label: "Yield point" },
      { step: "temperature", label: "Temperature going down" },
    ],
  },
  {
    heading: "Dial readings of the viscometer",
    path: ["inquiry", "fluid", "dialReadings"],
    fields: [
      { step: "at600", label: "At 600" },
      { step: "at300", label: "At 300" },
      { step: "at6", label: "At 6" },
      { step: "at3", label: "At 3" },
    ],
  },
  {
    heading: "What they drill with now",
    path: ["inquiry", "presentTool"],
    fields: [
      { step: "kind", label: "Tool" },
      { step: "rate", label: "Rate it makes" },
      { step: "notes", label: "What is said of it" },
    ],
  },
  {
    heading: "What the driller means to run",
    path: ["inquiry", "targets"],
    fields: [
      { step: "weight", label: "Weight on the bit" },
      { step: "rotarySpeed", label: "Rotary speed" },
      { step: "rate", label: "Rate hoped for" },
    ],
  },
];
