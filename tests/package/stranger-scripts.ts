// What a stranger's project says to the library: once as a script, once to the compiler.

/**
 * The fineness number of sand that lies wholly on a No. 50 sieve is the number of the sieve above, 40 (the usual
 * multiplier, common practice); 50.00 g damp that weigh 47.50 g dry held 5 % of water, of damp mass.
 */
export const script = `import { grainFineness, moistureOfDampPercent, readLog } from "mullbook";

const stack = ["No. 6", "No. 12", "No. 20", "No. 30", "No. 40", "No. 50", "No. 70", "No. 100", "No. 140", "No. 200", "No. 270"];
const retained = Object.fromEntries([...stack, "pan"].map((sieve) => [sieve, sieve === "No. 50" ? 100 : 0]));
const { gfn } = grainFineness({ retained });
const { value } = readLog("format: 1\\nsands:\\n  Dune sand:\\n    sieving: { retained: { No. 50: 60.0 g, pan: 40.0 g } }\\n", { name: "my.yaml" });
console.log(String(gfn), moistureOfDampPercent({ dampG: 50, dryG: 47.5 }).toFixed(2), String(value.sands.length));
`;

export const consumer = `import {
  batchFigures,
  type Chart,
  combine,
  curveThrough,
  fitPolynomial,
  type GrainFineness,
  grainFineness,
  type Issue,
  type Log,
  moistureOfDampPercent,
  notebook,
  printFigure,
  readLog,
  section,
  sheet,
  spread,
  writeHtml,
} from "mullbook";

const fine: GrainFineness = grainFineness({ retained: { pan: 1 } });
export const number: number | undefined = fine.gfn;
// @ts-expect-error: a number is no text
export const wrong: string = fine.gfn;
// @ts-expect-error: a mass is told by its name and unit
moistureOfDampPercent({ damp: 50, dry: 47 });
export const moisture: number = moistureOfDampPercent({ dampG: 50, dryG: 47.5 });
const { value, issues }: { readonly value?: Log; readonly issues: readonly Issue[] } = readLog("format: 1", { name: "a" });
export const codes: readonly string[] = issues.map(({ code }) => code);
export const rows = value ? batchFigures(value).figures.length : 0;
export const mean: number = combine(({ a }) => a, { a: spread("12.4 ± 0.1 g") }).mean;
export const slope = fitPolynomial([1, 2, 3], [2, 4, 6.1], 1).coefficients[1];
export const made = sheet({ columns: {}, rows: [] }).issues;
export const printed: string = printFigure({ value: 3.2, low: 3.1, high: 3.3, unit: "%" }).text;
export const at: unknown = curveThrough;
export const drawn = (chart: Chart): unknown => chart.spec(720);
const own = notebook("Own", (log: Log) => ({ question: "a?", answer: [log.file], sections: [section("findings", "b", [])] }));
export const page = (log: Log): Promise<string> => writeHtml(own.run(log), {});
export default own;
`;
