import { useEffect } from "react";
import { useSearch } from "wouter";

/** Brings the place that the address names into sight and puts the hand on it. */
export function useGoToPlace(ready: unknown): void {
  const search = useSearch();
  useEffect(() => {
    const at = new URLSearchParams(search).get("at");
    if (!at || !ready) return;
    const place = placeNamed(at);
    if (!place) return;
    const folded = place.closest("details");
    if (folded) folded.open = true;
    place.scrollIntoView({ block: "center" });
    const field = place.querySelector<HTMLElement>("input, select, textarea, button") ?? place;
    field.focus({ preventScroll: true });
    place.classList.add("at-once");
    const timer = window.setTimeout(() => place.classList.remove("at-once"), MARKED);
    return () => {
      window.clearTimeout(timer);
      place.classList.remove("at-once");
    };
  }, [search, ready]);
}

/** A place that was gone to stays marked for so long [ms]. */
const MARKED = 2500;

/** The place on the screen that a finding or a problem names: by its whole name, else the longest name that it holds. */
function placeNamed(at: string): HTMLElement | undefined {
  const places = [...document.querySelectorAll<HTMLElement>("[data-where], [data-name]")].flatMap((place) =>
    [place.dataset.where, place.dataset.name].flatMap((name) => (name ? [{ place, name }] : [])),
  );
  const exact = places.find(({ name }) => name === at);
  const held = places.filter(({ name }) => at.includes(name)).sort((a, b) => b.name.length - a.name.length);
  return (exact ?? held[0])?.place;
}
