/** Signs that differ in shape as well as in colour; the word for each stands beside it. */
export type SignName = "stop" | "caution" | "note" | "empty" | "assumed" | "done" | "stale";

/** A sign of 20 units; the words beside it say what it means. */
export function Sign({ name, className }: { readonly name: SignName; readonly className?: string }) {
  return (
    <svg className={className} viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
      {SHAPES[name]}
    </svg>
  );
}

const line = { fill: "none", stroke: "currentColor", strokeWidth: 2 } as const;
const mark = { fill: "var(--mark-line)", stroke: "var(--mark)", strokeWidth: 1.5 } as const;

const SHAPES: Readonly<Record<SignName, React.ReactNode>> = {
  stop: (
    <>
      <path d="M6 1h8l5 5v8l-5 5H6l-5-5V6z" fill="var(--mark)" />
      <path d="M5 10h10" stroke="var(--paper)" strokeWidth="3" />
    </>
  ),
  caution: (
    <>
      <path d="M10 1.500 19 18H1z" {...mark} strokeLinejoin="round" />
      <path d="M10 7v5M10 14v2" stroke="var(--sign-ink)" strokeWidth="2" />
    </>
  ),
  note: (
    <>
      <circle cx="10" cy="10" r="8" {...line} stroke="var(--act)" />
      <path d="M10 9v6M10 5v2" stroke="var(--act)" strokeWidth="2" />
    </>
  ),
  empty: <circle cx="10" cy="10" r="8" {...line} strokeDasharray="3 3" />,
  assumed: (
    <>
      <circle cx="10" cy="10" r="8" {...line} />
      <path d="M10 2a8 8 0 0 1 0 16z" fill="currentColor" />
    </>
  ),
  done: (
    <>
      <circle cx="10" cy="10" r="9" fill="var(--act)" />
      <path d="m5.500 10 3 3.500 6-7" fill="none" stroke="var(--act-ink)" strokeWidth="2.500" />
    </>
  ),
  stale: <path d="M16.500 6A7.500 7.500 0 1 0 17.500 11M17 2v4.500h-4.500" {...line} />,
};
