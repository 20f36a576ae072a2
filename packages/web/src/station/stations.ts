import type { StationName } from "@bitwright/traveler";

/** A screen of the traveler, in the order of the job. */
export interface Screen {
  readonly id: ScreenId;
  readonly name: string;
  /** The question that the screen answers. */
  readonly question: string;
  /** Stations of the workup whose findings stand here. */
  readonly findingsOf: readonly StationName[];
  /** Beginnings of the paths that are filled in here. */
  readonly asks: readonly string[];
}

export type ScreenId = "inquiry" | "ground" | "advice" | "card";

export const SCREENS: readonly Screen[] = [
  {
    id: "inquiry",
    name: "Inquiry",
    question: "What does the driller need, and with what?",
    findingsOf: ["inquiry"],
    asks: ["job", "inquiry", "prices", "lists", "traveler"],
  },
  {
    id: "ground",
    name: "Ground",
    question: "What will the bit meet?",
    findingsOf: ["ground"],
    asks: ["ground"],
  },
  {
    id: "advice",
    name: "Advice",
    question: "Is PDC the tool, and which bit?",
    findingsOf: ["advice", "bit"],
    asks: ["bit", "overrides"],
  },
  {
    id: "card",
    name: "Card",
    question: "What does the driller do?",
    findingsOf: ["cut", "string", "stability", "flow", "life"],
    asks: [],
  },
];

/** The screen on which a finding of a station stands. */
export function screenOfStation(station: StationName): Screen {
  return SCREENS.find(({ findingsOf }) => findingsOf.includes(station)) ?? FIRST;
}

/** The screen on which the field at a path is filled in. */
export function screenOfField(place: string): Screen {
  const [head = ""] = place.split(/[.[]/);
  return SCREENS.find(({ asks }) => asks.includes(head)) ?? FIRST;
}

const [FIRST] = SCREENS as unknown as readonly [Screen, ...Screen[]];
