/** A number at the head of a text, and what is left behind it. */
export interface NumberText {
  /** The number read [unit of the text]. */
  readonly value: number;
  /** The rest of the text, trimmed. */
  readonly rest: string;
  /**
   * How a single comma or a group of marks was taken: `thousands` and `either` are those that a unit must settle.
   * `either`: one comma with exactly three figures behind it, which may be a thousands or a decimal mark.
   */
  readonly comma: "none" | "thousands" | "decimal" | "either";
}

/** What is wrong with a number that could not be read. */
export interface NumberFault {
  readonly fault: string;
}

const VULGAR: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

const MIXED = /^(?<whole>\d+)(?:\s*[-+]\s*|\s+)(?<over>\d+)\s*[/⁄]\s*(?<under>\d+)(?<rest>.*)$/s;
const FRACTION = /^(?<over>\d+)\s*[/⁄]\s*(?<under>\d+)(?<rest>.*)$/s;
const SPACED = /^(?<digits>\d{1,3}(?:[ \u00a0\u2009\u202f]\d{3})+(?:[.,]\d+)?)(?![\d.,])(?<rest>.*)$/s;
const PLAIN = /^(?<digits>(?:\d[\d.,]*|[.,]\d+))(?<power>[eE][+-]?\d+)?(?<rest>.*)$/s;

/**
 * The number that a text begins with: decimal with point or comma, thousands groups, a fraction (`12/32`) or a whole
 * with a fraction (`6 1/8`, `6-1/8`, `6⅛`).
 *
 * Comma and point. Both present: the last one is the decimal mark. Several of one: thousands, in groups of three. One
 * point: decimal mark. One comma: decimal mark, unless exactly three figures follow and one to three figures, the
 * first not zero, stand before; such a comma is `either` and the unit decides (see `parseQuantity`); its value is
 * given as if it were a thousands mark.
 */
export function numberAtHead(text: string): NumberText | NumberFault {
  let head = text.trim().replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/g, (mark) => ` ${VULGAR[mark]}`);
  head = head.trim();
  const negative = /^[-−–]/.test(head);
  head = head.replace(/^[-−–+]\s*/, "");
  const sign = negative ? -1 : 1;

  const fraction = MIXED.exec(head)?.groups ?? FRACTION.exec(head)?.groups;
  if (fraction) {
    const { whole = "0", over = "", under = "", rest = "" } = fraction;
    if (Number(under) === 0) return { fault: "a fraction over zero is no number" };
    if (fraction.whole !== undefined && Number(over) >= Number(under)) {
      return { fault: "the fraction behind a whole number must be less than one" };
    }
    return { value: sign * (Number(whole) + Number(over) / Number(under)), rest: rest.trim(), comma: "none" };
  }

  const spaced = SPACED.exec(head)?.groups;
  const plain = PLAIN.exec(head)?.groups;
  if (spaced) {
    const digits = (spaced.digits ?? "").replace(/[ \u00a0\u2009\u202f]/g, "").replace(",", ".");
    return { value: sign * Number(digits), rest: (spaced.rest ?? "").trim(), comma: "none" };
  }
  if (!plain) return { fault: "it does not begin with a number" };
  // A mark at the very end belongs to the sentence, not to the number.
  const digits = (plain.digits ?? "").replace(/[.,]$/, "");
  const read = decimalOf(digits);
  if ("fault" in read) return read;
  const value = sign * Number(`${read.plain}${plain.power ?? ""}`);
  if (!Number.isFinite(value)) return { fault: "the number is too large to hold" };
  return { value, rest: (plain.rest ?? "").trim(), comma: read.comma };
}

const GROUPED_BY_COMMA = /^\d{1,3}(,\d{3})+$/;
const GROUPED_BY_POINT = /^\d{1,3}(\.\d{3})+$/;

function decimalOf(digits: string): { plain: string; comma: NumberText["comma"] } | NumberFault {
  const commas = digits.split(",").length - 1;
  const points = digits.split(".").length - 1;
  const badGroups = { fault: "its commas and points do not part it into thousands" };
  if (commas > 0 && points > 0) {
    const decimal = digits.lastIndexOf(",") > digits.lastIndexOf(".") ? "," : ".";
    const at = digits.lastIndexOf(decimal);
    const whole = digits.slice(0, at);
    const grouped = decimal === "," ? GROUPED_BY_POINT : GROUPED_BY_COMMA;
    if (!grouped.test(whole)) return badGroups;
    return { plain: `${whole.replace(/[.,]/g, "")}.${digits.slice(at + 1)}`, comma: "none" };
  }
  if (points > 1)
    return GROUPED_BY_POINT.test(digits) ? { plain: digits.replace(/\./g, ""), comma: "none" } : badGroups;
  if (commas > 1) {
    return GROUPED_BY_COMMA.test(digits) ? { plain: digits.replace(/,/g, ""), comma: "thousands" } : badGroups;
  }
  if (commas === 0) return { plain: digits, comma: "none" };
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) return { plain: digits.replace(",", ""), comma: "either" };
  return { plain: digits.replace(",", "."), comma: "decimal" };
}
