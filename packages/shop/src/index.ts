export * from "./face/index.ts";
export type { SheetTitle } from "./sheet/index.ts";
