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

export type ScreenId = "inquiry" | "ground" | "advice" | "cut" | "string" | "flow" | "card";

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
    asks: ["bit"],
  },
  {
    id: "cut",
    name: "Cut",
    question: "What does each cutter do, and how fast?",
    findingsOf: ["cut", "stability"],
    asks: ["overrides"],
  },
  {
    id: "string",
    name: "String",
    question: "What weight is really on the bit?",
    findingsOf: ["string"],
    asks: [],
  },
  {
    id: "flow",
    name: "Flow",
    question: "Is the bit cooled and the hole cleaned?",
    findingsOf: ["flow"],
    asks: [
      "overrides.flow",
      "overrides.limits.coolingFlow",
      "overrides.limits.upholeSpeed",
      "overrides.limits.cuttingsShare",
    ],
  },
  {
    id: "card",
    name: "Card",
    question: "What does the driller do?",
    findingsOf: ["life"],
    asks: [],
  },
];

/** The screen on which a finding of a station stands. */
export function screenOfStation(station: StationName): Screen {
  return SCREENS.find(({ findingsOf }) => findingsOf.includes(station)) ?? FIRST;
}

/** The screen on which the field at a path is filled in: the one that names the longest beginning of it. */
export function screenOfField(place: string): Screen {
  const named = SCREENS.flatMap((screen) => screen.asks.map((beginning) => ({ screen, beginning })))
    .filter(({ beginning }) => place === beginning || /^[.[]/.test(place.slice(beginning.length)))
    .filter(({ beginning }) => place.startsWith(beginning))
    .sort((a, b) => b.beginning.length - a.beginning.length);
  return named[0]?.screen ?? FIRST;
}

const [FIRST] = SCREENS as unknown as readonly [Screen, ...Screen[]];
