import { beforeEach, describe, expect, it } from "vitest";
import { newInquiry } from "./job-document.ts";
import { edit, editAll, openJob, redo, showJob, stepsAround, undo } from "./open-job.ts";
import { valueAt } from "./path.ts";

const PULL = ["inquiry", "rig", "pullDown"];
const at = (path: readonly (string | number)[]) => valueAt(openJob.getState().document, path);

describe("the open job", () => {
  beforeEach(() => showJob("a", newInquiry()));

  it("takes back and does again one named step for each edit", () => {
    edit(PULL, "12000 lbf", "pull-down set");
    edit(["job", "name"], "Ridge Road", "name set");
    expect(stepsAround()).toEqual({ undo: "name set" });
    undo();
    expect(at(["job", "name"])).toBe("New inquiry");
    expect(stepsAround()).toEqual({ undo: "pull-down set", redo: "name set" });
    redo();
    expect(at(["job", "name"])).toBe("Ridge Road");
    expect(at(PULL)).toBe("12000 lbf");
  });

  it("counts no step where nothing changes", () => {
    edit(["job", "name"], "New inquiry", "name set");
    expect(stepsAround()).toEqual({});
  });

  it("changes several places in one step", () => {
    editAll(
      [
        [PULL, "12000 lbf"],
        [["inquiry", "rig", "torque"], "4500 ft-lbf"],
      ],
      "rig picked",
    );
    undo();
    expect(at(["inquiry", "rig"])).toBeUndefined();
  });

  it("forgets the steps of one job when another is opened", () => {
    edit(PULL, "12000 lbf", "pull-down set");
    showJob("b", newInquiry());
    expect(stepsAround()).toEqual({});
  });
});
