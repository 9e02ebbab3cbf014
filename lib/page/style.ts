// The look of every page: a lab note on warm paper.

import { NUMBERED_COLUMNS, WIDEST_PART } from "./html-table.ts";
import { paletteStyle } from "./palette.ts";
import { PRINT_STYLE } from "./style-print.ts";
import { TITLE_STYLE } from "./style-title.ts";
import { english, type PageWords } from "./words.ts";

const SERIF = `Charter,"Bitstream Charter","Iowan Old Style","Palatino Linotype",Cambria,"Noto Serif",Georgia,serif`;
const SANS = `system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans","Helvetica Neue",Arial,sans-serif`;

/** The pattern that bands are filled with in print. Not display: none, which would take the pattern away too. */
export const HATCH = `<svg class="hatch" width="0" height="0" aria-hidden="true"><defs><pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0,0V5" stroke="#8a8a8a" stroke-width="1"/></pattern></defs></svg>`;

const PAGE = `*{box-sizing:border-box}
html{font:18px/1.55 ${SERIF};-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0 auto;max-width:calc(720px + 2.5rem);padding:3.2rem 1.25rem 4rem;background:var(--paper);color:var(--ink);overflow-wrap:break-word;font-variant-numeric:lining-nums tabular-nums}
html{background:var(--paper)}
p,ul,ol,.answer,.finding,.caution{max-width:var(--prose)}
p,li,dd,figcaption,caption>span{text-wrap:pretty}
:root{--prose:54ch;--sans:${SANS}}
p,ul,ol,dl,figure{margin:0 0 .85rem}
h1{font-size:1.9rem;line-height:1.15;font-weight:600;letter-spacing:-.01em;margin:0 0 .4rem;text-wrap:balance}
h2{font-size:1.22rem;line-height:1.3;font-weight:600;margin:0 0 .8rem;text-wrap:balance}
section{margin-top:2.6rem;padding-top:1.1rem;border-top:1px solid var(--rule)}
ul,ol{padding-left:1.3rem}
li{margin:.25rem 0}
li::marker{color:var(--quiet)}
a{color:var(--fitted);text-underline-offset:.15em}
:focus-visible{outline:2px solid var(--fitted);outline-offset:3px}
.invented{font:.85rem/1.5 var(--sans);color:var(--quiet);margin-bottom:.6rem}
.question{font-style:italic;color:var(--quiet);font-size:1.1rem;margin-bottom:1.5rem}
.answer{border-left:3px solid var(--measured);padding:.1rem 0 .1rem 1.1rem;font-size:1.1rem}
.answer p{margin-bottom:.4rem}
.answer p:last-child{margin:0}
.hazards,.notice{border:1px solid var(--rule);border-left:3px solid var(--ink);padding:.45rem .8rem;font-size:.9rem;margin-bottom:1.3rem}
.notice{max-width:none;width:fit-content}
.unit{font-weight:400;color:var(--quiet);font-size:.82em}`;

const FIGURES = `.figures{display:flex;flex-wrap:wrap;gap:1.2rem 2.2rem;margin:1.3rem 0 1.5rem}
.figures>div{flex:0 1 auto;max-width:100%}
.figures dt,.under{font:.8rem/1.4 var(--sans);color:var(--quiet);max-width:17rem}
.figures dd{margin:0}
.figure{font:600 1.6rem/1.3 var(--sans);letter-spacing:-.01em;font-variant-numeric:lining-nums tabular-nums}
.figure .unit{font-size:.95rem;letter-spacing:0}
.weak .figure{font-weight:400}
figure{margin:1.4rem 0 .5rem}
figure svg{display:block;width:100%;height:auto;overflow:visible}
figure svg text{font-family:var(--sans);font-variant-numeric:lining-nums tabular-nums}
.wide svg{max-width:720px}
.narrow{display:none}
figcaption,caption{font:.85rem/1.45 var(--sans);text-align:left}
figcaption{max-width:34rem;margin-top:.5rem}
.hatch{position:absolute}`;

