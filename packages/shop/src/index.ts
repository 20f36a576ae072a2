export * from "./card/index.ts";
export * from "./face/index.ts";
export * from "./profile/index.ts";
export type { SheetTitle } from "./sheet/index.ts";
export * from "./table/index.ts";
