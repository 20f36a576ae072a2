import type { KeptTable } from "../database/tables.ts";

/** The mark by which a zip is known to be a backup of a shop. */
export const SHOP_FORMAT = "bitwright-shop";
/** The version of the backup that this program writes; it reads this and all before [-]. */
export const SHOP_VERSION = 1;

/** The entry that names all the others; written last. */
export const CONTENTS = "shop.json";

/** The tables that go in as lines of JSON, those that others belong to first. */
export const KEPT_TABLES: readonly KeptTable[] = ["paper", "paper_version", "refusal", "attachment"];

/** The entry with the rows of a table. */
export const entryOfTable = (table: KeptTable) => `${table}.jsonl`;
/** The entry with the bytes of an attachment. */
export const entryOfAttachment = (id: string) => `attachments/${id}`;

/** What a backup says of itself. */
export interface ShopContents {
  readonly format: typeof SHOP_FORMAT;
  readonly version: number;
  readonly program: string;
  readonly madeAt: string;
  readonly entries: readonly {
    readonly name: string;
    /** Unpacked [B]. */
    readonly size: number;
    readonly sha256: string;
  }[];
}

/** How much is in a backup. */
export interface BackupCounts {
  /** [-] */
  readonly papers: number;
  /** [-] */
  readonly versions: number;
  /** [-] */
  readonly refusals: number;
  /** [-] */
  readonly attachments: number;
}
