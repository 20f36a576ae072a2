import { Button } from "react-aria-components";
import { keeping, settleClash } from "../job/keep.ts";
import { whenWords } from "./versions-dialog.tsx";

/** What came of saving: a word of it, or two versions to choose between. */
export function SavingWords() {
  const { said, clash } = keeping();
  if (!clash) {
    return (
      <p role="status" className={said ? "banner plainly not-on-paper" : "unseen"}>
        {said ?? ""}
      </p>
    );
  }
  const { theirs } = clash;
  return (
    <div role="alert" className="banner not-on-paper">
      <p>
        <strong>Somebody else has saved this job in the meantime.</strong> Version {theirs.version} at the shop
        {theirs.savedBy ? ` by ${theirs.savedBy}` : ""}, {whenWords(theirs.savedAt)}
        {theirs.note ? `: ${theirs.note}` : ""}. Whichever you take, the other stays among the versions.
      </p>
      <div className="row">
        <Button className="button" onPress={() => void settleClash("yours")}>
          Go on with yours
        </Button>
        <Button className="button" onPress={() => void settleClash("theirs")}>
          Take the other
        </Button>
      </div>
    </div>
  );
}
