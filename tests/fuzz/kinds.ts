// The kinds of cases, each with its cases and what must hold of them.

import type fc from "fast-check";
import type { Notebook } from "../../lib/index.ts";
import type { Step } from "./claim.ts";
import { checkedFolder } from "./holds-bytes.ts";
import { type FormulaTally, formulaHolds, plainHolds } from "./holds-formula.ts";
import { logProperty, noTally, type Often } from "./holds-log.ts";
import { quantityHolds } from "./holds-quantity.ts";
import { sheetHolds } from "./holds-sheet.ts";
import { sievesHold } from "./holds-sieves.ts";
import { logBytes, otherLineEnds } from "./make-bytes.ts";
import { anyTable, csvText } from "./make-csv.ts";
import { formulaText, plainFormula } from "./make-formula.ts";
import { grammarLog, logName, wordsLog } from "./make-log.ts";
import { mutatedLog } from "./make-mutated.ts";
import { quantityText } from "./make-quantity.ts";
import { sieveLabel, sieveStackText } from "./make-sieves.ts";
import { trapLog } from "./make-traps.ts";
import { oneText, type Texts, textCases } from "./texts.ts";

export interface FuzzKind {
  readonly name: string;
  readonly cases: fc.Arbitrary<Texts>;
  readonly holds: (texts: Texts, step: Step) => Promise<void> | void;
  /** What the cases came to, beside their number. */
  readonly told: () => string;
  readonly done?: () => void;
}

export interface KindsOptions {
  readonly notebooks: readonly Notebook[];
  readonly often: Often;
}

export function fuzzKinds({ notebooks, often }: KindsOptions): readonly FuzzKind[] {
  const logs = (name: string, cases: fc.Arbitrary<Texts>): FuzzKind => {
    const tally = noTally();
    const told = () => `${tally.accepted} accepted, ${tally.edits} edited, ${tally.pages} pages`;
    return { name, cases, holds: logProperty(notebooks, often, tally), told };
  };
  return [
    logs("logs from the grammar", textCases(grammarLog)),
    logs("logs from the demos", textCases(mutatedLog)),
    logs("logs of words", textCases(wordsLog)),
    logs("logs that choke", textCases(trapLog)),
    logs(
      "logs with other line ends",
      textCases((dice) => {
        const made = dice.chance(60) ? grammarLog(dice) : mutatedLog(dice);
        return made.map(({ name, text }) => ({ name, text: otherLineEnds(dice, text) }));
      }),
    ),
    logs(
      "logs with CSV files",
      textCases((dice) => {
        const kind = dice.pick(["sievings", "batches", "rows"] as const);
        const text = dice.chance(70) ? csvText(dice, kind, dice.pick([0, 5, 40])) : anyTable(dice);
        return [
          { name: logName, text: logFor[kind] },
          { name: `${kind}.csv`, text },
        ];
      }),
    ),
    bytesKind(),
    ...formulaKinds(),
    quantityKind(),
    sieveKind(),
  ];
}

const head = "format: 1\nmetal: aluminium\nbond: bentonite\nscales: { shed scale: { reads to: 0.1 g } }\n";
const logFor = {
  sievings: `${head}sieve sets: { home stack: { frame: 200 mm } }\nsands:\n  Quarry Lane sand:\n    state: new\n    sievings file: sievings.csv\n`,
  batches: `${head}rigs: { tube: { bore: 50 mm, tube: 120 mm } }\nbatches file: batches.csv\n`,
  rows: `${head}sheets:\n  bags:\n    columns: { bag: text, made: date, damp: { unit: g, scale: shed scale }, dry: g, share: "% of dry mix", lost: { unit: g, formula: damp - dry } }\n    rows: rows.csv\n    foot: { mean: mean(lost) }\n`,
} as const;

function bytesKind(): FuzzKind {
  const { bytesHold, done } = checkedFolder();
  let files = 0;
  return {
    name: "files of any bytes",
    // One character a byte, so that a case can be shown and made smaller.
    cases: oneText((dice) => logBytes(dice).toString("latin1")),
    async holds([file], step) {
      await bytesHold(Buffer.from(file!.text, "latin1"), step);
      files++;
    },
    told: () => `${files} by the command "check"`,
    done,
  };
}

function formulaKinds(): readonly FuzzKind[] {
  const tally: FormulaTally = { read: 0, worked: 0, inOtherUnits: 0 };
  let sheets = 0;
  return [
    {
      name: "formulas",
      cases: oneText(formulaText),
      holds: ([formula], step) => formulaHolds(formula!.text, tally, step),
      told: () =>
        `${tally.read} read, ${tally.worked} with a figure, ${tally.inOtherUnits} in other units too`,
    },
    {
      name: "formulas of plain numbers",
      cases: oneText(plainFormula),
      holds([formula], step) {
        plainHolds(formula!.text, step);
        if (formula!.text.length % 4 > 0) return;
        sheets++;
        sheetHolds(formula!.text, step);
      },
      told: () => `against mathjs; ${sheets} in a sheet, drawn and undrawn`,
    },
  ];
}

function quantityKind(): FuzzKind {
  let accepted = 0;
  return {
    name: "quantities",
    cases: oneText(quantityText),
    holds([typed], step) {
      if (quantityHolds(typed!.text, step)) accepted++;
    },
    told: () => `${accepted} accepted`,
  };
}

function sieveKind(): FuzzKind {
  let read = 0;
  return {
    name: "sieves",
    cases: oneText((dice) => (dice.chance(60) ? sieveLabel(dice) : sieveStackText(dice))),
    holds([labels], step) {
      read += sievesHold(labels!.text, step);
    },
    told: () => `${read} labels accepted`,
  };
}
