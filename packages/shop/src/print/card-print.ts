import type { CardContent } from "@bitwright/engine";
import type { UnitSystem, Workup } from "@bitwright/traveler";
import { CARD_LINK_BYTES, type CardPaper, cardPaperOf, cardSheet, SHEET_STEPS } from "../card/index.ts";
import { qrSvg, xmlText } from "../svg/index.ts";
import { CARD_LAYOUT } from "./card-layout.ts";
import { slimSvg } from "./slim-svg.ts";
import { typesetter } from "./typesetter.ts";

/** Cards that the typesetter keeps parts of, so that the next is set sooner and a long process does not grow [-]. */
const KEPT_PRINTS = 10;

/** How the card is printed. */
export interface CardPrintOptions {
  readonly units: UnitSystem;
  /** Name and version of the program, printed on the card. */
  readonly program: string;
  /** Where the card can be read on a phone; printed as a QR code. */
  readonly link?: string;
}

/** The card as it prints: one page, as a PDF and as the same page in SVG. */
export interface CardPrint {
  readonly pdf: Uint8Array;
  readonly svg: string;
  /** The step of size and fullness at which it fitted. */
  readonly step: string;
  /** What did not fit, as the card says it; empty where all is said. */
  readonly leftOut: string;
}

/** The driller's card of a workup as it prints; see {@link setCard}. */
export function cardPrint(workup: Workup, { units, program, link }: CardPrintOptions): CardPrint {
  return setCard(workup.card, cardPaperOf(workup, { units, program }), link);
}

/**
 * Sets the driller's card on one page, letter in field units and A4 in metric: in the largest type in which it fits, with
 * what had to be left out said on it. The same content gives the same bytes.
 *
 * @throws where the link is empty or longer than {@link CARD_LINK_BYTES}
 */
export function setCard(content: CardContent, paper: CardPaper, link?: string): CardPrint {
  const { compiler, set } = typesetter();
  const qr: Record<string, string> = link === undefined ? {} : { qr: qrSvg(link, CARD_LINK_BYTES) };
  for (const step of SHEET_STEPS) {
    const sheet = cardSheet(content, paper, step);
    const page = set(CARD_LAYOUT, { card: JSON.stringify(sheet), ...qr });
    if (page.numOfPages > 1) continue;
    const print = {
      pdf: compiler.pdf(page, { pdfTags: true }),
      svg: named(slimSvg(compiler.plainSvg(page)), `Driller's card: ${content.job}`),
      step: step.name,
      leftOut: sheet.leftOut,
    };
    compiler.evictCache(KEPT_PRINTS);
    return print;
  }
  throw new Error("the card does not fit on a page even at its shortest");
}

/** A drawing whose letters are outlines says nothing to who listens to it, but by its title. */
function named(svg: string, title: string): string {
  return svg.replace(
    /^<svg ([^>]*)>/,
    (_, attributes) => `<svg role="img" ${attributes}><title>${xmlText(title)}</title>`,
  );
}
