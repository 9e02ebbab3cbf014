// Every message there is, by the files that define them.

import * as blendCautions from "../finding/blend-cautions.ts";
import * as blendMessages from "../finding/blend-messages.ts";
import * as castingCautions from "../finding/casting-cautions.ts";
import * as castingMessages from "../finding/casting-messages.ts";
import * as castingWords from "../finding/casting-words.ts";
import * as cautions from "../finding/cautions.ts";
import * as compareMessages from "../finding/compare-messages.ts";
import * as comparisonMessages from "../finding/comparison-messages.ts";
import * as diaryMessages from "../finding/diary-messages.ts";
import * as diaryPhrases from "../finding/diary-phrases.ts";
import type { Caution } from "../finding/finding.ts";
import * as grainMessages from "../finding/grain-messages.ts";
import * as guideFirstStages from "../finding/guide-first-stages.ts";
import * as guideHeapStages from "../finding/guide-heap-stages.ts";
import * as guideMessages from "../finding/guide-messages.ts";
import * as heapCautions from "../finding/heap-cautions.ts";
import * as heapMessages from "../finding/heap-messages.ts";
import * as heatCautions from "../finding/heat-cautions.ts";
import * as heatMessages from "../finding/heat-messages.ts";
import * as keptOutMessages from "../finding/kept-out-messages.ts";
import * as metalCautions from "../finding/metal-cautions.ts";
import * as mullingCautions from "../finding/mulling-cautions.ts";
import * as mullingMessages from "../finding/mulling-messages.ts";
import * as outsideMeans from "../finding/outside-means.ts";
import * as recipeCautions from "../finding/recipe-cautions.ts";
import * as recipeMessages from "../finding/recipe-messages.ts";
import * as sheetCautions from "../finding/sheet-cautions.ts";
import * as sheetMessages from "../finding/sheet-messages.ts";
import * as standingMessages from "../finding/standing-messages.ts";
import * as trialCautions from "../finding/trial-cautions.ts";
import * as trialMessages from "../finding/trial-messages.ts";
import * as trialReachMessages from "../finding/trial-reach-messages.ts";
import * as trialRigMessages from "../finding/trial-rig-messages.ts";
import * as trialShapeMessages from "../finding/trial-shape-messages.ts";
import * as waterMessages from "../finding/water-messages.ts";
import * as weatherMessages from "../finding/weather-messages.ts";
import { invariant } from "../issue.ts";
import * as agreementComplaints from "../log/complaints-agreement.ts";
import * as batchComplaints from "../log/complaints-batch.ts";
import * as castingComplaints from "../log/complaints-casting.ts";
import * as csvComplaints from "../log/complaints-csv.ts";
import * as diaryComplaints from "../log/complaints-diary.ts";
import * as diskComplaints from "../log/complaints-disk.ts";
import * as editComplaints from "../log/complaints-edit.ts";
import * as experimentComplaints from "../log/complaints-experiment.ts";
import * as fieldComplaints from "../log/complaints-field.ts";
import * as figureComplaints from "../log/complaints-figure.ts";
import * as fileComplaints from "../log/complaints-file.ts";
import * as heapComplaints from "../log/complaints-heap.ts";
import * as recipeComplaints from "../log/complaints-recipe.ts";
import * as saveComplaints from "../log/complaints-save.ts";
import * as seasonComplaints from "../log/complaints-season.ts";
import * as sheetComplaints from "../log/complaints-sheet.ts";
import * as sievingComplaints from "../log/complaints-sieving.ts";
import * as testComplaints from "../log/complaints-test.ts";
import * as yamlComplaints from "../log/complaints-yaml.ts";
import * as specimenOf from "../log/specimen-of.ts";
import type { Message } from "../message.ts";
import * as amount from "../quantity/amount.ts";
import * as dateMessages from "../quantity/date-messages.ts";
import * as readMessages from "../quantity/read-messages.ts";
import * as bondState from "../sand/bond-state.ts";
import * as compactability from "../sand/compactability.ts";
import * as compression from "../sand/compression.ts";
import * as dryingStop from "../sand/drying-stop.ts";
import * as equilibriumMoisture from "../sand/equilibrium-moisture.ts";
import * as finenessIssues from "../sand/fineness-issues.ts";
import * as finenessSize from "../sand/fineness-size.ts";
import * as gradingIssues from "../sand/grading-issues.ts";
import * as grainIssues from "../sand/grain-issues.ts";
import * as jar from "../sand/jar.ts";
import * as moistureIssues from "../sand/moisture-issues.ts";
import * as mullingEfficiency from "../sand/mulling-efficiency.ts";
import * as permeabilityCorrections from "../sand/permeability-corrections.ts";
import * as permeabilityIssues from "../sand/permeability-issues.ts";
import * as shear from "../sand/shear.ts";
import * as sieveLabelIssues from "../sand/sieve-label-issues.ts";
import * as specimen from "../sand/specimen.ts";
import * as typicalIssues from "../sand/typical-issues.ts";
import * as wash from "../sand/wash.ts";
import * as waterSensitivity from "../sand/water-sensitivity.ts";
import * as weighingIssues from "../sand/weighing-issues.ts";
import * as formulaIssues from "../sheet/formula-issues.ts";
import * as logSheetIssues from "../sheet/log-sheet-issues.ts";
import * as sheetIssues from "../sheet/sheet-issues.ts";
import * as furniture from "./furniture.ts";

