import { Redirect, Route, Switch } from "wouter";
import { WorkingDialog } from "../figure/working-dialog.tsx";
import { JobPage } from "./job-page.tsx";
import { KeysDialog } from "./keys-dialog.tsx";
import { SaveDialog } from "./save-dialog.tsx";
import { StartPage } from "./start-page.tsx";
import { useTheme } from "./use-theme.ts";
import { VersionsDialog } from "./versions-dialog.tsx";

/** The whole page, by its address. */
export function App() {
  useTheme();
  return (
    <>
      <Switch>
        <Route path="/">
          <StartPage />
        </Route>
        <Route path="/job/:id/:screen">
          {({ id, screen }) => <JobPage id={decodeURIComponent(id)} screen={screen} />}
        </Route>
        <Route>
          <Redirect to="/" />
        </Route>
      </Switch>
      <WorkingDialog />
      <SaveDialog />
      <VersionsDialog />
      <KeysDialog />
    </>
  );
}
