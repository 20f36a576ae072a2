import { CARD_LINK_BYTES } from "@bitwright/shop";
import { Complaint } from "./complaint.ts";

/** The address given for the code on the card: of the web, and short enough for the code. */
export function optionCardLink(text: string): string {
  const { protocol } = URL.canParse(text) ? new URL(text) : { protocol: "" };
  if (protocol !== "http:" && protocol !== "https:") {
    throw new Complaint([`--card-link: got "${text}"; give an address that begins with http:// or https://`]);
  }
  const bytes = Buffer.byteLength(text);
  if (bytes <= CARD_LINK_BYTES) return text;
  throw new Complaint([
    `--card-link: ${bytes} bytes long; at most ${CARD_LINK_BYTES}, or the code on the card is too fine to read`,
  ]);
}
