import { randomUUID } from "node:crypto";
import { homedir, userInfo } from "node:os";
import { join } from "node:path";
import type { Store } from "@bitwright/store";
import { Complaint } from "./complaint.ts";
import { PROGRAM } from "./program.ts";

/** Where the shop is kept. */
export interface StoreChoice {
  /** A data folder or the address of a server. */
  readonly data?: string;
}

/** What a database says when the disk, not the program, is at fault. */
const DISK = /^(SQLITE_(FULL|IOERR|READONLY|CANTOPEN|CORRUPT)|ENOSPC|EIO|EROFS)/;

/** Where the shop is kept, as the option, the environment or the usual folder says. */
export function placeOf({ data }: StoreChoice): string {
  return data || process.env.BITWRIGHT_DATA || join(homedir(), ".bitwright");
}

/** Opens the shop, does one thing with it and closes it. */
export function withStore<T>(choice: StoreChoice, use: (store: Store) => Promise<T>): Promise<T> {
  return complainingOfStore(async () => {
    const { openStore } = await import("@bitwright/store");
    const place = placeOf(choice);
    const store = await openStore({ place, program: PROGRAM, now: () => new Date(), newId: randomUUID });
    try {
      return await use(store);
    } finally {
      await store.close();
    }
  });
}

/** Does something with a shop; what the store will not do ends the command in one line. */
export async function complainingOfStore<T>(use: () => Promise<T>): Promise<T> {
  // Loaded here and not at the top: no other command needs a database to be there.
  const { StoreFault } = await import("@bitwright/store");
  try {
    return await use();
  } catch (error) {
    if (error instanceof StoreFault) throw new Complaint([error.message]);
    const { code = "", message } = error as { code?: string; message?: string };
    if (DISK.test(code)) throw new Complaint([`data: the shop's disk or database fails (${code}: ${message})`]);
    throw error;
  }
}

/** Who does it, where it is not said: the name this machine knows. */
export function usualWho(): string {
  try {
    return userInfo().username;
  } catch {
    throw new Complaint(["--by: this machine does not say who you are; give your name, --by NAME"]);
  }
}
