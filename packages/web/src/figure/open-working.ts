import type { Working } from "@bitwright/engine";
import { create } from "zustand";

/** The working that is open on the screen; absent while none is. */
export const openWorking = create<{ readonly working?: Working }>()(() => ({}));

export function showWorking(working: Working): void {
  openWorking.setState({ working });
}

export function closeWorking(): void {
  openWorking.setState({}, true);
}
