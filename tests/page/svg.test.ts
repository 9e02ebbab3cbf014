import { expect, test } from "vitest";
import { compactSvg } from "../../lib/page/compact-svg.ts";
import { inlineSvg, standaloneSvg } from "../../lib/page/svg-text.ts";

test.each([
  [
    "lines of one look become one path",
    '<line transform="translate(1,2)" x2="0" y2="-4" stroke="red"/><line transform="translate(3,2)" x2="5" y2="0" stroke="red"/>',
    '<path d="M1,2v-4M3,2h5" stroke="red"/>',
  ],
  [
    "Vega's circles become circles with their look said once",
    '<path transform="translate(1,2)" d="M3,0A3,3,0,1,1,-3,0A3,3,0,1,1,3,0" fill="red"/><path transform="translate(4,5)" d="M3,0A3,3,0,1,1,-3,0A3,3,0,1,1,3,0" fill="red"/>',
    '<g fill="red"><circle cx="1" cy="2" r="3"/><circle cx="4" cy="5" r="3"/></g>',
  ],
  [
    "opacity does not pass from a group, so it stays where it was",
    '<rect width="1" opacity="0.5" fill="red"/><rect width="2" fill="red"/>',
    '<g fill="red"><rect width="1" opacity="0.5"/><rect width="2"/></g>',
  ],
  [
    "another look begins another run",
    '<rect width="1" fill="red"/><rect width="2" fill="blue"/>',
    '<rect width="1" fill="red"/><rect width="2" fill="blue"/>',
  ],
  [
    "words stay with their text, and a group between ends a run",
    '<text fill="red">a</text><text fill="red">b</text><g clip-path="url(#c)"><text fill="red">c</text></g>',
    '<g fill="red"><text>a</text><text>b</text></g><g clip-path="url(#c)"><text fill="red">c</text></g>',
  ],
])("%s", (_, long, short) => {
  expect(compactSvg(`<svg>${long}</svg>`)).toBe(`<svg>${short}</svg>`);
});

const wild = `<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY x "y">]><svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9" onload="a()" class="k">
<style>*{fill:red}</style><title>T &lt;b&gt;</title><defs><clipPath id="c"><rect x="0.123456" width="5"/></clipPath></defs>
<g class="band"><g clip-path="url(#c)" style="x:y"><path d="M0,0L1.23456,2" stroke="#9C4A1A" fill="none"/><path d="" fill="red"/></g></g>
<g><g/></g><use href="#c"/><text onclick='x'>bad</text><text>5 &gt; 3 \u202E</text><!-- <script> --></svg>`;

test("a drawing in a page holds shapes and words only, with ids of its own", () => {
  const svg = inlineSvg(wild, "w1-");
  expect(svg).toMatch(/^<svg aria-hidden="true" focusable="false" viewBox="0 0 9 9">/);
  expect(svg).toContain('<clipPath id="w1-c"><rect x="0.12" width="5"/></clipPath>');
  expect(svg).toContain(
    '<g clip-path="url(#w1-c)"><path d="M0,0L1.23,2" stroke="var(--measured,#9C4A1A)" fill="none"/></g>',
  );
  expect(svg).toContain("<text>5 &gt; 3 ⟨U+202E⟩</text>");
  expect(svg).not.toMatch(/style|script|title|onload|<use|class=|<g>|<g\/>|ENTITY/);
  expect(svg).toContain("&lt;text onclick='x'&gt;bad<text>");
  expect(svg.match(/<\/svg>/g)).toHaveLength(1);
  expect(svg.endsWith("</svg>")).toBe(true);
});

test("a drawing in a file keeps its words and stays what XML can read", () => {
  const svg = standaloneSvg(wild);
  expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 9 9">/);
  expect(svg).toContain("<title>T &lt;b&gt;</title>");
  expect(svg).not.toMatch(/style|<script|onload|<use|ENTITY/);
});

test("what was left open is closed", () => {
  expect(inlineSvg('<svg><g fill="red"><text>a', "")).toBe(
    '<svg aria-hidden="true" focusable="false"><g fill="red"><text>a</text></g></svg>',
  );
});
