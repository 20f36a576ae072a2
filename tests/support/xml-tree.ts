/** One element of a small XML document: enough for reading drawings back. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  /** Text straight inside this element. */
  readonly text: string;
}

/**
 * Reads a document and holds it to being well formed: one root, tags that close in order, quoted attributes named once,
 * no bare `<` or `&`, only known entities. No doctype, no comments, no processing but the first line.
 */
export function xmlTree(document: string): XmlElement {
  const source = document.replace(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n/, "");
  let at = 0;
  const fail = (what: string): never => {
    throw new Error(`not well formed at ${at}: ${what}: ${source.slice(Math.max(0, at - 40), at + 40)}`);
  };
  const take = (pattern: RegExp): RegExpExecArray | undefined => {
    const sticky = new RegExp(pattern.source, "uy");
    sticky.lastIndex = at;
    const match = sticky.exec(source);
    if (match) at += match[0].length;
    return match ?? undefined;
  };
  const plain = (text: string): string => {
    const unknown = /&(?!(amp|lt|gt|quot|apos);)/.exec(text);
    if (unknown || text.includes("<")) fail(`bare mark in "${text}"`);
    const entities: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };
    return text.replace(/&(\w+);/g, (_, name: string) => entities[name]);
  };
  const element = (): XmlElement => {
    const open = take(/<([A-Za-z][\w:-]*)/) ?? fail("a tag was wanted");
    const name = open[1];
    const attributes: Record<string, string> = {};
    for (let match = take(/\s+([A-Za-z][\w:-]*)="([^"<]*)"/); match; match = take(/\s+([A-Za-z][\w:-]*)="([^"<]*)"/)) {
      if (match[1] in attributes) fail(`${match[1]} twice`);
      attributes[match[1]] = plain(match[2]);
    }
    if (take(/\s*\/>/)) return { name, attributes, children: [], text: "" };
    if (!take(/\s*>/)) fail(`${name} does not end`);
    const children: XmlElement[] = [];
    let text = "";
    for (;;) {
      text += plain(take(/[^<]*/)?.[0] ?? "");
      if (take(new RegExp(`</${name}>`))) return { name, attributes, children, text };
      if (source[at + 1] === "/" || at >= source.length) fail(`${name} is not closed`);
      children.push(element());
    }
  };
  const root = element();
  take(/\s*/);
  if (at !== source.length) fail("something follows the root");
  return root;
}

/** All elements of a tree that pass, in document order. */
export function elementsWhere(root: XmlElement, passes: (element: XmlElement) => boolean): XmlElement[] {
  return [...(passes(root) ? [root] : []), ...root.children.flatMap((child) => elementsWhere(child, passes))];
}
