import { useEffect, useRef } from "react";

/** A drawing of the shop on its white sheet, at the width of its place. */
export function Drawing({ svg }: { readonly svg: string }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // Read as a document of its own: what is in it stays a drawing and runs nothing.
    const read = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
    read.removeAttribute("width");
    read.removeAttribute("height");
    place.current?.replaceChildren(document.importNode(read, true));
  }, [svg]);
  return <div ref={place} className="drawing" />;
}
