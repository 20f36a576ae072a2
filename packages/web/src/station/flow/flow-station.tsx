import { figuresIn } from "@bitwright/shop";
import type { Workup } from "@bitwright/traveler";
import { allWorkings } from "../../figure/all-workings.ts";
import { Figure } from "../../figure/figure.tsx";
import { FigureTable } from "../../figure/figure-column.tsx";
import { ShopDrawing } from "../../figure/shop-drawing.tsx";
import { useWorkings } from "../../figure/use-workings.ts";
import { useUnits } from "../../frame/settings.ts";
import { OfWorkup } from "../of-workup.tsx";
import { SetByHand } from "../set-by-hand.tsx";

type Circuit = NonNullable<Workup["flow"]["circuit"]>;

const OVERRIDES = [
  { path: ["overrides", "flow"], label: "Flow to work with" },
  { path: ["overrides", "limits", "coolingFlow"], label: "Least flow that cools" },
  { path: ["overrides", "limits", "upholeSpeed"], label: "Least uphole speed" },
  { path: ["overrides", "limits", "cuttingsShare"], label: "Largest share of cuttings" },
];

/** Is the bit cooled and the hole cleaned: the pressure budget, the return, and what the flow carries. */
export function FlowStation() {
  return (
    <>
      <OfWorkup>{(workup) => <Flow workup={workup} />}</OfWorkup>
      <SetByHand fields={OVERRIDES} heading="Set flow or a limit by hand" />
    </>
  );
}

function Flow({ workup }: { readonly workup: Workup }) {
  const figures = figuresIn(useUnits());
  const { circuit, leastAirFlow, flow } = workup.flow;
  if (workup.cut.beds.length === 0) {
    return <p className="verdict">Nothing is drilled with this bit, so no flow is asked for.</p>;
  }
  if (circuit) return <Circulated workup={workup} circuit={circuit} flow={flow} />;
  const air = [...allWorkings(workup).values()].find(({ value }) => value === leastAirFlow);
  return (
    <p className="verdict">
      {leastAirFlow === undefined ? (
        "This hole is not drilled with a pumped fluid; how much air or foam it takes is not worked out here."
      ) : (
        <>
          At least <Figure kind="air flow" si={leastAirFlow} working={air} /> of free air to lift the chips from the end
          of {figures.of("depth", workup.inquiry.inquiry.bitHole.to)}.
        </>
      )}
    </p>
  );
}

function Circulated(props: { readonly workup: Workup; readonly circuit: Circuit; readonly flow: number }) {
  const { workup, circuit, flow } = props;
  const figures = figuresIn(useUnits());
  const working = useWorkings(workup);
  const { coolingFlow, cleaning, slowestAnnulus, ports, losses, pumpPressure } = circuit;
  const setByHand = workup.inquiry.overrides.limits.coolingFlow !== undefined;
  const rows = [
    ...losses.map(({ name, part, length, speed, pressureDrop, regime }) => ({
      name: part === "annulus" ? `annulus, ${name}` : name,
      stretch: name,
      length,
      speed: figures.of(part === "annulus" ? "uphole speed" : "speed", speed),
      pressureDrop,
      regime,
    })),
    {
      name: `${workup.bit.ports.count} ports of ${figures.of("diameter", workup.bit.ports.diameter)}`,
      stretch: "",
      length: undefined,
      speed: figures.of("speed", ports.speed),
      pressureDrop: ports.pressureDrop,
      regime: "",
    },
  ];
  return (
    <>
      <p className="verdict">
        {flow < coolingFlow.low ? "Too little to cool the bit: " : "The bit is cooled: "}
        {figures.of("flow", flow)} where {setByHand ? "the limit set by hand" : "practice"} asks for{" "}
        {setByHand ? figures.of("flow", coolingFlow.low) : figures.range("flow", coolingFlow.low, coolingFlow.high)}. It
        cleans up to {figures.range("rate", cleaning.rateCeiling.low, cleaning.rateCeiling.high)}.
      </p>
      <section className="sheet stack" aria-labelledby="losses-head">
        <h2 id="losses-head">Where the pressure goes</h2>
        <FigureTable
          caption="Losses of the circuit"
          rows={rows}
          rowKey={({ name }) => name}
          columns={[
            { head: "stretch", words: ({ name }) => name },
            { head: "length", kind: "depth", of: ({ length }) => length },
            { head: "speed", words: ({ speed }) => speed, figure: true },
            {
              head: "loss",
              kind: "pressure",
              of: ({ pressureDrop }) => pressureDrop,
              working: ({ stretch }, si) =>
                working(stretch === "" ? "port pressure drop" : `pressure drop, ${stretch}`, si),
            },
            { head: "flow is", words: ({ regime }) => regime },
          ]}
        />
        <p>
          The pump has to give{" "}
          <Figure kind="pressure" si={pumpPressure} working={working("pump pressure", pumpPressure)} /> of the{" "}
          {figures.of("pressure", workup.inquiry.inquiry.pump.pressureRating)} that it holds all day.
        </p>
        <p className="note soft">
          Bleed the pressure off before a line or a swivel is opened. Ratings of hoses and valves are the maker's and
          the code's to say.
        </p>
      </section>
      <section className="sheet stack" aria-labelledby="return-head">
        <h2 id="return-head">Is the hole cleaned?</h2>
        <p>
          Uphole {figures.of("uphole speed", slowestAnnulus.speed)} at the slowest, {slowestAnnulus.name}; chips fall
          back at {figures.range("uphole speed", cleaning.slip.speed.low, cleaning.slip.speed.high)}.
        </p>
        <FigureTable
          caption="The return with the bit at the bottom of each bed"
          rows={workup.flow.beds}
          rowKey={({ name, depth }) => `${name} ${depth}`}
          named={({ name }) => name}
          columns={[
            { head: "ground", words: ({ name }) => name },
            { head: "cleans up to", kind: "rate", of: ({ rateCeiling }) => rateCeiling.mid },
            { head: "chips up in", kind: "duration", of: ({ chipsUpTime }) => chipsUpTime, instead: "no end" },
            { head: "bottoms up in", kind: "duration", of: ({ bottomsUpTime }) => bottomsUpTime },
            {
              head: "before a connection",
              kind: "duration",
              of: ({ circulationTime }) => circulationTime,
              instead: "no end",
            },
          ]}
        />
      </section>
      <ShopDrawing group="flow" name="losses.svg" />
      <ShopDrawing group="flow" name="pump.svg" />
    </>
  );
}
