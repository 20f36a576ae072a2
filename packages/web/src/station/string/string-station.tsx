import { FEED_DEAD_BAND } from "@bitwright/engine";
import { figuresIn } from "@bitwright/shop";
import type { Workup } from "@bitwright/traveler";
import { Figure } from "../../figure/figure.tsx";
import { FigureTable } from "../../figure/figure-column.tsx";
import { ShopDrawing } from "../../figure/shop-drawing.tsx";
import { useWorkings } from "../../figure/use-workings.ts";
import { useUnits } from "../../frame/settings.ts";
import { OfWorkup } from "../of-workup.tsx";

/** What weight is really on the bit: push, hang or hold back, joint by joint. */
export function StringStation() {
  return (
    <OfWorkup>
      {(workup) =>
        workup.string ? (
          <StringShown workup={workup} string={workup.string} />
        ) : (
          <p className="verdict">Nothing is drilled with this bit, so no string is worked out.</p>
        )
      }
    </OfWorkup>
  );
}

function StringShown(props: { readonly workup: Workup; readonly string: NonNullable<Workup["string"]> }) {
  const { workup, string } = props;
  const figures = figuresIn(useUnits());
  const working = useWorkings(workup);
  const { targetWeight, balanceDepth, neutralPoint, joints, makeUpTorque, twist, criticalSpeed, collar } = string;
  const { bitHole, rig } = workup.inquiry.inquiry;
  const reached = balanceDepth < bitHole.to;
  const ofJoint = (name: string) => (row: (typeof joints)[number], si: number) =>
    working(`${name}, joint ${row.joint}, ${row.bed}`, si);
  return (
    <>
      <p className="verdict">
        The largest weight wanted, {figures.of("force", targetWeight)}, is the string's own{" "}
        {reached ? "from " : "only from "}
        <Figure
          kind="depth"
          si={balanceDepth}
          working={working("depth where pushing turns into holding back", balanceDepth)}
        />
        {reached ? "; deeper, hold back." : ", which this hole does not reach."}
      </p>
      <section className="sheet stack" aria-labelledby="whole-head">
        <h2 id="whole-head">The string as a whole</h2>
        <ul>
          <li>
            {neutralPoint.part === "above the string"
              ? "With that weight at the end of the hole the whole string is pressed; it has no neutral point."
              : `With that weight at the end of the hole the neutral point is ${figures.of("depth", neutralPoint.aboveBit)} above the bit, in the ${neutralPoint.part}.`}
          </li>
          {collar ? (
            <li>
              Where the bit starts, rig and string lack {figures.of("force", collar.missingWeight)}:{" "}
              {figures.of("depth", collar.collarLength)} of collar in the place of pipe would give it.
            </li>
          ) : null}
          {twist === undefined ? null : (
            <li>
              At the torque of the hardest bed the string winds up by{" "}
              <Figure kind="angle" si={twist} working={working("twist of the string", twist)} />.
            </li>
          )}
          {criticalSpeed === undefined ? null : (
            <li>
              A joint of this pipe whips at about{" "}
              <Figure
                kind="rotary speed"
                si={criticalSpeed}
                working={working("speed at which a joint whips", criticalSpeed)}
              />{" "}
              (recalled, in air).
            </li>
          )}
          {makeUpTorque ? <li>Make the bit up to {figures.of("torque", makeUpTorque.normal)}.</li> : null}
        </ul>
        <p className="note soft">
          A turning string kills: no hand, glove or sleeve near it. Lifting gear and its ratings are the maker's and the
          code's to say.
        </p>
      </section>
      <section className="sheet stack" aria-labelledby="joints-head">
        <h2 id="joints-head">Joint by joint</h2>
        <FigureTable
          caption="Weight and feed, joint by joint"
          rows={joints}
          rowKey={({ joint, bed, depth }) => `${joint} ${bed} ${depth}`}
          columns={[
            { head: "bit at", words: ({ depth }) => figures.of("depth", depth), figure: true },
            { head: "ground", words: ({ bed }) => bed },
            { head: "weight wanted", kind: "force", of: (row) => row.targetWeight },
            {
              head: "string in fluid",
              kind: "force",
              of: ({ hangingWeight }) => hangingWeight,
              working: ofJoint("hanging weight"),
            },
            { head: "feed", words: ({ feedForce }) => actOf(feedForce) },
            {
              head: "by",
              kind: "force",
              of: ({ feedForce }) => (Math.abs(feedForce) < FEED_DEAD_BAND ? undefined : Math.abs(feedForce)),
              working: (row) => ofJoint("feed force")(row, row.feedForce),
            },
            ...(rig.gaugeForceFactor === undefined
              ? []
              : [
                  {
                    head: "feed gauge",
                    kind: "pressure" as const,
                    of: ({ gaugeReading }: (typeof joints)[number]) => gaugeReading,
                    working: ofJoint("feed gauge"),
                  },
                ]),
            { head: "rig", words: ({ verdict }) => verdict },
          ]}
        />
        {rig.gaugeForceFactor === undefined ? (
          <p className="note">No gauge readings: the rig's force for each unit of feed pressure was not given.</p>
        ) : null}
      </section>
      <ShopDrawing group="string" name="weight-by-depth.svg" />
    </>
  );
}

function actOf(feedForce: number): string {
  if (Math.abs(feedForce) < FEED_DEAD_BAND) return "let it hang";
  return feedForce > 0 ? "push" : "hold back";
}
