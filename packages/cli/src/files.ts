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

/** The bytes of a file. */
export function readBytes(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch (error) {
    throw new Complaint([`${path}: ${reasonOf(error)}`]);
  }
}

/** The text of a file, as UTF-8, a byte-order mark left out. */
export function readText(path: string): string {
  return new TextDecoder("utf-8").decode(readBytes(path));
}

/** The JSON value in a file. */
export function readJson(path: string): unknown {
  const text = readText(path);
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Complaint([`${path}: this is not JSON: ${error instanceof Error ? error.message : String(error)}`]);
  }
}

/** Writes a file, making its folder where needed. */
export function writeText(path: string, text: string): void {
  try {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  } catch (error) {
    throw new Complaint([`${path}: ${reasonOf(error)}`]);
  }
}
