// The public door, grouped by stage.
//
//     log  ->  sheet  ->  sand models  ->  trial curves  ->  findings, charts  ->  page
//     read     units      plain typed       fitted to this    words and            html, markdown,
//     check    formulas   functions         founder's data    Vega-Lite specs      csv, json
//
// Nothing here reaches node:*, so that a page can bundle it. Sheets and trial curves are still to come.

// Charts
export type { Chart, ChartTable, VegaLiteSpec } from "./chart/chart.ts";
export { type DoubtBarsInput, doubtBars } from "./chart/doubt-bars.ts";
export { grainCurve } from "./chart/grain-curve.ts";
export type { GrainCurveInput } from "./chart/grain-input.ts";
export { numberStrip } from "./chart/number-strip.ts";
export { type RetainedBarsInput, retainedBars } from "./chart/retained-bars.ts";
export type { NumberStripInput } from "./chart/strip-input.ts";
export { chartSvg } from "./chart/svg.ts";
// Findings: what the numbers say
export { dryingHeat, silicaDust } from "./finding/cautions.ts";
export { compareSands, type SandComparison } from "./finding/compare-sands.ts";
export type { Caution, Finding, Tone } from "./finding/finding.ts";
export { noBand } from "./finding/grain-messages.ts";
export { figureText, sandFindings, worthBuying } from "./finding/sand-findings.ts";
export { type SandReport, sandReports } from "./finding/sand-report.ts";
// What can be wrong, and where
export {
  type Checked,
  hasError,
  type Issue,
  issueText,
  Misuse,
  type Place,
  placeText,
  type Severity,
} from "./issue.ts";
// The log
export { beginLog } from "./log/begin.ts";
export { filesNamedIn } from "./log/files-named.ts";
export { type ReadLogOptions, readLog } from "./log/read-log.ts";
export { sievedPortion, sievingBalance } from "./log/sieved-portion.ts";
export type { Log, Measured, RetainedEntry, Sand, Scale, SieveSet, Sieving } from "./log/types.ts";
// Plain numbers
export { linearAt, logLinearAt } from "./numbers/interpolate.ts";
export { monotoneCubic } from "./numbers/monotone-cubic.ts";
export { quantile } from "./numbers/quantile.ts";
export { sum, weightedMean } from "./numbers/sum.ts";
export { mean, median, pooledStandardDeviation, sampleStandardDeviation } from "./numbers/summary.ts";
// Pages and notebooks
export type {
  Block,
  Inline,
  KeyFigure,
  Page,
  PageSpec,
  Section,
  TableCell,
  TableColumn,
  Text,
} from "./page/blocks.ts";
export { writeCsv } from "./page/csv.ts";
export { grainCharts } from "./page/grain-charts.ts";
export { grainData } from "./page/grain-data.ts";
export { grainResult } from "./page/grain-result.ts";
export { writeHtml } from "./page/html.ts";
export { writeJson } from "./page/json.ts";
export { writeMarkdown } from "./page/markdown.ts";
export { type Notebook, notebook } from "./page/notebook.ts";
// Quantities: a number with its unit and its ±
export { combine, lift } from "./quantity/combine.ts";
export { type Figure, figure, type Share } from "./quantity/figure.ts";
export { type PrintedFigure, printFigure, printNumber, roundTo } from "./quantity/print.ts";
export type { PlusMinusMeaning, Quantity } from "./quantity/quantity.ts";
export { convertQuantity, readQuantity } from "./quantity/read-quantity.ts";
export { readUnit, unitNamed } from "./quantity/read-unit.ts";
export type { Shape, Source, SourceKind } from "./quantity/source.ts";
export type { Spread } from "./quantity/spread.ts";
export { type SpreadSpec, spread } from "./quantity/spread-of.ts";
export { convert, type Unit } from "./quantity/unit.ts";
// Sand: the grading
export { angularityClass, angularityCoefficient } from "./sand/angularity.ts";
// Sand: sieves and fineness
export { averageGrainSizeUm } from "./sand/average-grain-size.ts";
export { type Band, decides } from "./sand/band.ts";
export { bands } from "./sand/bands.ts";
export { concentration } from "./sand/concentration.ts";
export { gradingCurve, passingAtPercent, sizeAtPassing } from "./sand/curve.ts";
export {
  type FinenessFigure,
  type FinenessQuestion,
  finenessFigure,
  gradingOfPortion,
  type MissingDoubt,
  type SievedPortion,
} from "./sand/fineness-figure.ts";
export { roughFineness, roughSizeUm } from "./sand/fineness-size.ts";
export { fines } from "./sand/fines.ts";
export { kurtosisClass, skewnessClass, sortingClass } from "./sand/folk-ward.ts";
export { gapGraded } from "./sand/gap-graded.ts";
export { type Fraction, type Grading, gradingOf } from "./sand/grading.ts";
export { type GrainFineness, grainFineness } from "./sand/grain-fineness.ts";
export { gradingStatistics, grainStatistics } from "./sand/grain-statistics.ts";
// Sand: practice of sieving and washing
export { lossIntoPan, massBalance } from "./sand/mass-balance.ts";
export { type Bond, bondNames, type Metal, metalNamed, metalNames } from "./sand/metals.ts";
export { afsClasses } from "./sand/multipliers.ts";
export { type NextSieve, nextSieves } from "./sand/next-sieve.ts";
export { overload } from "./sand/overload.ts";
export { portionAdvice, smallestPortionG } from "./sand/portion.ts";
export { readGrading } from "./sand/read-grading.ts";
export { pooledRepeatScatter, repeatScatter } from "./sand/repeats.ts";
export { screens } from "./sand/screens.ts";
export { settlingCutUm, settlingSeconds, stokesReynolds } from "./sand/settling.ts";
export type { Sieve } from "./sand/sieve.ts";
export { readSieveLabel } from "./sand/sieve-label.ts";
export { type SieveStack, sieveStack } from "./sand/sieve-stack.ts";
export { sizeGrade } from "./sand/size-grades.ts";
export { theoreticalSurfaceCm2G } from "./sand/surface.ts";
export { uniformity } from "./sand/uniformity.ts";
export { waterDensityKgM3, waterViscosityMPaS } from "./sand/water.ts";
