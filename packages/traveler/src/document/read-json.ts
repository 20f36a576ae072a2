/** The value of a JSON text, or where and why it is none. */
export type ReadJson =
  | { readonly ok: true; readonly value: unknown }
  | {
      readonly ok: false;
      /** Line of the fault, from 1 [-]. */
      readonly line: number;
      /** Column of the fault, from 1 [-]. */
      readonly column: number;
      /** What is wrong, in plain words. */
      readonly fault: string;
    };

/**
 * Reads a JSON text. The fault is found by a walk of our own, because the words and the places that the machines give
 * differ from one to the next.
 */
export function readJson(text: string): ReadJson {
  const plain = text.replace(/^\uFEFF/, "");
  try {
    return { ok: true, value: JSON.parse(plain) };
  } catch {
    const { at, fault } = firstFault(plain);
    const before = plain.slice(0, at).split("\n");
    return { ok: false, line: before.length, column: (before.at(-1) ?? "").length + 1, fault };
  }
}

interface Fault {
  /** Characters before the fault [-]. */
  readonly at: number;
  readonly fault: string;
}

// Control characters below the space are not allowed in a JSON text; those from DEL upward are.
const STRING = /"(?:[^"\\\p{Cc}]|[\u007f-\u009f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])/y;
const WORD = /(?:true|false|null)(?!\w)/y;
const SPACE = /[ \t\r\n]*/y;

function match(pattern: RegExp, text: string, at: number): number {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0].length ?? 0;
}

/** A walk over the text with the open braces and brackets on a stack, up to the first place that fits nothing. */
function firstFault(text: string): Fault {
  const open: ("{" | "[")[] = [];
  let at = match(SPACE, text, 0);
  if (at >= text.length) return { at: 0, fault: "the file is empty" };
  /** What may come next: a value, a name or the end of a group just begun, or what follows a value. */
  let awaits: "value" | "value or end" | "name" | "name or end" | "after value" = "value";
  while (at < text.length) {
    const mark = text[at] ?? "";
    const inside = open.at(-1);
    if (awaits === "after value") {
      if (inside === undefined) return { at, fault: `the document has ended, but ${quoted(text, at)} follows` };
      if (mark === ",") awaits = inside === "{" ? "name" : "value";
      else if (mark === closing(inside)) open.pop();
      else return { at, fault: `a comma or ${closing(inside)} is missing before ${quoted(text, at)}` };
      at += 1;
    } else if (awaits === "name" || awaits === "name or end") {
      if (mark === "}" && awaits === "name or end") {
        open.pop();
        awaits = "after value";
        at += 1;
      } else if (mark === "}") {
        return { at, fault: "a comma stands before }, with no field behind it" };
      } else {
        const length = match(STRING, text, at);
        if (length === 0) return { at, fault: `a field name in double quotes is missing before ${quoted(text, at)}` };
        at += length;
        at += match(SPACE, text, at);
        if (at >= text.length) break;
        if (text[at] !== ":") return { at, fault: `a colon is missing before ${quoted(text, at)}` };
        at += 1;
        awaits = "value";
      }
    } else if (mark === "]" && awaits === "value or end") {
      open.pop();
      awaits = "after value";
      at += 1;
    } else if (mark === "{" || mark === "[") {
      open.push(mark);
      awaits = mark === "{" ? "name or end" : "value or end";
      at += 1;
    } else {
      const length = match(STRING, text, at) || match(NUMBER, text, at) || match(WORD, text, at);
      if (length === 0) return { at, fault: valueFault(text, at) };
      at += length;
      awaits = "after value";
    }
    at += match(SPACE, text, at);
  }
  const inside = open.at(-1);
  return {
    at,
    fault: inside ? `the text ends before the ${closing(inside)} that closes it` : "the text ends too soon",
  };
}

function valueFault(text: string, at: number): string {
  const mark = text[at] ?? "";
  if (mark === '"') return "a text is not closed by a double quote on its line, or holds a bare backslash";
  if (mark === "'") return "texts stand in double quotes, not in single ones";
  if (mark === "]" || mark === "}") return `a value is missing before ${mark}`;
  if (mark === ",") return "a value is missing before the comma";
  if (/^[-+]?(nan|inf)/i.test(text.slice(at))) return `${quoted(text, at)} is no number to work with`;
  return `${quoted(text, at)} is no value: give a text in double quotes, a number, true, false, a list or a group`;
}

function closing(open: "{" | "["): string {
  return open === "{" ? "}" : "]";
}

function quoted(text: string, at: number): string {
  const word = /[^\s,:[\]{}"]+|./y;
  word.lastIndex = at;
  return (word.exec(text)?.[0] ?? "the end").slice(0, 20);
}
