import { StoreFault } from "./store-fault.ts";

const MOST_NAME = 80;
const MOST_WHO = 120;
const MOST_NOTE = 2000;

const NAME = /^[\p{L}\p{N}][\p{L}\p{M}\p{N} ._-]*$/u;
/** Halves of characters and the null character: no database gives them back as they were. */
const UNKEPT = /\p{Surrogate}|\0/u;

function refuse(field: string, value: string, expected: string): never {
  throw new StoreFault("bad-value", {
    field,
    got: value === "" ? "nothing" : JSON.stringify(shortened(value)),
    expected,
  });
}

const shortened = (text: string) => (text.length > 60 ? `${text.slice(0, 57)}...` : text);

/** A name of a paper or an attachment, in one spelling whatever machine it was typed on. */
export function givenName(field: string, name: string): string {
  const one = name.normalize("NFC");
  if (one.length > MOST_NAME || !NAME.test(one)) {
    const expected = `give 1 to ${MOST_NAME} letters, digits, spaces, dots, strokes and underscores, a letter or digit first`;
    refuse(field, name, expected);
  }
  return one;
}

/** Who does it: one line. */
export function givenWho(who: string): string {
  if (who.trim() === "" || who.length > MOST_WHO || /\p{Cc}/u.test(who) || UNKEPT.test(who)) {
    refuse("who", who, `give a name of 1 to ${MOST_WHO} characters in one line`);
  }
  return who;
}

/** What is said about it; may be empty and may run over lines. */
export function givenNote(note: string): string {
  if (note.length > MOST_NOTE || UNKEPT.test(note)) {
    refuse("note", note, `give at most ${MOST_NOTE} characters of plain text, got ${note.length}`);
  }
  return note;
}

/** A text that comes back from the database as it went in. */
export function givenText(field: string, text: string): string {
  if (UNKEPT.test(text)) refuse(field, text, "give text without null characters and halves of characters");
  return text;
}
