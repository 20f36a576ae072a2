import { type GroundImport, type ImportRefusal, reportText } from "@bitwright/traveler";
import { Button } from "react-aria-components";

/** How a table or a log was read, and what would be taken from it. */
export function ReadReport(props: {
  readonly read: GroundImport | ImportRefusal;
  readonly standing: number;
  readonly onTake: (read: GroundImport) => void;
}) {
  const { read, standing, onTake } = props;
  const count = read.refused ? 0 : read.ground.beds.length;
  const these = count === 1 ? "this one bed" : `these ${count} beds`;
  return (
    <div className="stack" role="status">
      {read.refused ? (
        <p className="banner">
          It cannot be read{read.line === undefined ? "" : `, line ${read.line}`}: {read.reason}.
        </p>
      ) : null}
      <h3>How it was read</h3>
      <ul>
        {reportText(read.report).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {read.refused ? null : (
        <>
          <div className="table-room">
            <table>
              <thead>
                <tr>
                  <th scope="col">from</th>
                  <th scope="col">to</th>
                  <th scope="col">words</th>
                  <th scope="col">notes</th>
                </tr>
              </thead>
              <tbody>
                {read.ground.beds.map((bed) => (
                  <tr key={bed.top}>
                    <td>{bed.top}</td>
                    <td>{bed.bottom}</td>
                    <td>{bed.phrase ?? bed.rock}</td>
                    <td>
                      {bed.notes ??
                        (bed.strengthFrom ? `${bed.strengthFrom.correlation}, ${bed.strengthFrom.reading}` : "")}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          <Button className="button main" onPress={() => onTake(read)}>
            {standing === 0 ? `Take ${these}` : `Take ${these} in place of the ${standing} that stand`}
          </Button>
        </>
      )}
    </div>
  );
}
