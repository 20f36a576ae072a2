import { type LasItem, lasItem } from "./las-file.ts";
import type { LasDelimiter } from "./las-rows.ts";
import type { LasSection } from "./las-section.ts";
import type { faultLog } from "./report.ts";
import { Unreadable } from "./unreadable.ts";

type Log = ReturnType<typeof faultLog>;

/** The version stated and the rules it is read by. */
export interface LasVersion {
  readonly text: string;
  readonly rules: "1.2" | "2" | "3";
}

/** @throws Unreadable when no known version is stated */
export function statedVersion(versionItems: readonly LasItem[], section: LasSection, log: Log): LasVersion {
  const item = lasItem(versionItems, "VERS");
  if (!item) throw new Unreadable("the version section does not say the version (VERS)", section.line);
  const value = Number(item.data);
  if (value === 1.2) return { text: "1.2", rules: "1.2" };
  if (value === 2 || value === 3) return { text: value.toFixed(1), rules: value === 2 ? "2" : "3" };
  if (value > 2 && value < 3) {
    log.note(
      {
        code: "unknown-version",
        what: () => `Version ${item.data} is not known`,
        effect: "read by the rules of version 2.0",
      },
      item.line,
    );
    return { text: item.data, rules: "2" };
  }
  throw new Unreadable(`the version is "${item.data}"; 1.2, 2.0 and 3.0 are read`, item.line);
}

/** Whether rows are wrapped; undefined where the version section does not say. */
export function statedWrap(versionItems: readonly LasItem[], log: Log): boolean | undefined {
  const item = lasItem(versionItems, "WRAP");
  if (!item) return undefined;
  const said = item.data.toUpperCase();
  if (said === "YES" || said === "NO") return said === "YES";
  log.note(
    { code: "wrap-unclear", what: () => `WRAP is "${item.data}", not YES or NO`, effect: "judged from the rows" },
    item.line,
  );
  return undefined;
}

/** @throws Unreadable when the delimiter is none of the three that the standard knows */
export function statedDelimiter(versionItems: readonly LasItem[], rules: string, log: Log): LasDelimiter {
  const item = lasItem(versionItems, "DLM");
  if (!item || item.data === "") return "space";
  if (rules !== "3") {
    log.note(
      {
        code: "delimiter-before-3",
        what: () => "The file names a delimiter, which only version 3 does",
        effect: "followed",
      },
      item.line,
    );
  }
  const named: Readonly<Record<string, LasDelimiter>> = { SPACE: "space", COMMA: "comma", TAB: "tab" };
  const delimiter = named[item.data.toUpperCase()];
  if (!delimiter) throw new Unreadable(`the delimiter is "${item.data}"; SPACE, COMMA and TAB are read`, item.line);
  return delimiter;
}
