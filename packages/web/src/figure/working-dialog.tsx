import { SOURCE_KIND_WORDS, type Working } from "@bitwright/engine";
import { formatQuantity, type UnitSystem } from "@bitwright/traveler";
import { useMemo } from "react";
import { Button, Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { useUnits } from "../frame/settings.ts";
import { workedJob } from "../worker/worked-job.ts";
import { allWorkings } from "./all-workings.ts";
import { kindOfUnit } from "./kind-of-unit.ts";
import { closeWorking, openWorking, showWorking } from "./open-working.ts";

/** How a figure was reached: the relation, its inputs with units, where each came from, and the source. */
export function WorkingDialog() {
  const { working } = openWorking();
  return (
    <ModalOverlay
      className="veil"
      isOpen={working !== undefined}
      isDismissable
      onOpenChange={(is) => is || closeWorking()}
    >
      <Modal>
        <Dialog className="dialog">{working ? <WorkingWords working={working} /> : null}</Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function WorkingWords({ working }: { readonly working: Working }) {
  const { name, relation, inputs, value, unit, source } = working;
  const units = useUnits();
  const workup = workedJob((state) => state.workup);
  const byName = useMemo(() => allWorkings(workup), [workup]);
  return (
    <>
      <Heading slot="title" level={2}>
        {name.slice(0, 1).toUpperCase() + name.slice(1)}
      </Heading>
      <p className="answer">
        {shopFigure(value, unit, units) ?? siFigure(value, unit)}
        {shopFigure(value, unit, units) ? <span className="soft"> · {siFigure(value, unit)}</span> : null}
      </p>
      <p className="relation">{relation}</p>
      <div className="table-room">
        <table>
          <caption className="unseen">Inputs of the relation</caption>
          <thead>
            <tr>
              <th scope="col">symbol</th>
              <th scope="col">meaning</th>
              <th scope="col" className="figure">
                value
              </th>
              <th scope="col" className="figure">
                in SI
              </th>
              <th scope="col">from</th>
            </tr>
          </thead>
          <tbody>
            {inputs.map((input) => {
              const before = byName.get(input.from);
              return (
                <tr key={`${input.symbol} ${input.meaning}`}>
                  <td>{input.symbol}</td>
                  <td>{input.meaning}</td>
                  <td className="figure">{shopFigure(input.value, input.unit, units) ?? ""}</td>
                  <td className="figure">{siFigure(input.value, input.unit)}</td>
                  <td>
                    {before && before !== working ? (
                      <Button className="open-figure" onPress={() => showWorking(before)}>
                        {input.from}
                      </Button>
                    ) : (
                      input.from
                    )}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      <p>
        <strong>{SOURCE_KIND_WORDS[source.kind]}</strong>
        {source.cite === SOURCE_KIND_WORDS[source.kind] ? "" : `: ${source.cite}`}
      </p>
      <Button slot="close" className="button main">
        Close
      </Button>
    </>
  );
}

/** The whole value, to as many figures as a number holds without its rounding. */
const WHOLE = 6;

function siFigure(value: number, unit: string): string {
  if (!Number.isFinite(value)) return "–";
  return `${Number(value.toPrecision(WHOLE))}${unit === "-" ? "" : ` ${unit}`}`;
}

function shopFigure(value: number, unit: string, units: UnitSystem): string | undefined {
  const kind = kindOfUnit(unit, value);
  return kind && Number.isFinite(value) ? formatQuantity(kind, value, units) : undefined;
}
