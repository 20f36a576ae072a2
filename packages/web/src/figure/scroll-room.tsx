import type { ReactNode } from "react";

/** A place that scrolls by itself where the screen is too narrow; the keys reach it as well as the hand. */
export function ScrollRoom(props: { readonly label: string; readonly wide?: boolean; readonly children: ReactNode }) {
  const { label, wide, children } = props;
  return (
    <section
      className={wide ? "table-room wide-table" : "table-room"}
      aria-label={label}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keys
      tabIndex={0}
    >
      {children}
    </section>
  );
}
