// A page with every kind of block. The founder, the sands, the places and every figure are invented.

import type { Chart } from "../../lib/chart/chart.ts";
import { colours, themeConfig } from "../../lib/chart/theme.ts";
import type { Page } from "../../lib/page/blocks.ts";

/** Text that must stand for itself in every format. */
export const HOSTILE = `<script>alert("1")</script> & 'two' ]]> \u202Egnp.exe\u202C javascript:alert(3) **bold** [x](https://e.example) =1+1 | \`c\``;

/** Six invented trials: water in % of damp mass against compactability and green strength. */
const TRIALS = [
  { water: 2.41, compactability: 31, low: 29, high: 33, strength: 62.3 },
  { water: 2.78, compactability: 36.5, low: 34, high: 39, strength: 71.8 },
  { water: 3.02, compactability: 40, low: 38, high: 42, strength: 76.1 },
  { water: 3.3, compactability: 45.5, low: 43, high: 48, strength: 74.9 },
  { water: 3.71, compactability: 52, low: 49, high: 55, strength: 66 },
  { water: 4.1, compactability: 58, low: 55, high: 61, strength: 54.7 },
];

/** An invented chart of trials: band, fitted line, intervals and points. */
export function trialChart(
  name: string,
  field: "compactability" | "strength",
  title: string,
  band: [number, number],
): Chart {
  const x = { field: "water", type: "quantitative", scale: { zero: false }, title: "Water, % of damp mass" };
  const y = { field, type: "quantitative", scale: { zero: false }, title };
  return {
    name,
    caption: `${title.split(",")[0]} of six invented trials against water; the band is the founder's aim.`,
    alt: `${title.split(",")[0]} against water for six trials. The aim of ${band[0]} to ${band[1]} lies behind the points.`,
    spec: (width) => ({
      width: width - 64,
      height: width > 500 ? 300 : 230,
      background: "transparent",
      config: themeConfig(),
      data: { values: TRIALS },
      layer: [
        {
          data: { values: [{ from: band[0], to: band[1] }] },
          mark: { type: "rect", color: colours.band },
          encoding: { y: { ...y, field: "from" }, y2: { field: "to" } },
        },
        {
          mark: { type: "line", color: colours.fitted, interpolate: "monotone", clip: true },
          encoding: { x, y },
        },
        ...(field === "strength"
          ? []
          : [
              {
                mark: { type: "rule", color: colours.measured },
                encoding: { x, y: { ...y, field: "low" }, y2: { field: "high" } },
              },
            ]),
        {
          mark: { type: "point", filled: true, size: 55, color: colours.measured, opacity: 1 },
          encoding: { x, y },
        },
      ],
    }),
    table: {
      columns: [
        { name: "Water", unit: "% of damp mass" },
        { name: title.split(",")[0]!, unit: title.split(", ")[1]! },
      ],
      rows: TRIALS.map((trial) => [trial.water, trial[field]]),
    },
  };
}

