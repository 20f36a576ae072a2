import type { CardContent } from "@bitwright/engine";
import { feedRows, wholeFigure } from "@bitwright/shop";
import type { UnitSystem } from "@bitwright/traveler";

/** Depths of feed that a screen of a phone shows [-]. */
const MOST_FEEDS = 16;

/** What the rig does with its feed, by depth. */
export function FeedOfCard({ card, units }: { readonly card: CardContent; readonly units: UnitSystem }) {
  const rows = feedRows(card, MOST_FEEDS);
  if (rows.length === 0) return null;
  const gauge = rows.some((row) => row.gauge);
  return (
    <section className="sheet">
      <h3>Feed by depth</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">bit at</th>
            <th scope="col">do</th>
            <th scope="col" className="figure">
              by
            </th>
            {gauge ? (
              <th scope="col" className="figure">
                feed gauge
              </th>
            ) : null}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ depth, act, force, gauge: reading }) => (
            <tr key={depth.value}>
              <th scope="row">{wholeFigure(depth, units)}</th>
              <td>{act}</td>
              <td className="figure">{act === "let it hang" ? "" : wholeFigure(force, units)}</td>
              {gauge ? <td className="figure">{reading ? wholeFigure(reading, units) : ""}</td> : null}
            </tr>
          ))}
        </tbody>
      </table>
      {gauge ? null : (
        <p className="note">No gauge readings: the rig's force for each unit of feed pressure was not given.</p>
      )}
    </section>
  );
}