/** A rule for the nth column of a table that has the class, for every n: ".n2 tr>:nth-child(2)". */
function columnRule(letter: string, rule: string): string {
  const places = Array.from({ length: NUMBERED_COLUMNS }, (_, i) => i + 1);
  return `${places.map((n) => `.${letter}${n} tr>:nth-child(${n})`).join(",")}{${rule}}`;
}

/** Shadows at the edges that more of the table lies behind; the paper-coloured covers scroll along and hide them, and reach a pixel further. */
const SCROLL_SHADOWS = `linear-gradient(to right,var(--paper) 40%,transparent) -2px 0/2.2rem 100% no-repeat local,linear-gradient(to left,var(--paper) 40%,transparent) calc(100% + 2px) 0/2.2rem 100% no-repeat local,linear-gradient(to right,var(--shadow),transparent) 0 1px/.9rem calc(100% - 2px) no-repeat scroll,linear-gradient(to left,var(--shadow),transparent) calc(100% - 1px) 1px/.9rem calc(100% - 2px) no-repeat scroll`;

const TABLE = `.scroll{--shadow:color-mix(in srgb,var(--ink) 28%,transparent);overflow-x:auto;margin:1.3rem 0;background:${SCROLL_SHADOWS}}
.table-note{font:.8rem/1.45 var(--sans);color:var(--quiet);margin:0 0 .3rem}
.scroll:has(+.table-note){margin-bottom:.5rem}
table{border-collapse:collapse;font:.85rem/1.4 var(--sans);font-variant-numeric:lining-nums tabular-nums}
caption{padding-bottom:.5rem;background:var(--paper)}
caption>span{display:block;position:sticky;left:0;width:max-content;max-width:min(34rem,100vw - 2.5rem)}
th,td{text-align:left;vertical-align:baseline;padding:.28rem 1.15rem .28rem 0}
th:last-child,td:last-child{padding-right:.2rem}
th{font-weight:400}
thead th{font-weight:600;vertical-align:bottom}
thead .unit{display:block}
thead tr{border-bottom:1px solid var(--ink)}
tbody tr{border-bottom:1px solid color-mix(in srgb,var(--rule) 55%,transparent)}
tbody tr:last-child{border-bottom:1px solid var(--ink)}
.u,tbody :is(th,td),tfoot :is(th,td){white-space:nowrap}
.n{text-align:right}
${columnRule("n", "text-align:right")}
${columnRule("t", "white-space:normal;min-width:var(--words,0)")}
td>[class^=w]{display:inline-block;white-space:pre;text-align:left}
@media screen{.scroll table:not(.n1) tr>:first-child{position:sticky;left:0;z-index:1;background:var(--paper);background-clip:padding-box}}
.fault{display:inline-block;white-space:normal;font-style:italic;color:var(--quiet);font-size:.9em;max-width:9.5rem}
${Array.from({ length: WIDEST_PART }, (_, i) => `.w${i + 1}{min-width:${i + 1}ch}`).join("")}`;

