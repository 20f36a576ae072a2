import type { Sheet } from "@bitwright/shop";
import { useEffect, useState } from "react";
import { useUnits } from "../frame/settings.ts";
import { type SheetGroup, theBench, workedJob } from "./worked-job.ts";

/** Sheets of the last workup, in the units of the screen; the ones before stay until the new ones are drawn. */
export function useSheets(group: SheetGroup): readonly Sheet[] {
  const units = useUnits();
  const workup = workedJob((state) => state.workup);
  const [sheets, setSheets] = useState<readonly Sheet[]>([]);
  useEffect(() => {
    if (!workup) return;
    let wanted = true;
    void theBench()
      .sheets(group, units)
      .then((made) => {
        if (wanted) setSheets(made);
      });
    return () => {
      wanted = false;
    };
  }, [group, units, workup]);
  return sheets;
}
