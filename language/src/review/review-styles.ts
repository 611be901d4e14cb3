/**
 * Styles of the review page: black on white on paper and alone, the colours of the editor's theme where a page takes them over. Severity is told by word,
 * rule and weight, never by colour alone.
 */
export const reviewStyles = `
:root { --ink: #000; --soft: #444; --faint: #999; --paper: #fff; --shade: #f3f3f3; --stop: #000; --link: inherit; }
body.themed { --ink: var(--vscode-editor-foreground); --soft: var(--vscode-descriptionForeground); --faint: var(--vscode-editorWidget-border, var(--vscode-descriptionForeground)); --paper: var(--vscode-editor-background); --shade: var(--vscode-textBlockQuote-background, transparent); --stop: var(--vscode-errorForeground); --link: var(--vscode-textLink-foreground); }
@page { margin: 14mm 13mm 16mm; }
* { box-sizing: border-box; }
body { margin: 0; padding: 0; background: var(--paper); color: var(--ink); font: 10.5pt/1.4 system-ui, "Helvetica Neue", Arial, sans-serif; }
.review { max-width: 190mm; margin: 0 auto; padding: 8mm 4mm 14mm; }
.review + .review { break-before: page; }
h1 { font-size: 20pt; line-height: 1.15; margin: 0 0 3mm; }
h2 { font-size: 13pt; margin: 9mm 0 3mm; padding-bottom: 1mm; border-bottom: 2px solid var(--ink); break-after: avoid; }
h2 .no { display: inline-block; min-width: 6mm; color: var(--soft); font-weight: 400; }
h3 { font-size: 10.5pt; margin: 5mm 0 1.5mm; break-after: avoid; }
p { margin: 0 0 2mm; }
small, .written, .lead { color: var(--soft); font-size: 9pt; }
ul { margin: 0 0 2mm; padding-left: 5mm; }
li { margin: 0 0 .6mm; }
code, .mono { font-family: ui-monospace, "DejaVu Sans Mono", Consolas, monospace; font-size: .92em; overflow-wrap: anywhere; }
.kind { margin: 0; color: var(--soft); text-transform: uppercase; letter-spacing: .08em; font-size: 8.5pt; }
dl { margin: 0; }
dt { color: var(--soft); font-size: 8.5pt; }
dd { margin: 0; }
.stamp { display: flex; flex-wrap: wrap; gap: 2mm 7mm; padding: 2.5mm 0; border-top: 1px solid var(--faint); border-bottom: 1px solid var(--faint); }
.standing { margin: 4mm 0 0; padding: 2.5mm 3.5mm; border: 1px solid var(--ink); border-left-width: 6px; font-weight: 600; }
.standing.stop { border-color: var(--stop); border-width: 3px 3px 3px 10px; }
.standing.quiet { font-weight: 400; }
.glance { display: grid; grid-template-columns: repeat(3, 1fr); gap: 2.5mm 6mm; }
.glance dd { font-weight: 600; }
.finding { break-inside: avoid; margin: 0 0 3mm; padding: 2mm 0 2mm 4mm; border-left: 2px solid var(--faint); }
.finding.error { border-left: 6px solid var(--stop); }
.finding.warning { border-left: 4px double var(--ink); }
.finding .head { margin: 0 0 .8mm; }
.finding .severity { text-transform: uppercase; font-size: 8.5pt; letter-spacing: .05em; }
.finding .message { margin: 0 0 1.2mm; }
.finding dl { display: flex; flex-wrap: wrap; gap: .8mm 8mm; }
.finding dl .wide { flex-basis: 100%; }
.count { display: inline-block; min-width: 5mm; padding: 0 1.5mm; border: 1px solid var(--ink); border-radius: 3mm; text-align: center; font-size: 8.5pt; font-weight: 600; }
.tag { display: inline-block; padding: 0 1.2mm; border: 1px solid var(--ink); font-size: 8pt; line-height: 1.35; font-weight: 600; }
.place { color: var(--soft); font-size: 8.5pt; white-space: nowrap; }
body.themed .place { color: var(--link); cursor: pointer; text-decoration: underline; }
table { width: 100%; border-collapse: collapse; margin: 0 0 2mm; font-size: 9.5pt; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th { text-align: left; font-weight: 600; font-size: 8.5pt; color: var(--soft); border-bottom: 1px solid var(--ink); }
th, td { padding: .7mm 2.5mm .7mm 0; vertical-align: top; overflow-wrap: break-word; }
td { border-bottom: 1px solid var(--faint); }
td .place { white-space: normal; }
table.figures td:nth-child(1), table.figures th:nth-child(1) { width: 6mm; padding-right: 1mm; }
table.figures td:nth-child(2), table.figures th:nth-child(2) { width: 27%; }
table.figures td:nth-child(3), table.figures th:nth-child(3) { width: 27%; }
table.figures td:nth-child(5), table.figures th:nth-child(5) { width: 20%; }
table.changes td:nth-child(1) { width: 30%; } table.changes td:nth-child(2) { width: 12%; } table.changes td:nth-child(4) { width: 16%; }
table.waivers td:nth-child(1) { width: 26%; } table.waivers td:nth-child(3) { width: 15%; } table.waivers td:nth-child(4) { width: 22mm; white-space: nowrap; } table.waivers td:nth-child(5) { width: 17mm; }
table.figures tr:not(:has(.box)) td { font-size: 8.8pt; color: var(--soft); }
table.figures { font-size: 9.2pt; table-layout: fixed; }
.box { display: inline-block; width: 3.4mm; height: 3.4mm; border: 1px solid var(--ink); }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
.memory { font-weight: 600; }
.sign { break-inside: avoid; margin-top: 4mm; padding: 3mm 4mm; border: 2px solid var(--ink); }
.sign h3 { margin-top: 0; }
.blank th[scope=row] { width: 30%; color: var(--ink); font-size: 9.5pt; border-bottom: 1px solid var(--faint); }
.blank td, .blank th { height: 9mm; vertical-align: bottom; }
.blank thead th { height: auto; }
.blank td.line { border-bottom: 1px solid var(--ink); border-left: 3mm solid transparent; }
@media (max-width: 150mm) { .glance { grid-template-columns: 1fr 1fr; } }
@media print { body, body.themed { --ink: #000; --soft: #333; --faint: #999; --paper: #fff; --shade: #fff; --stop: #000; --link: inherit; } .review { max-width: none; padding: 0; } body.themed .place { text-decoration: none; } }
`;
