import { useUnits } from "../frame/settings.ts";
import { useSheets } from "../worker/use-sheets.ts";
import type { SheetGroup } from "../worker/worked-job.ts";
import { Drawing } from "./drawing.tsx";

/** One sheet of the last workup, drawn in the worker, with a way to take it along as a file. */
export function ShopDrawing({ group, name }: { readonly group: SheetGroup; readonly name: string }) {
  const sheet = useSheets(group).find((one) => one.name === name);
  const units = useUnits();
  if (!sheet) return <p className="soft">Drawing …</p>;
  const address = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(sheet.text)}`;
  return (
    <figure className="stack">
      <Drawing svg={sheet.text} />
      <figcaption className="not-on-paper">
        <a className="button" href={address} download={name.replace(".svg", `-${units}.svg`)}>
          Download the drawing
        </a>
      </figcaption>
    </figure>
  );
}
