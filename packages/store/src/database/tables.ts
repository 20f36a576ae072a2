import type { Kysely, Transaction } from "kysely";

/** A traveler, a list or a setting: what all its versions share. */
interface PaperRow {
  id: string;
  kind: string;
  name: string;
  /** Number of the newest version, 1 for the first [-]. */
  current: number;
  /** Saves that were refused because they built on an older version [-]. */
  refused: number;
}

/** One saved version; never changed afterwards. */
interface VersionRow {
  paper_id: string;
  number: number;
  saved_at: string;
  saved_by: string;
  note: string;
  program: string;
  title: string;
  sound: number;
  body: string;
}

/** A save that was refused, whole. */
interface RefusalRow {
  paper_id: string;
  number: number;
  based_on: number;
  found: number;
  refused_at: string;
  saved_by: string;
  note: string;
  program: string;
  body: string;
}

/** A file that goes with a traveler; its bytes lie in pieces. */
interface AttachmentRow {
  id: string;
  paper_id: string;
  name: string;
  media_type: string;
  size: number;
  sha256: string;
  added_at: string;
  added_by: string;
  note: string;
}

interface PieceRow {
  attachment_id: string;
  number: number;
  bytes: Uint8Array;
}

/** The tables of a shop, the same on every database. */
export interface Tables {
  paper: PaperRow;
  paper_version: VersionRow;
  refusal: RefusalRow;
  attachment: AttachmentRow;
  attachment_piece: PieceRow;
}

/** A database of a shop, inside or outside a transaction. */
export type Shop = Kysely<Tables> | Transaction<Tables>;

/** Columns of the tables that go into a backup as rows of text and whole numbers. */
export const KEPT_COLUMNS = {
  paper: { id: "string", kind: "string", name: "string", current: "number", refused: "number" },
  paper_version: {
    paper_id: "string",
    number: "number",
    saved_at: "string",
    saved_by: "string",
    note: "string",
    program: "string",
    title: "string",
    sound: "number",
    body: "string",
  },
  refusal: {
    paper_id: "string",
    number: "number",
    based_on: "number",
    found: "number",
    refused_at: "string",
    saved_by: "string",
    note: "string",
    program: "string",
    body: "string",
  },
  attachment: {
    id: "string",
    paper_id: "string",
    name: "string",
    media_type: "string",
    size: "number",
    sha256: "string",
    added_at: "string",
    added_by: "string",
    note: "string",
  },
} as const;

/** A table that goes into a backup as rows. */
export type KeptTable = keyof typeof KEPT_COLUMNS;
