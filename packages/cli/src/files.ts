import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { Complaint } from "./complaint.ts";

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  EISDIR: "this is a folder, a file is needed",
  EACCES: "it may not be read or written here",
  EPERM: "it may not be read or written here",
  ENOTDIR: "a part of the path is a file, not a folder",
  EEXIST: "a file stands where a folder is needed",
  ENOSPC: "the disk is full",
  EROFS: "the disk is read-only",
};

function reasonOf(error: unknown): string {
  const code = (error as { code?: string }).code ?? "";
  return REASONS[code] ?? `it cannot be used (${code || String(error)})`;
}

/** What is wrong with a file, in one line; a complaint stays as it is. */
export function complaintOfFile(path: string, error: unknown): Complaint {
  return error instanceof Complaint ? error : new Complaint([`${path}: ${reasonOf(error)}`]);
}

/** The bytes of a file. */
export function readBytes(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch (error) {
    throw complaintOfFile(path, error);
  }
}

/** Encodings of older editors, by the mark at the head of their files. */
const UTF16 = [
  { name: "utf-16le", mark: [0xff, 0xfe] },
  { name: "utf-16be", mark: [0xfe, 0xff] },
] as const;

/** The text of a file, as UTF-8 or, by its byte-order mark, as UTF-16. */
export function readText(path: string): string {
  const bytes = readBytes(path);
  const encoding = UTF16.find(({ mark }) => mark.every((byte, at) => bytes[at] === byte))?.name ?? "utf-8";
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    if (!text.includes("\0")) return text;
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
  }
  throw new Complaint([`${path}: this is no text; give a file saved as text in UTF-8`]);
}

/** The JSON value in a file. */
export function readJson(path: string): unknown {
  const text = readText(path);
  try {
    return JSON.parse(text);
  } catch (error) {
    // The machine's words may quote the file, line breaks and all: one problem stays one line.
    const words = (error instanceof Error ? error.message : String(error)).replace(/[\p{Cc}\s]+/gu, " ");
    throw new Complaint([`${path}: this is not JSON: ${words}`]);
  }
}

/** Writes a file of text or bytes, making its folder where needed. */
export function writeWhole(path: string, content: string | Uint8Array): void {
  try {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, content);
  } catch (error) {
    throw complaintOfFile(path, error);
  }
}