export type AnyMessage = Message<readonly never[], unknown>;

const files: readonly object[] = [
  amount,
  dateMessages,
  readMessages,
  bondState,
  compactability,
  compression,
  dryingStop,
  equilibriumMoisture,
  finenessIssues,
  finenessSize,
  gradingIssues,
  grainIssues,
  jar,
  moistureIssues,
  mullingEfficiency,
  permeabilityCorrections,
  permeabilityIssues,
  shear,
  sieveLabelIssues,
  specimen,
  typicalIssues,
  wash,
  waterSensitivity,
  weighingIssues,
  agreementComplaints,
  batchComplaints,
  castingComplaints,
  csvComplaints,
  diaryComplaints,
  diskComplaints,
  saveComplaints,
  editComplaints,
  experimentComplaints,
  fieldComplaints,
  figureComplaints,
  fileComplaints,
  heapComplaints,
  recipeComplaints,
  seasonComplaints,
  sheetComplaints,
  sievingComplaints,
  testComplaints,
  yamlComplaints,
  specimenOf,
  formulaIssues,
  logSheetIssues,
  sheetIssues,
  blendCautions,
  blendMessages,
  castingCautions,
  castingMessages,
  castingWords,
  cautions,
  compareMessages,
  comparisonMessages,
  diaryMessages,
  diaryPhrases,
  grainMessages,
  guideFirstStages,
  guideHeapStages,
  guideMessages,
  heapCautions,
  heapMessages,
  heatCautions,
  heatMessages,
  keptOutMessages,
  metalCautions,
  mullingCautions,
  mullingMessages,
  outsideMeans,
  recipeCautions,
  recipeMessages,
  sheetCautions,
  sheetMessages,
  standingMessages,
  trialCautions,
  trialMessages,
  trialReachMessages,
  trialRigMessages,
  trialShapeMessages,
  waterMessages,
  weatherMessages,
  furniture,
];

/** What the files hold, and what stands together in one object there. */
const held: readonly unknown[] = files
  .flatMap((file) => Object.values(file))
  .flatMap((value) => (isPlain(value) ? [value, ...Object.values(value)] : [value]));

/** All issues, findings and phrases. */
export const allMessages: readonly AnyMessage[] = held.filter(isMessage);

const byCode: ReadonlyMap<string, AnyMessage> = new Map(allMessages.map((one) => [one.code, one]));

export function findMessage(code: string): AnyMessage | undefined {
  return byCode.get(code);
}

/** Throws Misuse for a code that there is not. */
export function messageNamed(code: string): AnyMessage {
  const found = findMessage(code);
  invariant(found !== undefined, `no message has the code "${code}"`);
  return found;
}

/** All cautions: they are said with nothing. */
export const allCautions: readonly Caution[] = held.filter(isCaution);

function isPlain(value: unknown): value is object {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isMessage(value: unknown): value is AnyMessage {
  return typeof value === "function" && "kind" in value && "code" in value;
}

function isCaution(value: unknown): value is Caution {
  return isPlain(value) && "defers" in value && "trigger" in value && "code" in value;
}
