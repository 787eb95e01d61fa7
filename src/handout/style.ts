import { ink, paleInk } from '../plot/inks.js';

/** The style of the page: black on white, two columns, a page of its own for the readings. @internal */
export const styleFor = (paper: 'A4' | 'letter'): string => `
@page { size: ${paper}; margin: 9mm 14mm; }
*, *::before { box-sizing: border-box; }
html { color: ${ink}; background: #fff; font: 8.6pt/1.32 Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif; }
body { max-width: 186mm; margin: 0 auto; overflow-wrap: anywhere; }
@media screen { body { padding: 8mm 4mm; } }
header { border-bottom: 1.5pt solid ${ink}; padding-bottom: 1.5mm; margin-bottom: 3mm; }
h1 { font-size: 14pt; line-height: 1.15; margin: 0; }
.kind { margin: 0.5mm 0 0; font-weight: bold; }
.fields { display: flex; gap: 5mm; margin: 4mm 0 0; }
.fields span { flex: 1; border-bottom: 0.5pt solid ${paleInk}; padding-bottom: 0.5mm; color: ${paleInk}; }
.columns { columns: 2; column-gap: 7mm; }
section { break-inside: avoid; margin: 0 0 3mm; }
h2 { font-size: 9.6pt; margin: 0 0 1mm; }
p { margin: 0 0 1mm; }
ul, ol { margin: 0 0 1mm; padding-left: 4.5mm; }
ul.checks { list-style: none; padding-left: 0; }
ul.checks li { padding-left: 5mm; text-indent: -5mm; }
ul.checks li::before { content: ''; display: inline-block; width: 2.6mm; height: 2.6mm; border: 0.7pt solid ${ink}; margin-right: 2.4mm; vertical-align: -0.3mm; }
.cautions { border: 1pt solid ${ink}; padding: 1.5mm 2.5mm 0.8mm; }
.strong { font-weight: bold; }
svg { display: block; width: 100%; height: auto; }
.picture h2 { display: none; }
table { border-collapse: collapse; width: 100%; margin: 0 0 1.5mm; font-variant-numeric: tabular-nums; }
th, td { border: 0.5pt solid #8a949e; padding: 0.4mm 1mm; text-align: left; height: 5.4mm; vertical-align: middle; }
th { font-weight: bold; background: #eef1f4; height: auto; }
td.number, th.number { text-align: right; }
td { padding-top: 0; padding-bottom: 0; }
.answer td { height: auto; }
.answer:not(table) { border-left: 2pt solid ${paleInk}; padding-left: 2mm; }
ul.answer { padding-left: 5.5mm; }
.sheet { break-before: page; break-inside: auto; margin: 0; }
.blocks { display: flex; gap: 3.5mm; margin-bottom: 2.5mm; }
.blocks table { flex: 1; table-layout: fixed; }
.blocks th { text-align: center; padding: 0.4mm 0; font-size: 6.8pt; }
.blocks td { height: 6mm; }
.blocks .answer td { height: 4.6mm; }
.drops { table-layout: fixed; }
.drops th:first-child { width: 24mm; }
tr { break-inside: avoid; }
* { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
`;
