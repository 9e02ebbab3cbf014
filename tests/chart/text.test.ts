import fc from "fast-check";
import { expect, test } from "vitest";
import { clip, figure, listed, textWidth, wrap } from "../../lib/chart/text.ts";

// Advance widths in thousandths of an em, measured in Chromium from DejaVu Sans 2.37 (the widest of the faces in use).
const dejavu: [string, string][] = [
  ["0123456789", "636 636 636 636 636 636 636 636 636 636"],
  ["abcdefghijklm", "613 635 550 635 615 352 635 634 278 278 579 278 974"],
  ["nopqrstuvwxyz", "634 612 635 635 411 521 392 634 592 818 592 592 525"],
  ["ABCDEFGHIJKLM", "684 686 698 770 632 575 775 752 295 295 656 557 863"],
  ["NOPQRSTUVWXYZ", "748 787 603 787 695 635 611 732 684 989 685 611 685"],
  [" .,:;!?'\"()[]/-", "318 318 318 337 337 401 531 275 460 390 390 390 390 337 361"],
  ["+=<>−±%#&@*_~·…—°µφ", "838 838 838 838 838 838 950 838 780 1000 500 500 838 318 1000 1000 500 636 660"],
];
// The same from Liberation Sans, whose widths are those of Arial and Helvetica.
const arial: [string, string][] = [
  ["0123456789", "556 556 556 556 556 556 556 556 556 556"],
  ["abcdefghijklm", "556 556 500 556 556 278 556 556 222 222 500 222 833"],
  ["ABCDEFGHIJKLM", "667 667 722 722 667 611 778 722 278 500 667 556 833"],
  ["NOPQRSTUVWXYZ", "722 778 667 778 722 667 611 722 667 944 667 667 611"],
  ["+=%@&…—", "584 584 889 1015 667 1000 1000"],
];

test("no letter is taken to be narrower than it is", () => {
  for (const [letters, widths] of [...dejavu, ...arial])
    for (const [i, letter] of [...letters].entries()) {
      const real = Number(widths.split(" ")[i]);
      expect(textWidth(letter, 1000), letter).toBeGreaterThanOrEqual(real);
    }
});

test("nor is a sentence given more than a quarter too much room", () => {
  const widths = new Map(
    dejavu.flatMap(([letters, list]) => [...letters].map((l, i) => [l, list.split(" ")[i]])),
  );
  const text = "sieve opening, mm (log scale; coarse at left, fine at right)";
  const real = [...text].reduce((sum, letter) => sum + Number(widths.get(letter)), 0);
  expect(textWidth(text, 1000) / real).toBeLessThan(1.25);
});

test("what was wrapped fits, in no more lines than allowed, and loses nothing unless it says so", () => {
  const words = fc
    .array(fc.stringMatching(/^[a-zA-Z0-9.,]{1,14}$/u), { maxLength: 12 })
    .map((all) => all.join(" "));
  fc.assert(
    fc.property(
      words,
      fc.integer({ min: 30, max: 400 }),
      fc.integer({ min: 1, max: 4 }),
      (text, width, most) => {
        const lines = wrap(text, width, 12, most);
        expect(lines.length).toBeLessThanOrEqual(most);
        for (const line of lines) expect(textWidth(line, 12)).toBeLessThanOrEqual(width);
        if (!lines.some((line) => line.endsWith("…"))) expect(lines.join(" ")).toBe(text);
      },
    ),
  );
});

test("a clipped text keeps its beginning", () => {
  expect(clip("Harbour sand", 500, 12)).toBe("Harbour sand");
  expect(clip("Harbour sand", 50, 12)).toMatch(/^Har.*…$/u);
});

test("figures and lists read as in prose", () => {
  expect([figure(66.06), figure(3, 2), figure(-0.04), figure(-1.25, 2), figure(Number.NaN)]).toEqual([
    "66.1",
    "3",
    "0",
    "−1.25",
    "no figure",
  ]);
  expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])]).toEqual([
    "",
    "a",
    "a and b",
    "a, b and c",
  ]);
});

test("a clipped text is the longest beginning that fits with its dots, and a long one takes no time by its square", () => {
  const fits = (text: string, widthPx: number): string =>
    Array.from(
      text,
      (_, k) =>
        `${[...text]
          .slice(0, k + 1)
          .join("")
          .trimEnd()}…`,
    )
      .filter((_, k) => k === 0 || textWidth(`${[...text].slice(0, k + 1).join("")}…`, 11) <= widthPx)
      .at(-1)!;
  const signs = "iWa ±é€中😀M. ";
  let seed = 20260714;
  const next = (below: number): number => {
    seed = (seed * 1_103_515_245 + 12_345) % 2 ** 31;
    return Math.floor((seed / 2 ** 31) * below);
  };
  for (let i = 0; i < 2000; i++) {
    const text = Array.from({ length: 1 + next(30) }, () => [...signs][next(13)]).join("");
    const widthPx = next(200);
    const wanted = textWidth(text, 11) <= widthPx ? text : fits(text, widthPx);
    expect(clip(text, widthPx, 11)).toBe(wanted);
  }
  const lap = (letters: number): number => {
    const from = process.cpuUsage();
    for (let i = 0; i < 20; i++) clip("L".repeat(letters), 100, 11);
    const { user, system } = process.cpuUsage(from);
    return (user + system) / 1000;
  };
  lap(1000);
  // By its square it would be minutes.
  expect(lap(100_000)).toBeLessThan(2000);
});
