/** What a bed can do to a bit, a hole or a crew. */
export type Hazard =
  | "impact"
  | "abrasion"
  | "sticky"
  | "caving"
  | "lost-circulation"
  | "swelling"
  | "hard-stringers"
  | "silica-dust"
  | "gas";

/** Each hazard in the words of the trade, as printed on paper and on the terminal. */
export const HAZARD_WORDS: Readonly<Record<Hazard, string>> = {
  impact: "loose or hard pieces that knock diamond off the cutters",
  abrasion: "grinds flats on the cutters",
  sticky: "balls up the bit and its slots",
  caving: "hole walls fall in",
  "lost-circulation": "takes the drilling fluid",
  swelling: "squeezes the hole as it takes up water",
  "hard-stringers": "hard bands in softer ground: uneven load from wing to wing",
  "silica-dust": "fine quartz dust harms the lungs when drilled dry: keep it wet or collected, follow the local rules",
  gas: "may give off gas: test the air, keep flames away, follow the local rules",
};
