import { type FormEvent, useState } from "react";
import { Button, Input, Label, TextField } from "react-aria-components";
import { saveVersion } from "../job/keep.ts";
import { closeDialog } from "./opened.ts";
import { OverScreen } from "./over-screen.tsx";

/** Puts the job aside as a version with a name. */
export function SaveDialog() {
  return (
    <OverScreen name="save" heading="Save a version">
      <SaveForm />
    </OverScreen>
  );
}

function SaveForm() {
  const [note, setNote] = useState("");
  const save = (event: FormEvent) => {
    event.preventDefault();
    closeDialog();
    void saveVersion(note.trim() === "" ? "without a name" : note.trim());
  };
  return (
    <form className="stack" onSubmit={save}>
      <p>Every edit is kept on this machine as you go. A version is a place that you can come back to.</p>
      <TextField className="field" value={note} onChange={setNote} autoFocus>
        <Label>What is in it</Label>
        <span className="entry">
          <Input placeholder="as told on the phone" />
        </span>
      </TextField>
      <div className="row">
        <Button className="button main" type="submit">
          Save version
        </Button>
        <Button className="button" onPress={closeDialog}>
          Not now
        </Button>
      </div>
    </form>
  );
}
