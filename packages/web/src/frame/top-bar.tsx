import type { ReactNode } from "react";
import { Button } from "react-aria-components";
import { Link } from "wouter";
import { headOf } from "../job/job-document.ts";
import { openJob } from "../job/open-job.ts";
import { KeptWords } from "./kept-words.tsx";
import { MoreMenu } from "./more-menu.tsx";
import { openDialog } from "./opened.ts";
import { UndoButtons } from "./undo-buttons.tsx";
import { UnitSwitch } from "./unit-switch.tsx";

/** The bar over every screen. */
export function TopBar({ children, ofJob = false }: { readonly children?: ReactNode; readonly ofJob?: boolean }) {
  return (
    <header className="top">
      <Link className="home" href="/" aria-label="Bitwright, all jobs">
        <img src="/mark.svg" alt="" />
        <span>Bitwright</span>
      </Link>
      {children}
      <UnitSwitch />
      <MoreMenu ofJob={ofJob} />
    </header>
  );
}

/** The bar over the stations of a job. */
export function JobBar() {
  const document = openJob((state) => state.document);
  const { name, number } = headOf(document);
  return (
    <TopBar ofJob>
      <span className="job-name">
        <strong>{name}</strong>
        {number ? ` no. ${number}` : ""}
      </span>
      <KeptWords />
      <UndoButtons />
      <Button className="button" onPress={() => openDialog("save")}>
        Save
      </Button>
    </TopBar>
  );
}
