import { strengthCorrelations } from "@bitwright/engine";
import type { GroundImport, ImportRefusal } from "@bitwright/traveler";
import { type ChangeEvent, useRef, useState } from "react";
import { Button } from "react-aria-components";
import { PickedField } from "../../field/picked-field.tsx";
import { TypedField } from "../../field/typed-field.tsx";
import { editAll, openJob } from "../../job/open-job.ts";
import { valueAt } from "../../job/path.ts";
import { type GroundText, theBench } from "../../worker/worked-job.ts";
import { namedRocks } from "./named-rocks.ts";
import { ReadReport } from "./read-report.tsx";

/** Ground out of a table or a log: how it was read is shown before anything is taken. */
export function GroundPaste({ onDone }: { readonly onDone: () => void }) {
  const [text, setText] = useState("");
  const [unit, setUnit] = useState("");
  const [bore, setBore] = useState("");
  const [curve, setCurve] = useState("");
  const [correlation, setCorrelation] = useState("");
  const [rocks, setRocks] = useState("");
  const [read, setRead] = useState<GroundImport | ImportRefusal>();
  const [fault, setFault] = useState<string>();
  const file = useRef<HTMLInputElement>(null);
  const standing = openJob(({ document }) => valueAt(document, ["ground", "beds"]));
  const isLog = /^\s*(#.*\n\s*)*~/.test(text);
  const change = (next: string) => {
    setText(next);
    setRead(undefined);
    setFault(undefined);
  };
  const openFile = async (event: ChangeEvent<HTMLInputElement>) => {
    const [picked] = event.target.files ?? [];
    event.target.value = "";
    if (picked) change(await picked.text());
  };
  const readIt = async () => {
    const named = isLog ? namedRocks(rocks) : { ok: true as const, rocks: [] };
    if (!named.ok) return setFault(named.words);
    const how: GroundText = isLog
      ? { as: "log", options: { curve: curve.trim(), correlation, rocks: named.rocks } }
      : { as: "table", options: { ...(unit ? { unit } : {}), ...(bore.trim() ? { bore: bore.trim() } : {}) } };
    setFault(undefined);
    try {
      setRead(await theBench().readGround(text, how));
    } catch (error) {
      setRead(undefined);
      setFault(error instanceof Error ? error.message : String(error));
    }
  };
  const take = ({ ground }: GroundImport) => {
    editAll(
      [
        [["ground", "beds"], ground.beds],
        [["ground", "source"], ground.source],
      ],
      `${ground.beds.length} beds taken from ${isLog ? "a log" : "a table"}`,
    );
    onDone();
  };
  return (
    <section className="sheet stack" aria-labelledby="paste-head">
      <h2 id="paste-head">Ground from a table or a log</h2>
      <p>
        A table wants heads and a row for each interval: from, to, description. Copied out of a spreadsheet, or a CSV
        file. A log is a LAS file.
      </p>
      <div className="field wide">
        <label htmlFor="pasted">Table or log</label>
        <span className="entry">
          <textarea
            id="pasted"
            rows={8}
            spellCheck={false}
            value={text}
            placeholder={"from ft\tto ft\tdescription\n0\t14\tbrown sandy clay"}
            onChange={(event) => change(event.target.value)}
          />
        </span>
      </div>
      <div className="row">
        <Button className="button" onPress={() => file.current?.click()}>
          Open a file
        </Button>
        <input
          ref={file}
          type="file"
          accept=".csv,.txt,.tsv,.las"
          hidden
          aria-label="File of ground"
          onChange={(event) => void openFile(event)}
        />
      </div>
      {isLog ? (
        <div className="fields">
          <TypedField
            label="Curve"
            value={curve}
            onCommit={setCurve}
            help="Name of the curve that the strength is worked from, for example DT."
          />
          <PickedField
            label="Correlation"
            value={correlation}
            none="pick one"
            picks={strengthCorrelations.map(({ id }) => ({ id, words: id }))}
            onPick={(id) => setCorrelation(id ?? "")}
            help="Each correlation goes with one kind of rock, so there is no default."
          />
          <TypedField
            label="Rocks by depth"
            value={rocks}
            lines
            onCommit={setRocks}
            help="One line for each rock from the depth it begins at, for example: 44 ft gray shale"
          />
        </div>
      ) : (
        <div className="fields">
          <PickedField
            label="Depths are in"
            value={unit}
            none="what the heads say"
            picks={[
              { id: "ft", words: "ft" },
              { id: "m", words: "m" },
            ]}
            onPick={(id) => setUnit(id ?? "")}
          />
          <TypedField label="Bore, where the table holds several" value={bore} onCommit={setBore} />
        </div>
      )}
      <div className="row">
        <Button className="button main" isDisabled={text.trim() === ""} onPress={() => void readIt()}>
          Read it
        </Button>
        <Button className="button" onPress={onDone}>
          Leave the ground as it is
        </Button>
      </div>
      {fault ? (
        <p role="alert" className="banner">
          {fault}
        </p>
      ) : null}
      {read ? <ReadReport read={read} standing={Array.isArray(standing) ? standing.length : 0} onTake={take} /> : null}
    </section>
  );
}
