import type { UnitSystem } from "@bitwright/traveler";
import { create } from "zustand";
import { persist } from "zustand/middleware";

/** How the screen looks: as the system has it, in the sun, or dark. */
export type Theme = "system" | "sun" | "dark";

/** What a person chose once for every screen of this machine. */
interface Settings {
  readonly units: UnitSystem;
  readonly theme: Theme;
}

export const settings = create<Settings>()(
  persist((): Settings => ({ units: "field", theme: "system" }), { name: "bitwright-settings" }),
);

/** The system of units that figures are shown in. */
export function useUnits(): UnitSystem {
  return settings(({ units }) => units);
}
