import { useState } from "react";
import { Button, Radio, RadioGroup } from "react-aria-components";
import { ScrollRoom } from "../../figure/scroll-room.tsx";
import { useSheets } from "../../worker/use-sheets.ts";
import { OfWorkup } from "../of-workup.tsx";
import { LargeCard } from "./large-card.tsx";

/** The driller's card: to read on the rig, and as it prints. */
export function CardStation() {
  const [paper, setPaper] = useState(false);
  return (
    <>
      <div className="row not-on-paper">
        <RadioGroup
          className="choice-of-two"
          aria-label="How the card is shown"
          orientation="horizontal"
          value={paper ? "paper" : "screen"}
          onChange={(chosen) => setPaper(chosen === "paper")}
        >
          <Radio value="screen">To read here</Radio>
          <Radio value="paper">As it prints</Radio>
        </RadioGroup>
        <Button className="button" onPress={() => window.print()}>
          Print
        </Button>
      </div>
      <OfWorkup>
        {(workup) => (
          <>
            <div className={paper ? "only-paper" : "not-on-paper"}>{paper ? null : <LargeCard workup={workup} />}</div>
            <div className={paper ? "" : "only-paper"}>
              <PaperCard />
            </div>
          </>
        )}
      </OfWorkup>
    </>
  );
}

/** The card of one page of plain text, exactly as the command line writes it. */
function PaperCard() {
  const sheets = useSheets("bit");
  const card = sheets.find(({ name }) => name === "card.txt");
  if (!card) return <p className="soft">Writing the card …</p>;
  return (
    <ScrollRoom label="The card as it prints">
      <pre className="paper">{card.text}</pre>
    </ScrollRoom>
  );
}
