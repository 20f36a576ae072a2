import { useEffect } from "react";
import { useLocation } from "wouter";
import { redo, undo } from "../job/open-job.ts";
import { SCREENS } from "../station/stations.ts";
import { openDialog } from "./opened.ts";

/** The keys that work on every station of a job. */
export function useKeys(job: string): void {
  const [, go] = useLocation();
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const act = actOf(event, (screen) => go(`/job/${encodeURIComponent(job)}/${screen}`));
      if (!act) return;
      event.preventDefault();
      act();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [job, go]);
}

function actOf(event: KeyboardEvent, goTo: (screen: string) => void): (() => void) | undefined {
  const key = event.key.toLowerCase();
  const typing = isTyping(event.target);
  if (event.ctrlKey || event.metaKey) {
    if (key === "s") return () => openDialog("save");
    // While a text is typed its own undo works on its letters.
    if (typing && isChanged(event.target)) return undefined;
    if (key === "z") return event.shiftKey ? redo : undo;
    return key === "y" ? redo : undefined;
  }
  if (event.altKey && /^[1-9]$/.test(key)) {
    const screen = SCREENS[Number(key) - 1];
    return screen ? () => goTo(screen.id) : undefined;
  }
  return key === "?" && !typing ? () => openDialog("keys") : undefined;
}

function isTyping(target: EventTarget | null): target is HTMLInputElement | HTMLTextAreaElement {
  return target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
}

function isChanged(target: EventTarget | null): boolean {
  return isTyping(target) && target.dataset.draft === "yes";
}
