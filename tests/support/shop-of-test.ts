import { openStore, type Saving, type Store, type StoreOptions } from "../../packages/store/src/index.ts";
import { soundTraveler } from "./sound-traveler.ts";

// Counts on from one opening to the next, so that no id is given twice.
let id = 0;

/** A clock that strikes once a second from noon, and ids that count: everything a store is told is known. */
export function openForTest(place: string, more: Partial<StoreOptions> = {}): Promise<Store> {
  let second = 0;
  const now = () => new Date(Date.UTC(2026, 2, 14, 12, 0, second++));
  return openStore({ place, program: "Bitwright test", now, newId: () => `id-${++id}`, ...more });
}

/** The text of a traveler whose job has this name. */
export function travelerText(jobName: string): string {
  const traveler = soundTraveler();
  return `${JSON.stringify({ ...traveler, job: { ...traveler.job, name: jobName } }, null, 2)}\n`;
}

/** A save of a traveler; what is not said stands for itself. */
export function saving(more: Partial<Saving>): Saving {
  return { kind: "traveler", name: "ridge", body: travelerText("Ridge"), basedOn: 0, who: "Ada", note: "", ...more };
}
