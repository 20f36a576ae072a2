import { create } from "zustand";

/** The dialogs that lie over a screen. */
export type DialogName = "keys" | "save" | "versions";

/** Which dialog is open; none where it is absent. */
export const opened = create<{ readonly dialog?: DialogName }>()(() => ({}));

export function openDialog(dialog: DialogName): void {
  opened.setState({ dialog });
}

export function closeDialog(): void {
  opened.setState({}, true);
}
