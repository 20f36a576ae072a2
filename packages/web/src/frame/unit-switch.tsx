import { Radio, RadioGroup } from "react-aria-components";
import { settings } from "./settings.ts";

/** Field or metric, on every screen. It changes what is shown and nothing of the design. */
export function UnitSwitch() {
  const units = settings((state) => state.units);
  return (
    <RadioGroup
      className="choice-of-two"
      aria-label="Units"
      orientation="horizontal"
      value={units}
      onChange={(chosen) => settings.setState({ units: chosen === "metric" ? "metric" : "field" })}
    >
      <Radio value="field">Field</Radio>
      <Radio value="metric">Metric</Radio>
    </RadioGroup>
  );
}
