/** Style of a report: ink on paper, nothing told by colour, one page and an appendix. */
export const style = `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 48rem; padding: 1.5rem; background: #fff; color: #000;
  font: 10pt/1.35 system-ui, 'Liberation Sans', Arial, sans-serif; }
h1 { margin: 0; font-size: 15pt; }
h2 { margin: 0.9em 0 0.3em; border-bottom: 1px solid #000; font-size: 11pt; }
p { margin: 0.2em 0; }
table { width: 100%; border-collapse: collapse; }
caption { text-align: left; font-weight: bold; }
th, td { padding: 0.1em 0.5em 0.1em 0; border-bottom: 1px solid #999; text-align: left; vertical-align: top; }
th { font-weight: 600; }
.facts th { width: 34%; font-weight: normal; }
.figure { text-align: right; font-variant-numeric: tabular-nums; }
.caution { margin: 0.5em 0; border: 2px solid #000; padding: 0.3em 0.6em; }
.strong { font-weight: bold; }
.mark { border: 1px solid #000; padding: 0 0.3em; font-weight: bold; }
.digest { font-family: 'Liberation Mono', 'Courier New', monospace; font-size: 8pt; overflow-wrap: anywhere; }
.two { display: grid; grid-template-columns: 1fr 1fr; gap: 0 1.5rem; }
.finding { margin: 0.5em 0; break-inside: avoid; }
.aside { text-decoration: line-through; }
.actions { columns: 2; font-size: 8pt; list-style: none; padding: 0; margin: 0; }
.actions li { break-inside: avoid; }
@media (max-width: 40rem) { .two { grid-template-columns: 1fr; } .actions { columns: 1; } }
@media print {
  @page { margin: 12mm; }
  body { max-width: none; padding: 0; font-size: 8.5pt; line-height: 1.22; }
  h2 { margin-top: 0.5em; }
  .appendix { break-before: page; }
}
`;
