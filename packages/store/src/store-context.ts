import type { StoreLimits } from "./limits.ts";

/** What the store is told by its caller, so that it reads no clock and draws no lot of its own. */
export interface StoreContext {
  /** Name and version of the program, kept with every version. */
  readonly program: string;
  readonly now: () => Date;
  /** An id that was never given before, such as a random UUID. */
  readonly newId: () => string;
  readonly limits: StoreLimits;
}