const NOTES = `pre{font:.8rem/1.5 ui-monospace,"SF Mono",Consolas,monospace;margin:0 0 .85rem;padding:.4rem .8rem;border-left:3px solid var(--rule);white-space:pre-wrap;overflow-wrap:anywhere}
pre>span{display:block;padding-left:10ch;text-indent:-10ch}
code{font-size:.86em}
.finding{display:grid;grid-template-columns:6.4rem 1fr;margin:0 0 1rem;max-width:calc(var(--prose) + 6.4rem)}
.finding p,.finding details{margin:0 0 .25rem}
.tone{font:.8rem/1.9 var(--sans);color:var(--quiet);white-space:nowrap}
.tone span{display:inline-block;width:1.15em;color:var(--fitted)}
.tone-doubt .tone span,.tone-error .tone span{color:var(--measured)}
summary{font:.82rem/1.6 var(--sans);color:var(--quiet);cursor:pointer;width:fit-content;padding:.1rem 0}
summary:hover{color:var(--ink)}
.fold>summary{font-size:.9rem;color:var(--ink)}
details ul{font-size:.92rem;margin:.3rem 0}
.finding .formula,.finding .source{font:.85rem/1.5 var(--sans);margin:.3rem 0}
.finding .formula{padding-left:1.3rem}
.finding .source{color:var(--quiet)}
.own-sheet{border:1px solid var(--ink);padding:.2rem 1.2rem .8rem;margin:1.4rem 0;max-width:none}
.own-sheet table{width:100%;max-width:none}
.own-sheet :is(td,th){border:1px solid var(--rule);padding:.25rem .4rem}
.own-sheet td{height:1.8rem}
.chart-data,.fold{margin-bottom:1.4rem}
.caution{border:1px solid var(--ink);border-left-width:5px;padding:.75rem 1.1rem;margin:1.1rem 0}
.caution p,.caution ul{margin-bottom:.45rem}
.caution>:last-child{margin:0}
.word{text-transform:uppercase;letter-spacing:.07em;font:700 .85rem var(--sans)}
.trigger,.defers{color:var(--quiet)}
.trigger{font-style:italic}
.issues{list-style:none;padding:0}
.issues li{margin:0 0 .9rem}
.issues p{margin:0}
.place{font:.8rem/1.5 ui-monospace,"SF Mono",Consolas,monospace;color:var(--quiet);overflow-wrap:anywhere}
.sources li{font-size:.92rem}
footer{margin-top:3rem;padding-top:.8rem;border-top:1px solid var(--rule);font:.78rem/1.5 var(--sans);color:var(--quiet)}
footer p{margin:0;overflow-wrap:anywhere}`;

/** Below the width of a wide drawing the narrow ones are shown: a wide one scaled down would be too small to read. */
const NARROW_DRAWINGS = `@media screen and (max-width:765px){.wide{display:none}
.narrow{display:block;margin-inline:-.625rem}
.narrow svg{max-width:30rem}}`;

/** Where the window has room, a table may reach beyond the text, to the right, and cautions stand side by side. */
const DESK = `@media screen and (min-width:900px){.scroll{width:max-content;min-width:min(100%,20rem);max-width:calc(50vw + 360px - 1.5rem)}
.cautions:has(.caution+.caution){columns:2;column-gap:1.2rem}
.cautions>:is(h2,p){column-span:all}
.cautions .caution{break-inside:avoid;margin:0 0 1.1rem;padding:.65rem .9rem;font-size:.95em}}`;

const PHONE = `@media screen and (max-width:640px){html{font-size:16px}
body{padding:1.8rem 1rem 3rem}
h1{font-size:1.6rem}
.scroll{--words:13em}
.finding{display:block}
.tone{line-height:1.5}
.figures{gap:1.1rem 2rem}
.figure{font-size:1.5rem}
th,td{padding-right:1rem}}`;

/**
 * Says of a table that it is wider than its place: a timeline of scrolling runs only where there is something to
 * scroll. A browser without such timelines shows the shadows alone.
 */
function scrollHint(words: PageWords): string {
  const said = words.scrolls().replace(/["\\<\n]/g, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `);
  return `@media screen{@supports (animation-timeline:scroll(self inline)){.scroll{scroll-timeline:--across inline}
caption>span::after{content:"\\2194\\a0 ${said}";display:block;color:var(--quiet);font-size:0;line-height:1.45;animation:across linear;animation-timeline:--across}
@keyframes across{from,to{font-size:.8rem}}}}`;
}

/** The whole style sheet, with the page's own words where the style says any. */
export function pageStyle(words: PageWords = english): string {
  return [
    paletteStyle(),
    PAGE,
    FIGURES,
    TABLE,
    scrollHint(words),
    NOTES,
    TITLE_STYLE,
    NARROW_DRAWINGS,
    DESK,
    PHONE,
    PRINT_STYLE,
  ].join("\n");
}
