// What a formula of a sheet may use, for its reader.

import {
  aggregateFunctions,
  type FormulaFunction,
  formulaFunctions,
  plainFunctions,
} from "../sheet/functions.ts";
import type { Block, Text } from "./blocks.ts";

const written = ({ name, takes }: FormulaFunction): string => `${name}(${takes})`;
const told = (one: FormulaFunction): string => `${written(one)}, ${one.gives}`;

/**
 * Signs, functions of a row, figures over the rows, and the models of the sand; folded on a screen.
 * @example sheetFunctions().kind
 */
export function sheetFunctions(): Block {
  const general = new Set<FormulaFunction>([...plainFunctions, ...aggregateFunctions]);
  const models = formulaFunctions.filter((one) => !general.has(one));
  const items: Text[] = [
    [
      { strong: "Signs" },
      ": + - * / ^ and round brackets; < <= > >= == != between figures, == != between texts; and, or, not; condition ? a : b. A number may carry its unit: 0.3 mm. Percentages run from 0 to 100, so % is not written.",
    ],
    [{ strong: "In a row" }, `: ${plainFunctions.map(told).join("; ")}.`],
    [{ strong: "Over the rows" }, `: ${aggregateFunctions.map(told).join("; ")}.`],
    [{ strong: "Models of the sand" }, `: ${models.map((one) => `${one.name}(${names(one)})`).join("; ")}.`],
  ];
  return {
    kind: "fold",
    screenOnly: true,
    summary: "What a formula may use",
    blocks: [{ kind: "list", items }],
  };
}

/** The names end in their units, so these need not be told again; what may be left out stands with "or nothing". */
function names({ takes }: FormulaFunction): string {
  return takes.replace(/ \([^()]*(?:\([^()]*\))?[^()]*\)/gu, "");
}