export function samplePage(extra: { readonly hostile?: boolean } = {}): Page {
  const said = extra.hostile ? HOSTILE : "shovelled from the north bin, damp";
  return {
    title: extra.hostile ? `Water ${HOSTILE}` : "Water for the Tern Lane heap",
    question: extra.hostile
      ? `How much, ${HOSTILE}?`
      : "How much water brings the Tern Lane heap to its aim?",
    answer: [
      [
        { strong: "0.31 ± 0.12 kg" },
        " of water in all is expected to bring the heap of 42 kg to a compactability of 45 %.",
      ],
      "Give 0.20 kg first, mull for five minutes, and test again before the rest.",
    ],
    // Given out of order on purpose.
    sections: [
      {
        role: "next",
        title: "What to do next",
        blocks: [
          {
            kind: "list",
            ordered: true,
            items: [
              "Weigh 0.20 kg of water and sprinkle it over the heap while turning.",
              ["Mull for ", { em: "five minutes" }, ", cover, and let it stand for half an hour."],
              "Take three fillings of the tube and read the compactability of each.",
            ],
          },
        ],
      },
      {
        role: "data",
        title: "What was measured",
        blocks: [
          {
            kind: "prose",
            text: [
              "Six batches were made up from one sand and tempered to rising water. The founder noted: ",
              { em: said },
              ". Each was mulled for eight minutes, stood covered for thirty, and was then rammed three times in the home rig; the water was read from the loss of 150 g in the oven.",
            ],
          },
          {
            kind: "table",
            name: extra.hostile ? "../../trials" : "trials",
            caption: "The six trials as the log has them",
            columns: [
              { head: "Batch", align: "text" },
              { head: "Water", unit: "% of damp mass", align: "number" },
              { head: "Compactability", unit: "% of height", align: "number" },
              { head: "Green strength", unit: "kPa", align: "number" },
              { head: "Specimen", unit: "g", align: "number" },
            ],
            rows: [
              ...TRIALS.slice(0, 5).map((trial, i) => [
                `T${i + 1}`,
                { text: `${trial.water.toFixed(2)} ± 0.08`, number: trial.water },
                {
                  text: `${trial.compactability} ± ${(trial.high - trial.low) / 2}`,
                  number: trial.compactability,
                },
                { text: trial.strength.toFixed(1), number: trial.strength },
                { text: String(150 + 1.25 * i), number: 150 + 1.25 * i },
              ]),
              [
                extra.hostile ? HOSTILE : "T6",
                { text: "4.10 ± 0.08", number: 4.1 },
                { text: "58 ± 3", number: 58 },
                { text: "–", fault: "the load was not written down" },
                { text: "9.5", number: 9.5 },
              ],
            ],
            foot: [
              ["Mean", { text: "3.22", number: 3.22 }, { text: "43.8", number: 43.8333333333333 }, "", ""],
            ],
          },
        ],
      },
      {
        role: "findings",
        title: "What the trials say",
        blocks: [
          {
            kind: "finding",
            finding: {
              code: "water/in-reach",
              tone: "good",
              text: "45.5 ± 2.5 % compactability at 3.30 % water lies on the founder's aim of 43 to 47 %.",
              because: ["Batch T4 was read three times: 44, 46 and 46.5 %.", "The aim stands in the log."],
              formula: "compactability = (filled height − rammed height) ÷ filled height × 100",
              source: "common practice",
            },
          },
          {
            kind: "finding",
            finding: {
              code: "strength/peak",
              tone: "note",
              text: "76 kPa is the most that these trials reached, at 3.0 % water, a little drier than the aim.",
              because: ["A parabola through five batches leaves a residual of 1.9 kPa."],
            },
          },
          {
            kind: "finding",
            finding: {
              code: "water/oven-short",
              tone: "doubt",
              text: "4.10 % water in T6 may be low: the pan was weighed warm.",
              because: [`The note in the log reads: ${said}.`],
            },
          },
          {
            kind: "finding",
            finding: {
              code: "strength/missing",
              tone: "error",
              text: "No strength can be given for T6.",
              because: [],
            },
          },
        ],
      },
      {
        role: "result",
        title: "Water against compactability",
        blocks: [
          {
            kind: "figures",
            figures: [
              {
                label: "Water to add in all",
                figure: "0.31 ± 0.12",
                unit: "kg",
                under: "oven, scale and trial scatter",
              },
              { label: "First dose", figure: "0.20", unit: "kg", under: "the 10 % quantile of the need" },
              {
                label: "Live clay",
                figure: "at least ± 1.4",
                unit: "% of dry mix",
                under: "no repeat of the titration",
                weak: true,
              },
            ],
          },
          {
            kind: "chart",
            chart: trialChart("compactability", "compactability", "Compactability, % of height", [43, 47]),
          },
          {
            kind: "prose",
            text: "The slope is steeper than the scatter of a single filling, so the tube can carry the decision; the kitchen moisture meter, good to two points, cannot.",
          },
          { kind: "chart", chart: trialChart("green-strength", "strength", "Green strength, kPa", [65, 80]) },
          {
            kind: "fold",
            summary: "How the line was fitted",
            blocks: [
              {
                kind: "prose",
                text: "A straight line by least squares; its interval comes from the residual of the trials.",
              },
              {
                kind: "caution",
                caution: {
                  code: "muller/moving",
                  trigger: "because batches are mulled between the trials",
                  text: "A turning muller catches sleeves, gloves and hands.",
                  points: ["Switch off and wait for a standstill before taking a sample."],
                  defers: "Local rules and the maker's instructions come first.",
                },
              },
            ],
          },
        ],
      },
      { role: "data", title: "Never shown", blocks: [{ kind: "list", items: [] }] },
      {
        role: "cautions",
        title: "Before you begin",
        blocks: [
          {
            kind: "caution",
            caution: {
              code: "silica/dust",
              trigger: "because dry sand is weighed and riddled",
              text: "Dust of silica sand scars the lungs for good.",
              points: [
                "Work outdoors or with extraction, and wear a fitted respirator made for fine dust.",
                "Wipe or vacuum with a fine filter; do not sweep dry.",
              ],
              defers: "Local codes and the advice of licensed practitioners come first.",
            },
          },
        ],
      },
    ],
    sources: [
      "ISO 3310-1, test sieves of metal wire cloth (title only).",
      extra.hostile ? HOSTILE : "Our own relation, fitted to the trials of this page.",
    ],
    colophon: [
      "Log tern-lane.yaml, fingerprint 5f3a91c2. Mullbook 0.1.0.",
      "Founder, sands and figures are invented.",
    ],
    issues: [
      {
        code: "log/spare-key",
        severity: "note",
        message: "The key wether is not known and was not read.",
        remedy: "Write weather if that was meant.",
        place: { file: "tern-lane.yaml", line: 61, column: 3 },
      },
      {
        code: "log/missing-load",
        severity: "error",
        message: extra.hostile ? HOSTILE : "The load that broke the specimen is missing.",
        remedy: "Write it as load: 12.4 kg, or leave the test out.",
        place: { file: extra.hostile ? HOSTILE : "tern-lane.yaml", line: 48, column: 7 },
        about: "batch T6",
      },
    ],
    figures: {
      "water to add kg": { mean: 0.3123456789012345, low: 0.19, high: 0.43 },
      "compactability aim %": [43, 47],
      "live clay %": Number.NaN,
    },
  };
}
