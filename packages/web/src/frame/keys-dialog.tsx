import { Button } from "react-aria-components";
import { closeDialog } from "./opened.ts";
import { OverScreen } from "./over-screen.tsx";

const KEYS = [
  ["Ctrl Z", "take the last step back"],
  ["Ctrl Y", "do it again"],
  ["Ctrl S", "save a version with a name"],
  ["Ctrl P", "print what the station puts on paper"],
  ["Alt 1 … 9", "go to a station"],
  ["Enter", "take what was typed; in a table go down"],
  ["Tab", "go to the next field; in a table to the right"],
  ["Esc", "give up what is being typed, close what lies over the screen"],
  ["?", "this list"],
] as const;

/** What the keys do. */
export function KeysDialog() {
  return (
    <OverScreen name="keys" heading="Keys">
      <table>
        <thead>
          <tr>
            <th scope="col">key</th>
            <th scope="col">what it does</th>
          </tr>
        </thead>
        <tbody>
          {KEYS.map(([key, does]) => (
            <tr key={key}>
              <th scope="row">{key}</th>
              <td>{does}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Button className="button main" onPress={closeDialog}>
        Close
      </Button>
    </OverScreen>
  );
}
