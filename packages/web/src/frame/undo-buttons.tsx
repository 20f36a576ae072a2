import { useEffect, useReducer } from "react";
import { Button, Group } from "react-aria-components";
import { openJob, redo, stepsAround, undo } from "../job/open-job.ts";

/** Undo and redo, each with the name of the step that it moves. */
export function UndoButtons() {
  const [, again] = useReducer((count: number) => count + 1, 0);
  useEffect(() => openJob.temporal.subscribe(again), []);
  openJob((state) => state.step);
  const { undo: before, redo: after } = stepsAround();
  return (
    <Group className="row" aria-label="Steps">
      <Button
        className="button"
        isDisabled={before === undefined}
        aria-label={before === undefined ? "Undo: nothing to take back" : `Undo: ${before}`}
        onPress={undo}
      >
        ↶<span className="wide-only">Undo</span>
      </Button>
      <Button
        className="button"
        isDisabled={after === undefined}
        aria-label={after === undefined ? "Redo: nothing to do again" : `Redo: ${after}`}
        onPress={redo}
      >
        ↷<span className="wide-only">Redo</span>
      </Button>
      {before === undefined ? null : <span className="kept last-step">{before}</span>}
    </Group>
  );
}
