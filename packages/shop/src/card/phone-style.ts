/**
 * Looks of the phone's card: black on white for the sun, with one tap to white on black for the night; no colour carries
 * anything. What is tapped stands in a bar under the thumb, 48 px high.
 */
export const PHONE_STYLE = `
:root { --ink: #000; --paper: #fff; color-scheme: light; }
:root:has(#night:checked) { --ink: #fff; --paper: #000; color-scheme: dark; }
* { box-sizing: border-box; }
html { scroll-padding-top: 8px; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body { margin: 0; padding: 12px 12px 96px; background: var(--paper); color: var(--ink); overflow-wrap: anywhere;
  font: 19px/1.35 system-ui, "DejaVu Sans", Arial, sans-serif; }
h1 { font-size: 22px; line-height: 1.2; margin: 0 0 4px; }
h2 { font-size: 20px; margin: 28px 0 8px; padding-top: 8px; border-top: 4px solid var(--ink); text-transform: uppercase; }
h3 { font-size: 26px; line-height: 1.2; margin: 0 0 8px; }
p { margin: 0 0 8px; }
.who { font-size: 16px; }
.alert { border: 4px solid var(--ink); padding: 8px; margin: 8px 0; font-weight: 700; }
a { color: inherit; }
.depths { list-style: none; margin: 0; padding: 0; display: grid; gap: 8px; }
.depths li { margin: 0; }
.depths a { display: flex; gap: 12px; align-items: center; min-height: 56px; padding: 8px 12px; border: 2px solid var(--ink);
  border-radius: 8px; text-decoration: none; }
.depths b { font-size: 24px; white-space: nowrap; }
.bed { border: 2px solid var(--ink); border-radius: 8px; padding: 12px; margin: 0 0 16px; }
.bed:target { border-width: 6px; }
.figures { display: grid; grid-template-columns: 1fr 1fr; gap: 8px 16px; margin: 0 0 12px; }
.figures div { border-top: 2px solid var(--ink); }
.figures .wide { grid-column: 1 / -1; }
dt { font-size: 15px; text-transform: uppercase; }
dd { margin: 0; font-size: 28px; line-height: 1.15; font-weight: 700; }
.wide dd { font-size: 36px; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-size: 15px; padding-bottom: 4px; }
th, td { padding: 6px 2px; text-align: right; border-bottom: 1px solid var(--ink); font-size: 17px; }
th { font-size: 13px; border-bottom-width: 3px; }
th:nth-child(4), td:nth-child(4) { text-align: left; padding-left: 8px; white-space: nowrap; }
td:first-child, td:nth-child(n + 4) { font-weight: 700; }
ul { margin: 0; padding-left: 22px; }
li { margin: 0 0 8px; }
.bar { position: fixed; left: 0; right: 0; bottom: 0; display: grid; grid-auto-flow: column; grid-auto-columns: 1fr; gap: 8px;
  padding: 8px; background: var(--paper); border-top: 4px solid var(--ink); }
.bar a, .bar label { display: flex; align-items: center; justify-content: center; min-height: 48px; border: 2px solid var(--ink);
  border-radius: 8px; font-size: 16px; font-weight: 700; text-decoration: none; text-align: center; }
#night { position: absolute; bottom: 24px; right: 24px; margin: 0; opacity: 0; pointer-events: none; }
#night:focus-visible + label, a:focus-visible { outline: 4px solid var(--ink); outline-offset: 2px; }
#night:checked + label { background: var(--ink); color: var(--paper); }
`;
