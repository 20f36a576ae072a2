import { figuresIn, LIMIT_WORDS } from "@bitwright/shop";
import type { Workup } from "@bitwright/traveler";
import { useState } from "react";
import { PickedField } from "../../field/picked-field.tsx";
import { FigureTable } from "../../figure/figure-column.tsx";
import { ShopDrawing } from "../../figure/shop-drawing.tsx";
import { useWorkings } from "../../figure/use-workings.ts";
import { useUnits } from "../../frame/settings.ts";
import { OfWorkup } from "../of-workup.tsx";
import { SetByHand } from "../set-by-hand.tsx";
import { CutterTable } from "./cutter-table.tsx";

const OVERRIDES = [
  { path: ["overrides", "weight"], label: "Weight to work with" },
  { path: ["overrides", "rotarySpeed"], label: "Rotary speed to work with" },
  { path: ["overrides", "limits", "rate"], label: "Largest rate" },
  { path: ["overrides", "limits", "torque"], label: "Largest torque at the bit" },
];

/** What each cutter does and how fast the bit goes, bed by bed. */
export function CutStation() {
  return (
    <>
      <OfWorkup>{(workup) => <Cut workup={workup} />}</OfWorkup>
      <SetByHand fields={OVERRIDES} heading="Set weight, speed or a limit by hand" />
    </>
  );
}

function Cut({ workup }: { readonly workup: Workup }) {
  const figures = figuresIn(useUnits());
  const working = useWorkings(workup);
  const { beds } = workup.cut;
  const ofBed = (name: string) => (row: (typeof beds)[number], si: number) => working(`${name}, ${row.bed.name}`, si);
  const [picked, setPicked] = useState("0");
  const bed = beds[Number(picked)] ?? beds[0];
  if (!bed) return <p className="verdict">No bed of this hole is drilled with this bit.</p>;
  const slowest = beds.reduce((slow, one) => (one.rate.mid < slow.rate.mid ? one : slow), bed);
  return (
    <>
      <p className="verdict">
        {figures.range("rate", slowest.rate.low, slowest.rate.high)} in the slowest bed, {slowest.bed.name}. A ceiling:
        sharp bit, clean bottom.
      </p>
      <section className="sheet stack" aria-labelledby="run-head">
        <h2 id="run-head">How to run it</h2>
        <FigureTable
          caption="How to run it, bed by bed"
          rows={beds}
          rowKey={({ bed: { top, name } }) => `${top} ${name}`}
          named={({ bed: { name } }) => name}
          columns={[
            { head: "ground", words: ({ bed: { name } }) => name },
            { head: "weight", kind: "force", of: ({ weight }) => weight, working: ofBed("weight on bit") },
            { head: "rotary", kind: "rotary speed", of: ({ rotarySpeed }) => rotarySpeed },
            { head: "rate, low / mid / high", words: ({ rate }) => figures.band("rate", rate), figure: true },
            {
              head: "torque",
              kind: "torque",
              of: ({ drilling }) => drilling.bit.torque,
              working: ofBed("torque at the bit"),
            },
            {
              head: "advance",
              kind: "advance",
              of: ({ drilling }) => drilling.advance,
              working: ofBed("advance per revolution"),
            },
            { head: "faster stops at", words: ({ run }) => LIMIT_WORDS[run.computed.binds] },
          ]}
        />
        <h3>Computed limit beside the rule of thumb (common practice)</h3>
        <FigureTable
          caption="Computed limit beside the rule of thumb"
          rows={beds}
          rowKey={({ bed: { top, name } }) => `${top} ${name}`}
          columns={[
            { head: "ground", words: ({ bed: { name } }) => name },
            { head: "computed weight", kind: "force", of: ({ run }) => run.computed.weight },
            { head: "rate", kind: "rate", of: ({ run }) => run.computed.rate },
            {
              head: "rule weight",
              kind: "force",
              of: ({ run }) => run.practice.weight,
              working: ofBed("weight on bit by rule of thumb"),
            },
            {
              head: "rule rotary",
              kind: "rotary speed",
              of: ({ run }) => run.practice.rotarySpeed,
              working: ofBed("rotary speed by rule of thumb"),
            },
            { head: "rate there", kind: "rate", of: ({ rateByPractice }) => rateByPractice, instead: "bit buries" },
            {
              head: "specific energy",
              kind: "strength",
              of: ({ drilling }) => drilling.mechanicalEnergy,
              working: ofBed("mechanical specific energy"),
            },
            {
              head: "side force",
              kind: "share",
              of: ({ drilling }) => drilling.bit.lateralShare,
              working: ofBed("side force as a share of the weight"),
            },
          ]}
        />
        <ul>
          {beds.flatMap(({ bed: { name }, run: { reasons } }) =>
            reasons.map(({ sentence }) => (
              <li key={`${name} ${sentence}`}>
                {name}: {sentence}
              </li>
            )),
          )}
        </ul>
      </section>
      <section className="sheet stack" aria-labelledby="cutters-head">
        <h2 id="cutters-head">Cutter by cutter</h2>
        <PickedField
          label="In which bed"
          value={beds.includes(bed) ? String(beds.indexOf(bed)) : "0"}
          none={beds[0]?.bed.name ?? ""}
          picks={beds.map((one, at) => ({ id: String(at), words: one.bed.name }))}
          onPick={(id) => setPicked(id ?? "0")}
        />
        <CutterTable layout={workup.bit.layout} bed={bed} />
      </section>
      <ShopDrawing group="bit" name="profile.svg" />
      <ShopDrawing group="bit" name="face.svg" />
    </>
  );
}
