import type { CardContent } from "@bitwright/engine";
import { element, type Svg } from "../svg/index.ts";
import { blowingWords } from "./bed-words.ts";
import { wholeFigure } from "./card-figures.ts";
import { oneLine } from "./card-lines.ts";
import type { CardPaper } from "./card-paper.ts";
import { breakInWords, casingOrder, gearWords, NO_GAUGE, notHereWords, toldOnce, whoWords } from "./card-words.ts";
import { depthsOf, groundOf, phoneBed } from "./phone-bed.ts";
import { PHONE_STYLE } from "./phone-style.ts";

/** Digest of the page's one style sheet, by which a strict policy lets it through; a test holds it to the style. */
export const PHONE_STYLE_DIGEST = "sha256-oYy4rQOVYgMw5YkrDlQuUjoLhbUsrVP3oju9OXQrmHQ=";

/** The page may do nothing but show itself in its own style. */
const POLICY = `default-src 'none'; style-src '${PHONE_STYLE_DIGEST}'`;

/**
 * The driller's card as a page for a phone, in one self-contained file without script: the bed is found by its depth, and
 * everything is said that the printed card may have no room for.
 */
export function phonePage(content: CardContent, paper: CardPaper): string {
  const title = `Driller's card: ${oneLine(content.job)}`;
  const parts = partsOf(content, paper).filter(({ inside }) => inside.length > 0);
  const head = element(
    "head",
    {},
    element("meta", { charset: "utf-8" }),
    element("meta", { "http-equiv": "Content-Security-Policy", content: POLICY }),
    element("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
    element("title", {}, title),
    { markup: `<style>${PHONE_STYLE}</style>` },
  );
  const body = element(
    "body",
    {},
    element(
      "main",
      {},
      element("h1", {}, title),
      ...paragraphs(whoWords(content, paper), "who"),
      ...paragraphs(`Hole ${wholeFigure(content.hole, paper.units)}. ${oneLine(content.bit)}`, "who"),
      ...paragraphs(bang(notHereWords(content)), "alert"),
      ...paragraphs(bang(casingOrder(content, paper.units, true)), "alert"),
      ...parts.flatMap(({ id, title: heading, inside }) => [element("h2", { id }, heading), ...inside]),
      ...paragraphs(content.standing),
      ...paragraphs(`${oneLine(paper.program)}, ${paper.units} units`, "who"),
    ),
    element(
      "nav",
      { class: "bar", "aria-label": "parts of the card" },
      ...parts.flatMap(({ id, bar }) => (bar === undefined ? [] : [element("a", { href: `#${id}` }, bar)])),
      element("input", { type: "checkbox", id: "night", "aria-label": "white on black, for the night" }),
      element("label", { for: "night" }, "Night"),
    ),
  );
  return `<!doctype html>\n${element("html", { lang: "en" }, head, body).markup}\n`;
}

/** A part of the page under its heading, and its word in the bar where the bar leads to it. */
interface Part {
  readonly id: string;
  readonly title: string;
  readonly bar?: string;
  readonly inside: readonly Svg[];
}

function partsOf(content: CardContent, { units, blownWith }: CardPaper): Part[] {
  const { rows, stopSigns, warnings, cautions } = content;
  const beds = rows.map((row, k) => ({ row, id: `bed-${k + 1}` }));
  const links = beds.map(({ row, id }) => depthLink(id, depthsOf(row, units), groundOf(row)));
  const deferrals = [...new Set(cautions.map(({ deferral }) => deferral))].join(" ");
  return [
    { id: "depths", title: "How deep are you?", bar: "Depth", inside: [element("ul", { class: "depths" }, ...links)] },
    {
      id: "beds",
      title: "Bed by bed",
      inside: [
        ...(blownWith ? paragraphs(blowingWords(blownWith, units)) : []),
        ...(hasNoGauge(content) ? paragraphs(NO_GAUGE) : []),
        ...beds.map(({ row, id }) => phoneBed(row, id, units, blownWith === undefined)),
      ],
    },
    {
      id: "start",
      title: "Make up and break in",
      bar: "Start",
      inside: [...paragraphs(gearWords(content, units, true)), ...paragraphs(breakInWords(content, units))],
    },
    {
      id: "stop",
      title: "Stop and look when",
      bar: "Stop",
      inside: list(stopSigns.map(({ sign, likely, act }) => [sign, `${likely}; ${act}`])),
    },
    { id: "watch", title: "Watch", inside: list(toldOnce(warnings).map((text) => [undefined, text])) },
    {
      id: "safety",
      title: "Safety",
      bar: "Safety",
      inside: [...list(cautions.map(({ topic, text }) => [topic, text])), ...paragraphs(deferrals, "alert")],
    },
  ];
}

function depthLink(id: string, depths: string, ground: string): Svg {
  return element("li", {}, element("a", { href: `#${id}` }, element("b", {}, depths), element("span", {}, ground)));
}

function list(items: readonly (readonly [lead: string | undefined, text: string])[]): Svg[] {
  if (items.length === 0) return [];
  return [
    element(
      "ul",
      {},
      ...items.map(([lead, text]) => {
        if (lead === undefined) return element("li", {}, oneLine(text));
        const start = `${lead.slice(0, 1).toUpperCase()}${lead.slice(1)}`;
        return element("li", {}, element("b", {}, `${start}:`), element("span", {}, ` ${oneLine(text)}`));
      }),
    ),
  ];
}

function paragraphs(text: string | undefined, kind?: string): Svg[] {
  return text === undefined || text === "" ? [] : [element("p", { class: kind }, oneLine(text))];
}

function bang(words: string | undefined): string | undefined {
  return words === undefined ? undefined : `! ${words}`;
}

function hasNoGauge({ rows }: CardContent): boolean {
  const joints = rows.flatMap(({ feed }) => feed);
  return joints.length > 0 && joints.every(({ gauge }) => gauge === undefined);
}
