import { type NamedRock, parseQuantity } from "@bitwright/traveler";

/** Rocks named from a depth downward, or what is wrong with a line. */
export type NamedRocks =
  | { readonly ok: true; readonly rocks: NamedRock[] }
  | { readonly ok: false; readonly words: string };

/** Lines such as `44 ft gray shale`. */
export function namedRocks(text: string): NamedRocks {
  const rocks: NamedRock[] = [];
  for (const line of text.split("\n").filter((one) => one.trim() !== "")) {
    const [, depth = "", phrase = ""] = /^\s*([\d.,]+\s*(?:ft|m))\s+(.+)$/.exec(line) ?? [];
    const read = parseQuantity("depth", depth, "depth");
    if (!read.ok)
      return { ok: false, words: `"${line.trim()}" names no depth and rock; write it as: 44 ft gray shale` };
    rocks.push({ from: read.value.si, phrase });
  }
  return { ok: true, rocks };
}
