export type { Attaching, AttachmentEntry, Attachments } from "./attachments.ts";
export { bytesInWords, type StoreLimits } from "./limits.ts";
export { openStore, type Store, type StoreOptions } from "./open-store.ts";
export type * from "./paper.ts";
export type { Papers } from "./papers.ts";
export type { BackupCounts } from "./shop-file/shop-file.ts";
export { type FaultKind, StoreFault } from "./store-fault.ts";
