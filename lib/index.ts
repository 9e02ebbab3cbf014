// The public door, grouped by stage.
//
//     log  ->  sheet  ->  sand models  ->  trial curves  ->  findings, charts  ->  page
//     read     units      plain typed       fitted to this    words and            html, markdown,
//     check    formulas   functions         founder's data    Vega-Lite specs      csv, json
//
// Nothing here reaches node:*, so that a page can bundle it.

// Charts
export type { Words } from "./catalogue/in-words.ts";
export type { AxisName } from "./chart/axis-words.ts";
export { blendChart } from "./chart/blend-chart.ts";
export { chancePanel } from "./chart/chance-panel.ts";
export type { Chart, ChartTable, VegaLiteSpec } from "./chart/chart.ts";
export { controlChart } from "./chart/control-chart.ts";
export type { ControlInput } from "./chart/control-input.ts";
export { differencePlot } from "./chart/difference-plot.ts";
export { type DoubtBarsInput, doubtBars } from "./chart/doubt-bars.ts";
export { grainCurve } from "./chart/grain-curve.ts";
export type { GrainCurveInput } from "./chart/grain-input.ts";
export { mullingChart } from "./chart/mulling-chart.ts";
export { nextTrialChart } from "./chart/next-trial-chart.ts";
export { numberStrip } from "./chart/number-strip.ts";
export { type CurveToDraw, type PointsChartInput, pointsChart } from "./chart/points-chart.ts";
export { responsePanels } from "./chart/response-panels.ts";
export { type RetainedBarsInput, retainedBars } from "./chart/retained-bars.ts";
export { seasonChart } from "./chart/season-chart.ts";
export { sheetNames } from "./chart/sheet-names.ts";
export { sheetPlot } from "./chart/sheet-plot.ts";
export { squeezeChart } from "./chart/squeeze-chart.ts";
export type { NumberStripInput } from "./chart/strip-input.ts";
export { surfaceChart } from "./chart/surface-chart.ts";
export type { SurfaceChartInput } from "./chart/surface-input.ts";
export { chartSvg } from "./chart/svg.ts";
export {
  permeabilityByClayChart,
  permeabilityByFinenessChart,
  permeabilityByMoistureChart,
  strengthByClayChart,
  temperChart,
} from "./chart/typical-charts.ts";
export { typicalCurveChart } from "./chart/typical-curve-chart.ts";
export { blendingDust, turningTub } from "./finding/blend-cautions.ts";
export { blendFindings, blendNumberText, blendText } from "./finding/blend-findings.ts";
export { type BlendReport, blendReport, type NoBlend } from "./finding/blend-report.ts";
export { type BondFigures, bondFigures } from "./finding/bond-figures.ts";
export { castingCautions } from "./finding/casting-cautions.ts";
export { castingFindings } from "./finding/casting-findings.ts";
export { type CastingPrint, castingInOwnUnits } from "./finding/casting-print.ts";
export { dryingHeat, silicaDust } from "./finding/cautions.ts";
export { byFineness, manySands, neighbourFindings, neighbours } from "./finding/compare-neighbours.ts";
export { compareSands, type SandComparison } from "./finding/compare-sands.ts";
// Findings: what the numbers say
export { blockFinding, comparisonFinding } from "./finding/comparison-findings.ts";
export { diaryCautions } from "./finding/diary-cautions.ts";
export { diaryFindings } from "./finding/diary-findings.ts";
export type { DiaryPrint } from "./finding/diary-print.ts";
export { signalSources } from "./finding/diary-signals.ts";
export type { Caution, Finding, Tone } from "./finding/finding.ts";
export { noBand } from "./finding/grain-messages.ts";
export { grainNextSteps } from "./finding/grain-next.ts";
export { type GuideReport, guideReport } from "./finding/guide-held.ts";
export { heapCautions } from "./finding/heap-cautions.ts";
export { type HeapReport, heapReport } from "./finding/heap-report.ts";
export { type HeatFigures, heatFigures } from "./finding/heat-figures.ts";
export { keptOutAnswer } from "./finding/kept-out-findings.ts";
export { metalCautions } from "./finding/metal-cautions.ts";
export { mulledAgainstReference } from "./finding/mulled-reference.ts";
export { mullingCautions } from "./finding/mulling-cautions.ts";
export { minutesText, mullingFindings } from "./finding/mulling-findings.ts";
export { type MullingReport, mullingReport } from "./finding/mulling-report.ts";
export { type NextRecipe, nextRecipe } from "./finding/next-recipe.ts";
export { finding } from "./finding/own-finding.ts";
export { recipeCautions } from "./finding/recipe-cautions.ts";
export { type MassWords, recipeFindings } from "./finding/recipe-findings.ts";
export { type RecipeLack, type RecipePlan, recipePlan } from "./finding/recipe-plan.ts";
export { figureText, sandFindings, worthBuying } from "./finding/sand-findings.ts";
export { type SandReport, sandReports } from "./finding/sand-report.ts";
export { saidTogether, sandsFindings } from "./finding/sands-findings.ts";
export { ownSheets } from "./finding/sheet-cautions.ts";
export { sheetFindings } from "./finding/sheet-findings.ts";
export { type SheetFit, sheetFit } from "./finding/sheet-fit.ts";
export type { Standing } from "./finding/standing-groups.ts";
export { batchStandings, type Standings } from "./finding/standings.ts";
export { axisName, axisUnit } from "./finding/trial-axis.ts";
export { trialCautions } from "./finding/trial-cautions.ts";
export { trialFindings } from "./finding/trial-findings.ts";
export { rigFindings } from "./finding/trial-rig-findings.ts";
export { type WaterNow, waterNow } from "./finding/water-now.ts";
export { type WeatherWater, weatherWater } from "./finding/weather-water.ts";
export { type WriteUp, writeUpOf } from "./finding/write-up-record.ts";
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
export type { Aim, Batch, Rig, TestName, TestReading, TrialAxis } from "./log/batch.ts";
export { type BatchColumns, batchColumns } from "./log/batch-columns.ts";
export { type BatchFigure, type BatchFigures, batchFigures } from "./log/batch-figures.ts";
export { type Beginning, beginLog, beginnings } from "./log/begin.ts";
export type { CastingQuestion, LoggedCasting } from "./log/casting-record.ts";
export { editLog } from "./log/edit.ts";
export type { Edited, LogEdit, LogPath } from "./log/edit-types.ts";
export type { ExperimentRecord, LoggedLine } from "./log/experiment-record.ts";
export { filesNamedIn } from "./log/files-named.ts";
export { fingerprint } from "./log/fingerprint.ts";
export { type HeapFigure, type HeapKg, heapFigure } from "./log/heap.ts";
export type { HeapEvent } from "./log/heap-events.ts";
export type {
  BlendAim,
  HeapRecord,
  LoggedBlend,
  LoggedFlask,
  LoggedMuller,
  LoggedPlan,
  LoggedPrices,
  LoggedRecipe,
  LoggedWeather,
  MullingTrial,
} from "./log/heap-record.ts";
export type { BasedShare, HeapState, MeasuredState, ShareBasis } from "./log/heap-state.ts";
export { logOutline } from "./log/outline.ts";
export type { OutlineNode } from "./log/outline-node.ts";
export { type ReadLogOptions, readLog } from "./log/read-log.ts";
export { sievedPortion, sievingBalance } from "./log/sieved-portion.ts";
export type { Log, LogText, Measured, RetainedEntry, Sand, Scale, SieveSet, Sieving } from "./log/types.ts";
// Plain numbers: fits and comparisons
export { effectiveCount, lagOneAutocorrelation } from "./numbers/autocorrelation.ts";
export { changePoint } from "./numbers/change-point.ts";
export { fitCurve } from "./numbers/curve-fit.ts";
export { cusum } from "./numbers/cusum.ts";
export { ewma } from "./numbers/ewma.ts";
export { exactShare } from "./numbers/exact-share.ts";
export { type FisherExact, type FourCounts, fisherExact } from "./numbers/fisher-exact.ts";
export { holm } from "./numbers/holm.ts";
export { individualsChart } from "./numbers/individuals-chart.ts";
export { informedFit } from "./numbers/informed-fit.ts";
// Plain numbers
export { linearAt, logLinearAt } from "./numbers/interpolate.ts";
export { fitLinear, predictAt } from "./numbers/least-squares.ts";
export { limitDoubt } from "./numbers/limit-doubt.ts";
export { type MannWhitneyExact, mannWhitneyExact } from "./numbers/mann-whitney-exact.ts";
export { monotoneCubic } from "./numbers/monotone-cubic.ts";
export { nonNegativeLeastSquares } from "./numbers/non-negative.ts";
export { parabolaOptimum, turningPoint } from "./numbers/parabola-optimum.ts";
export { fitPolynomial } from "./numbers/polynomial-fit.ts";
export { fitQuadraticSurface } from "./numbers/quadratic-surface.ts";
export { quantile } from "./numbers/quantile.ts";
export { spearman } from "./numbers/spearman.ts";
export { stationaryPoint } from "./numbers/stationary-point.ts";
export { sum, weightedMean } from "./numbers/sum.ts";
export { mean, median, pooledStandardDeviation, sampleStandardDeviation } from "./numbers/summary.ts";
export { welch, welchOf } from "./numbers/welch.ts";
export { blendNext, blendResult } from "./page/blend-result.ts";
export { type BlockComparison, blockComparisons } from "./page/block-comparisons.ts";
// Pages and notebooks
export type {
  Block,
  Inline,
  KeyFigure,
  Page,
  PageSpec,
  Section,
  SectionRole,
  TableCell,
  TableColumn,
  Text,
} from "./page/blocks.ts";
export { castingCauses } from "./page/casting-cause-tables.ts";
export { castingCharts } from "./page/casting-charts.ts";
export { castingData } from "./page/casting-data.ts";
export { castingPrintIn } from "./page/casting-print.ts";
export { castingQuestions } from "./page/casting-result.ts";
export { type ColumnTableInput, columnTable } from "./page/column-table.ts";
export { writeCsv } from "./page/csv.ts";
export { diaryCharts } from "./page/diary-charts.ts";
export { diaryData } from "./page/diary-data.ts";
export { diaryAnswer, diaryFindingBlocks } from "./page/diary-findings.ts";
export { diaryPrintIn } from "./page/diary-print.ts";
export { diaryResult } from "./page/diary-result.ts";
export { grainCharts } from "./page/grain-charts.ts";
export { grainData } from "./page/grain-data.ts";
export { grainResult } from "./page/grain-result.ts";
export { guideStage, guideStageDone, guideStageTold, guideTable } from "./page/guide-stages.ts";
export { heapData } from "./page/heap-data.ts";
export { heapFindings } from "./page/heap-findings.ts";
export { heapSeasonSection } from "./page/heap-season.ts";
export { heatAndBurnOut, heatCautions } from "./page/heat-burn-out.ts";
export { heatFindings } from "./page/heat-findings.ts";
export { writeHtml } from "./page/html.ts";
export { inLanguage, type PageInLanguage } from "./page/in-language.ts";
export { writeJson } from "./page/json.ts";
export { writeMarkdown } from "./page/markdown.ts";
export { mullingData } from "./page/mulling-data.ts";
export { mullingNext } from "./page/mulling-next.ts";
export { mullingResult, strengthText } from "./page/mulling-result.ts";
export { type Notebook, notebook } from "./page/notebook.ts";
export { recipeCard } from "./page/recipe-card.ts";
export { recipeComesTo } from "./page/recipe-comes-to.ts";
export { massWords, recipeUnits } from "./page/recipe-parts.ts";
export { recipeShopping } from "./page/recipe-shopping.ts";
export { recipeWeights } from "./page/recipe-weights.ts";
export { type SectionPart, section } from "./page/section.ts";
export { sheetCharts } from "./page/sheet-charts.ts";
export { sheetFunctions } from "./page/sheet-functions.ts";
export { sheetSection } from "./page/sheet-section.ts";
export { footText, sheetTable } from "./page/sheet-table.ts";
export {
  figureInShownUnit,
  inShownUnit,
  type ShownUnits,
  shownUnit,
  shownUnits,
  sievedUnits,
  type UnitSystem,
} from "./page/shown-units.ts";
export { findingBlocks } from "./page/trial-blocks.ts";
export { trialBond } from "./page/trial-bond.ts";
export { handChart, trialCharts } from "./page/trial-charts.ts";
export { trialData } from "./page/trial-data.ts";
export { printTestIn } from "./page/trial-print.ts";
export { trialResult } from "./page/trial-result.ts";
export { recipeShares } from "./page/trial-shares.ts";
export { trialStanding } from "./page/trial-standing.ts";
export { nextBatchWords, waterFindings } from "./page/trial-water.ts";
export { writeVegaLite } from "./page/vega-lite.ts";
export { textWithCode } from "./page/visible.ts";
export { weatherFindings } from "./page/weather-findings.ts";
export { waterForTomorrow } from "./page/weather-water.ts";
export { writeUpData } from "./page/write-up-data.ts";
export { type WriteUpFindings, writeUpFindings } from "./page/write-up-findings.ts";
export { writeUpHead } from "./page/write-up-head.ts";
export { withPointers } from "./page/write-up-references.ts";
export { writeUpResult } from "./page/write-up-result.ts";
// Quantities: a number with its unit and its ±
export { combine, lift } from "./quantity/combine.ts";
export { type Figure, type FigureNumbers, figure } from "./quantity/figure.ts";
export type { ColumnValue, FigureColumn } from "./quantity/figure-column.ts";
export type { Share } from "./quantity/figure-shares.ts";
export { type PrintedFigure, printFigure, printNumber, roundTo } from "./quantity/print.ts";
export type { PlusMinusMeaning, Quantity } from "./quantity/quantity.ts";
export { convertQuantity, readQuantity } from "./quantity/read-quantity.ts";
export { readUnit, unitNamed } from "./quantity/read-unit.ts";
export type { Shape, Source, SourceKind } from "./quantity/source.ts";
export type { Spread } from "./quantity/spread.ts";
export { type SpreadSpec, spread } from "./quantity/spread-of.ts";
export { convert, type Unit } from "./quantity/unit.ts";
// Sand: usual ranges and typical curves
export { aimsFromBands } from "./sand/aims-from-bands.ts";
// Sand: home rigs to trade numbers
export { airViscosityUPaS, permeabilityAt20 } from "./sand/air.ts";
// Sand: weather and heat
export { airingHours, dryingHours } from "./sand/airing.ts";
export { everyBand } from "./sand/all-bands.ts";
// Sand: the grading
export { angularityClass, angularityCoefficient } from "./sand/angularity.ts";
// Sand: sieves and fineness
export { averageGrainSize, averageGrainSizeUm } from "./sand/average-grain-size.ts";
export { type Band, decides } from "./sand/band.ts";
export { bands } from "./sand/bands.ts";
export { type BlendPair, blended, blendPairs, blendShares } from "./sand/blend.ts";
export { mostWaterPerKgMetal, waterBoiledOffKg } from "./sand/boiled-off.ts";
// Sand: recipe, water, bond
export { bondState } from "./sand/bond-state.ts";
export {
  bondLostC,
  burntSandPerKgMetal,
  burntShare,
  clayBurntPerKgMetal,
  sandToMetal,
  wearFactorDoseKg,
} from "./sand/burn-out.ts";
export type { FaultRow, SandCause } from "./sand/casting-fault.ts";
export {
  type CastingFault,
  castingFaultNamed,
  castingFaultRows,
  castingFaults,
} from "./sand/casting-faults.ts";
export {
  compactabilityByWeighingPercent,
  compactabilityPercent,
  pressedCompactabilityPercent,
} from "./sand/compactability.ts";
export { compressionKPa, heightToDiameterIssues, loadForKPa } from "./sand/compression.ts";
export { concentration } from "./sand/concentration.ts";
export { gradingCurve, passingAtPercent, sizeAtPassing } from "./sand/curve.ts";
export { dryingFront } from "./sand/drying-front.ts";
export { dryEnough } from "./sand/drying-stop.ts";
export { equilibriumCompactabilityPercent, equilibriumMoisturePercent } from "./sand/equilibrium-moisture.ts";
export { openWaterKgM2H, outdoorWaterCmDay, stillWaterKgM2H } from "./sand/evaporation.ts";
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
export { type FirstDose, firstDoseByCompactabilityKg, firstDoseKg } from "./sand/first-dose.ts";
export { kurtosisClass, skewnessClass, sortingClass } from "./sand/folk-ward.ts";
export { castingModulusMm, freezingByShape, freezingConstants, freezingSeconds } from "./sand/freezing.ts";
export { gapGraded } from "./sand/gap-graded.ts";
export { type Fraction, type Grading, gradingOf } from "./sand/grading.ts";
export { type GrainFineness, grainFineness } from "./sand/grain-fineness.ts";
export { gradingStatistics, grainStatistics } from "./sand/grain-statistics.ts";
export { compactedGreenStrengthPercent, moistureGreenStrengthPercent } from "./sand/green-strength-bond.ts";
export { type HeapContents, heapAfter, heapShares } from "./sand/heap-balance.ts";
export { heapCycle } from "./sand/heap-cycle.ts";
export { heapMassKg } from "./sand/heap-mass.ts";
export { clayAfterCyclesKg, type HeapSteadyState, heapSteadyState } from "./sand/heap-steady-state.ts";
export {
  behindGapC,
  contactC,
  heatedDepthMm,
  heatIntoSandKJM2,
  sandTemperatureC,
} from "./sand/heated-depth.ts";
export { sandHeat } from "./sand/hot-sand.ts";
export {
  latentHeatKJKg,
  pressureAtPa,
  vapourPressureByWetBulbPa,
  vapourPressurePa,
  wetBulbCelsius,
  windAt2M,
} from "./sand/humid-air.ts";
export { jarClayPercent } from "./sand/jar.ts";
export { liveClayByBondPercent } from "./sand/live-clay-by-bond.ts";
// Sand: practice of sieving and washing
export { lossIntoPan, massBalance } from "./sand/mass-balance.ts";
export { type HeapMend, mendHeap } from "./sand/mend-heap.ts";
export { type Bond, bondNames, type Metal, metalNamed, metalNames } from "./sand/metals.ts";
export {
  clayOfDryMixToSandPercent,
  clayOfSandToDryMixPercent,
  clayToWeighKg,
  type MixShares,
  mixShares,
} from "./sand/mix-shares.ts";
export {
  dampToDryPercent,
  dryToDampPercent,
  moistureOfDampPercent,
  moistureStepPercent,
} from "./sand/moisture.ts";
export { moistureAfter, temperTonight } from "./sand/moisture-tomorrow.ts";
export { type MetalHeat, metalHeats, type SandHeat, sandHeats } from "./sand/moulding-heat.ts";
export {
  carriedRoundRpm,
  mullerLoads,
  panRpm,
  reductionOf,
  rimSpeedMS,
  sandBedMm,
  trackSharePercent,
  wheelPasses,
} from "./sand/muller-arithmetic.ts";
export { mullingEfficiencyPercent } from "./sand/mulling-efficiency.ts";
export { mulledStrengthKPa, mullingMinutes } from "./sand/mulling-time.ts";
export { afsClasses } from "./sand/multipliers.ts";
export { type NextSieve, nextSieves } from "./sand/next-sieve.ts";
export { overload } from "./sand/overload.ts";
export { permeabilityConstant, permeabilityFromGd, permeabilityNumber } from "./sand/permeability.ts";
export {
  specimenSeconds,
  specimenWaterMm,
  withoutLeak,
} from "./sand/permeability-corrections.ts";
export { kozenyCarmanNumber, permeabilityModel } from "./sand/permeability-model.ts";
export {
  aspiratorPermeability,
  bleedingVesselPermeability,
  fallingColumnPermeability,
  floatingCanMm,
  movingLevelsCm2,
} from "./sand/permeability-rigs.ts";
export { plateHeatedDepths } from "./sand/plate-cooling.ts";
export { portionAdvice, smallestPortionG } from "./sand/portion.ts";
export { dropForMm, rammerEnergyJ, rammers, rammingJKg } from "./sand/rammer.ts";
export { readGrading } from "./sand/read-grading.ts";
export { type Purchase, purchaseOf } from "./sand/recipe-cost.ts";
export { inBuckets, recipeLoads } from "./sand/recipe-loads.ts";
export {
  type RecipeBasis,
  type RecipeMasses,
  type RecipeShares,
  recipeBases,
  recipeMassesKg,
} from "./sand/recipe-masses.ts";
export { type WaterSplit, waterSplit } from "./sand/recipe-water.ts";
export { pooledRepeatScatter, repeatScatter } from "./sand/repeats.ts";
export { saturationPressurePa } from "./sand/saturation-pressure.ts";
export { screens } from "./sand/screens.ts";
export { forecastSeason, poursToFloor, type Season, type SeasonPlan } from "./sand/season.ts";
export { settlingCutUm, settlingSeconds, stokesReynolds } from "./sand/settling.ts";
export { shearKPa } from "./sand/shear.ts";
export type { Sieve } from "./sand/sieve.ts";
export { readSieveLabel } from "./sand/sieve-label.ts";
export { type SieveStack, sieveStack } from "./sand/sieve-stack.ts";
export { sizeGrade } from "./sand/size-grades.ts";
export { airPorosityPercent, porosityPercent, specimenDensityGCm3 } from "./sand/specimen.ts";
export { splittingKPa } from "./sand/splitting.ts";
export { squeezeSteps, squeezeTable } from "./sand/squeeze.ts";
export { theoreticalSurface, theoreticalSurfaceCm2G } from "./sand/surface.ts";
export { temperMoisture } from "./sand/temper-moisture.ts";
export { typicalPermeability } from "./sand/typical-permeability.ts";
export { typicalStrength } from "./sand/typical-strength.ts";
export type { TypicalValue } from "./sand/typical-value.ts";
export { uniformity } from "./sand/uniformity.ts";
export { clayByWashPercent, washPlan } from "./sand/wash.ts";
export { waterDensityKgM3, waterViscosityMPaS } from "./sand/water.ts";
export { waterLostKg } from "./sand/water-lost.ts";
export { waterPerClay } from "./sand/water-per-clay.ts";
export { waterSensitivity } from "./sand/water-sensitivity.ts";
export { waterToAddKg, waterToLoseKg } from "./sand/water-to-add.ts";
// Sheets: named columns, formulas, a foot
export { logSheets } from "./sheet/log-sheets.ts";
export {
  type Cell,
  type CellFault,
  type CellSpec,
  type ColumnSpec,
  type FootFigure,
  type Sheet,
  type SheetChart,
  type SheetColumn,
  type SheetContext,
  type SheetScale,
  type SheetSpec,
  type SheetWhere,
  sheet,
} from "./sheet/sheet.ts";
// Trials: curves, aims, the next batch
export { type AimResult, aimFor } from "./trial/aim.ts";
export { type BeforeAfter, beforeAfter, conditionsTold } from "./trial/before-after.ts";
export { blockDifference } from "./trial/block-difference.ts";
export type { CastPour } from "./trial/cast-pours.ts";
export { confounding, randomOrder, uncheckedCompanions } from "./trial/confounding.ts";
export { type ControlReport, controlReport } from "./trial/control-report.ts";
export { type Diary, type DiarySeries, type DiaryValue, diaryOf } from "./trial/control-series.ts";
export { type ColumnCurve, curveThrough } from "./trial/curve-through.ts";
export type { FaultAnswer } from "./trial/fault-questions.ts";
export { type FaultsAndSand, faultsAndSand } from "./trial/faults-and-sand.ts";
export { lackOfFit } from "./trial/lack-of-fit.ts";
export {
  blockConditions,
  type ConditionDifference,
  type Conditions,
  knownConditions,
  unlikeConditions,
} from "./trial/like-conditions.ts";
export { type MullingComparison, mullingComparison } from "./trial/mulling-comparison.ts";
export { type MullingCurve, type MullingTime, mullingCurve } from "./trial/mulling-curve.ts";
export { nextTrial } from "./trial/next-trial.ts";
export { type OwnBurnOut, ownBurnOut } from "./trial/own-burn-out.ts";
export { publishedSlope } from "./trial/published-slopes.ts";
export { type ResponseCurve, responseCurve } from "./trial/response-curve.ts";
export { type ResponseSurface, responseSurface } from "./trial/response-surface.ts";
export { freshDays, type SandThatDay, sandThatDay } from "./trial/sand-that-day.ts";
export type { TrialProperty } from "./trial/trial-property.ts";
export { type TrialReport, trialReport } from "./trial/trial-report.ts";
export { outlyingRow } from "./trial/wild-batch.ts";
