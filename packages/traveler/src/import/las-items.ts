import type { LasItem } from "./las-file.ts";
import { lasLine } from "./las-line.ts";
import type { LasSection } from "./las-section.ts";
import { counted, type faultLog } from "./report.ts";

type Log = ReturnType<typeof faultLog>;

/** The header lines of a section; one that its marks do not part is kept as far as it can be told. */
export function lasItems(section: LasSection, log: Log): LasItem[] {
  const found: LasItem[] = [];
  for (const { text, line } of section.lines) {
    const trimmed = text.trim();
    if (trimmed.startsWith("#")) continue;
    if (trimmed === "") {
      log.note(
        {
          code: "blank-line-in-header",
          what: (n) => `${counted(n, "blank line")} in the header`,
          effect: "passed over",
        },
        line,
      );
      continue;
    }
    const parted = lasLine(text);
    if (!("error" in parted)) {
      if (/:\s/.test(parted.data)) {
        log.note(
          {
            code: "colon-before-the-last",
            what: (n) => `${counted(n, "header line")} with a colon that may begin the description before the last one`,
            effect: "the last colon begins it, as the standard says; look at the value",
          },
          line,
        );
      }
      found.push({ ...parted, line });
      continue;
    }
    const missing = parted.error === "no dot" ? "a dot behind the mnemonic" : "a colon before the description";
    log.note(
      {
        code: parted.error === "no dot" ? "header-line-without-dot" : "header-line-without-colon",
        what: (n) => `${counted(n, "header line")} without ${missing}`,
        effect: "the words before the missing mark are taken as the name",
      },
      line,
    );
    found.push({ ...parted.partial, line });
  }
  return found;
}

/** Version 1.2 puts the value behind the colon in the well section, except for the four that place the index. */
export function wellItems(section: LasSection, rules: string, log: Log): LasItem[] {
  const plain = lasItems(section, log);
  if (rules !== "1.2") return plain;
  return plain.map((item) =>
    /^(STRT|STOP|STEP|NULL)$/i.test(item.mnemonic) ? item : { ...item, data: item.description, description: item.data },
  );
}
