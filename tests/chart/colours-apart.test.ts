// Whatever meets on one chart is told apart: by shape, dash or weight; else by a colour that every reader sees.

import { expect, test } from "vitest";
import type { Chart } from "../../lib/chart/chart.ts";
import { colours } from "../../lib/chart/theme.ts";
import { darkColours } from "../../lib/page/palette.ts";
import { bareChart } from "./bare-chart.ts";
import { apart, over, readers } from "./colour-vision.ts";
import { controlSamples } from "./control-samples.ts";
import { samples } from "./samples.ts";
import { trialSamples } from "./trial-samples.ts";

interface Look {
  readonly type: string;
  readonly color?: string;
  readonly stroke?: string;
  readonly shape?: string;
  readonly strokeDash?: readonly number[];
  readonly strokeWidth?: number;
  readonly filled?: boolean;
  readonly opacity?: number;
  readonly fillOpacity?: number;
}
interface Read {
  readonly name: string;
  readonly mark: Look;
}

/** Lines, marks and fills that say which series they are; a key's samples look like them. */
const series =
  /^(key(-of-\d+)?-\d+(-\d+)?-(line|mark|bar)|(line|points|bars|middle|edges|left-out|published)-\w+|values|before|course|mean|limits)$/;

/** Alike to a reader who sees no colour: then the colour has to do it. */
const form = ({ type, shape, strokeDash, strokeWidth, filled }: Look): string =>
  JSON.stringify([type, shape, strokeDash ?? [], strokeWidth, filled]);

/** As it stands on paper; the dark page swaps one for one. */
function onPaper({ color, stroke, opacity = 1, fillOpacity = 1 }: Look, palette: typeof darkColours): string {
  const name = Object.entries(colours).find(([, hex]) => hex === (color ?? stroke))?.[0];
  expect(name, `${color ?? stroke} is a colour of the theme`).toBeDefined();
  return over(palette[name as keyof typeof colours], opacity * fillOpacity, palette.paper);
}

/** Twice what two neighbours in a fill may differ by and be missed: 2.3 is just noticed (Mahy 1994, from memory). */
const seenApart = 5;

/** Pairs of one form, of different colours, that some reader cannot tell apart. */
function alike(chart: Chart, palette: typeof darkColours): string[] {
  const looks = (chart.spec(720).layer as readonly Read[]).filter(
    ({ name, mark }) => mark && series.test(name),
  );
  const unlike = new Map(looks.map((layer) => [JSON.stringify(layer.mark), layer] as const));
  const all = [...unlike.values()];
  return all.flatMap((one, i) =>
    all.slice(i + 1).flatMap((other) => {
      if (form(one.mark) !== form(other.mark)) return [];
      const [a, b] = [onPaper(one.mark, palette), onPaper(other.mark, palette)];
      if (a === b) return [];
      return Object.entries(readers).flatMap(([who, seen]) =>
        apart(a, b, seen) < seenApart ? [`${who}: ${one.name} ${a}, ${other.name} ${b}`] : [],
      );
    }),
  );
}

const charts = [...samples, ...trialSamples, ...controlSamples].map((chart) => [chart.name, chart] as const);

test.each(charts)("%s: every reader tells its series apart, on paper and on a dark screen", (_, chart) => {
  for (const palette of [colours, darkColours]) expect(alike(chart, palette)).toEqual([]);
});

test("the probe finds two lines that differ by a colour that a green-blind reader does not see", () => {
  const line = (name: string, color: string) => ({ name, mark: { type: "line", color } });
  const layer = [line("line-1", colours.fitted), line("line-2", colours.secondSand)];
  expect(alike(bareChart(layer), { ...colours, fitted: "#6a6a00", secondSand: "#8a5e00" })).not.toEqual([]);
});
