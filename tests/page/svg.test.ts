import { expect, test } from "vitest";
import { compactSvg } from "../../lib/page/compact-svg.ts";
import { shortPath } from "../../lib/page/short-path.ts";
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
  expect(svg).toMatch(/^<svg aria-hidden="true" viewBox="0 0 9 9">/);
  expect(svg).toContain('<clipPath id="w1-c"><rect x="0.1" width="5"/></clipPath>');
  expect(svg).toContain(
    '<g clip-path="url(#w1-c)"><path d="M0,0l1.2,2" stroke="var(--measured)" fill="none"/></g>',
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
    '<svg aria-hidden="true"><g fill="red"><text>a</text></g></svg>',
  );
});

test.each([
  ["points on a line are left out", "M0.04,0L10,0.01L20,0L20,5Z", "M0,0h20v5z"],
  ["steps are told in tenths", "M1.26,2L4.5,1.96L4.5,2.5", "M1.3,2h3.2v.5"],
  ["boxes and strokes of Vega", "M131.22,89h495.49v151h-495.49Z", "M131.2,89h495.5v151h-495.5z"],
  ["a next run is a step where that is shorter", "M441.3,144.5v7M446.2,144.5v7", "M441.3,144.5v7m4.9-7v7"],
  ["arcs stay as they are", "M3,0A3,3,0,1,1,-3,0Z", "M3,0A3,3,0,1,1,-3,0Z"],
  ["a path of one place keeps it", "M5,5", "M5,5h0"],
])("a path is written shorter: %s", (_, long, short) => {
  expect(shortPath(long)).toBe(short);
});

/** Places of a path of M, m, l, h, v and z, by a reader of the test's own. */
function placesOf(path: string): [number, number][] {
  let [x, y] = [0, 0];
  return [...path.matchAll(/([Mmlhv])([^Mmlhvz]*)/g)].flatMap(([, letter, rest]) => {
    const numbers = rest!.match(/-?(?:\d*\.\d+|\d+)/g)!.map(Number);
    const found: [number, number][] = [];
    for (let i = 0; i < numbers.length; i += letter === "h" || letter === "v" ? 1 : 2) {
      if (letter === "M") [x, y] = [0, 0];
      if (letter !== "v") x += numbers[i]!;
      if (letter !== "h") y += numbers[letter === "v" ? i : i + 1]!;
      found.push([x, y]);
    }
    return found;
  });
}

function offLine([x, y]: [number, number], at: readonly [number, number][]): number {
  const distances = at.slice(1).map(([bx, by], i) => {
    const [ax, ay] = at[i]!;
    const length = (bx - ax) ** 2 + (by - ay) ** 2;
    const along =
      length === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
    return Math.hypot(x - ax - along * (bx - ax), y - ay - along * (by - ay));
  });
  return Math.min(...distances);
}

test("no place of a shortened curve or fill is more than a fifth of a pixel from where it was", () => {
  const top = Array.from({ length: 60 }, (_, i): [number, number] => [i * 11.37, 150 + 90 * Math.sin(i / 9)]);
  const bottom = top.map(([x, y]): [number, number] => [x, y + 20 + x / 30]).reverse();
  for (const [ring, at] of [
    [false, top],
    [true, [...top, ...bottom]],
  ] as const) {
    const long = `M${at.map(([x, y]) => `${x.toFixed(2)},${y.toFixed(2)}`).join("L")}${ring ? "Z" : ""}`;
    const short = shortPath(long);
    expect(short.length).toBeLessThan(0.65 * long.length);
    const kept = placesOf(short);
    if (ring) kept.push(kept[0]!);
    for (const place of at) expect(offLine(place, kept)).toBeLessThan(0.2);
  }
});
