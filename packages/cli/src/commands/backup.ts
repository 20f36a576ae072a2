import type { BackupCounts } from "@bitwright/store";
import type { Terminal } from "../terminal.ts";
import { type StoreChoice, withStore } from "../with-store.ts";

/** Writes the whole shop into one new file. */
export async function backupCommand(file: string, choice: StoreChoice, terminal: Terminal): Promise<void> {
  await withStore(choice, async (store) => {
    const counts = await store.backup(file);
    terminal.say(`${file}: ${countsInWords(counts)}. Read back and found whole.`);
  });
}

/** Fills an empty shop from a backup. */
export async function restoreCommand(file: string, choice: StoreChoice, terminal: Terminal): Promise<void> {
  await withStore(choice, async (store) => {
    const counts = await store.restore(file);
    terminal.say(`${store.place}: restored ${countsInWords(counts)}.`);
  });
}

function countsInWords({ papers, versions, refusals, attachments }: BackupCounts): string {
  return [
    `${papers} ${papers === 1 ? "paper" : "papers"}`,
    `${versions} ${versions === 1 ? "version" : "versions"}`,
    `${refusals} refused ${refusals === 1 ? "save" : "saves"}`,
    `${attachments} ${attachments === 1 ? "attachment" : "attachments"}`,
  ].join(", ");
}
