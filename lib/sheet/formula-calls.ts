// What the functions do with units.

import { entryOf } from "../numbers/entry-of.ts";
import { nearest } from "../numbers/nearest.ts";
import { sameDimension } from "../quantity/unit.ts";
import { type Context, fault, snippet, spanOf } from "./formula-context.ts";
import {
  constant,
  differ,
  inUnit,
  isNumber,
  loopNode,
  type NumberTyped,
  together,
} from "./formula-convert.ts";
import { formulaIssue } from "./formula-issues.ts";
import { type Loop, loops } from "./formula-loops.ts";
import { type Typed, typeText } from "./formula-node.ts";
import { absoluteIssue, needsCondition, raised } from "./formula-operators.ts";
import type { Tree } from "./formula-parser.ts";
import type { Span } from "./formula-type.ts";
import { percent } from "./formula-units.ts";
import { formulaFunctions, functionByName } from "./functions.ts";
import { sandModelByName } from "./functions-sand.ts";

export type Check = (context: Context, tree: Tree) => Typed | undefined;

/** What people write for a function that is called something else here. */
const otherWords: { readonly [word: string]: string } = Object.assign(Object.create(null), {
  average: "mean(x)",
  avg: "mean(x)",
  total: "sum(x)",
  std: "sd(x)",
  stdev: "sd(x)",
  stddev: "sd(x)",
  minimum: "min(x)",
  maximum: "max(x)",
  number: "count(x)",
  power: "x^2",
  pow: "x^2",
  root: "sqrt(x)",
  percent: "percentOf(part, whole)",
});

/** Whether there is such a function and it can have so many arguments; else a fault. */
export function callable(context: Context, name: string, tree: Tree & { kind: "call" }): boolean {
  const { at } = context.tokens[tree.first]!;
  if (context.scope.names.has(name) && !functionByName.has(name)) {
    fault(context, at, formulaIssue.notAFunction(name));
    return false;
  }
  if (name === "log") {
    fault(context, at, formulaIssue.whichLog());
    return false;
  }
  const known = formulaFunctions.find((each) => each.name === name);
  if (!known) {
    const names = formulaFunctions.map((each) => each.name);
    fault(
      context,
      at,
      formulaIssue.noSuchFunction(name, entryOf(otherWords, name.toLowerCase()) ?? nearest(name, names)),
    );
    return false;
  }
  const { least, most, takes } = known;
  const has = tree.args.length;
  if (has >= least && has <= most) return true;
  fault(context, spanOf(context, tree), formulaIssue.howMany(`${name}(${takes})`, has));
  return false;
}

/** A function of the row's own figures. */
export function rowCall(
  context: Context,
  name: string,
  tree: Tree & { kind: "call" },
  check: Check,
): Typed | undefined {
  const args = tree.args.map((arg) => check(context, arg));
  if (!args.every((arg) => arg !== undefined)) return undefined;
  const at = spanOf(context, tree);
  const model = sandModelByName.get(name);
  if (name === "if") return choose(context, args as [Typed, Typed, Typed], at);
  for (const arg of args) {
    if (isNumber(arg)) continue;
    return fault(
      context,
      arg.at,
      formulaIssue.needs(name, "figures", typeText(arg.type), "Name a column of figures."),
    );
  }
  const numbers = args as NumberTyped[];
  return model ? modelCall(context, name, numbers, at) : figureCall(context, name, numbers, at);
}

function figureCall(
  context: Context,
  name: string,
  args: readonly NumberTyped[],
  at: Span,
): Typed | undefined {
  const [x, y] = args as [NumberTyped, NumberTyped];
  const kept = (loop: Loop, more: Typed["node"][] = []): Typed => ({
    node: loopNode(loop, [x.node, ...more], at),
    at,
    type: x.type,
  });
  switch (name) {
    case "abs":
    case "floor":
    case "ceil":
      return kept(loops[name]);
    case "round": {
      const digits = y?.node ?? constant(0, at);
      const whole =
        digits.op === "constant" && Number.isInteger(digits.value) && Math.abs(digits.value) <= 15;
      if (!whole || y?.type.unit) return fault(context, y?.at ?? at, formulaIssue.digits());
      return kept(loops.round, [digits]);
    }
    case "sqrt":
    case "cbrt": {
      const issue = absoluteIssue(x, "put under a root");
      if (issue) return fault(context, x.at, issue);
      return raised(loopNode(loops[name], [x.node], at), x, name === "sqrt" ? 0.5 : 1 / 3, at);
    }
    case "exp":
    case "ln":
    case "log10":
    case "log2":
      if (x.type.unit) {
        const remedy =
          x.type.unit.kind === "percent"
            ? `Divide by 100 for the share: ${name}(${snippet(context, x.at)} / 100).`
            : `Divide by one of the unit first: ${name}(${snippet(context, x.at)} / (1 ${x.type.unit.text})).`;
        return fault(context, x.at, formulaIssue.needsNumber(name, `in ${x.type.unit.text}`, remedy));
      }
      return kept(loops[name]);
    case "percentOf": {
      const pair = together(x, y, "made a percentage");
      if ("code" in pair) return fault(context, at, pair);
      const issue = absoluteIssue(x, "made a percentage") ?? absoluteIssue(y, "made a percentage");
      if (issue) return fault(context, at, issue);
      const share = loopNode(
        loops.divide,
        [loopNode(loops.multiply, [constant(100, at), pair.a], at), pair.b],
        at,
      );
      return { node: share, at, type: { kind: "number", unit: percent } };
    }
    case "clamp":
      return alike(context, args, at, ([a, b, c]) => loopNode(loops.clamp, [a!, b!, c!], at));
    case "min":
    case "max":
      return alike(context, args, at, ([first, ...rest]) =>
        rest.reduce((so, next) => loopNode(loops[name], [so, next], at), first!),
      );
    default:
      return fault(context, at, formulaIssue.noSuchFunction(name, undefined));
  }
}

/** All arguments in one unit. */
function alike(
  context: Context,
  args: readonly NumberTyped[],
  at: Span,
  of: (nodes: readonly Typed["node"][]) => Typed["node"],
): Typed | undefined {
  let reference = args.find(({ type }) => type.unit) ?? args[0]!;
  for (const arg of args) {
    if (arg === reference) continue;
    const pair = together(reference, arg, "compared");
    if ("code" in pair) return fault(context, arg.at, pair);
    // A percentage whose basis is said tells it for one whose basis is not.
    reference = { ...reference, type: { ...pair.type, literal: false } };
  }
  const type = { ...reference.type, literal: args.every((arg) => arg.type.literal === true) };
  return { node: of(args.map((arg) => inUnit(arg.node, arg.type.unit, type.unit))), at, type };
}

export function choose(
  context: Context,
  [condition, a, b]: readonly [Typed, Typed, Typed],
  at: Span,
): Typed | undefined {
  if (!needsCondition(context, condition, "if")) return undefined;
  const made = (yes: Typed["node"], no: Typed["node"], type: Typed["type"]): Typed => ({
    node: loopNode(loops.choose, [condition.node, yes, no], at),
    at,
    type,
  });
  if (isNumber(a) && isNumber(b)) {
    const pair = together(a, b, "two answers of one question");
    if ("code" in pair) return fault(context, at, pair);
    return made(pair.a, pair.b, pair.type);
  }
  if (a.type.kind !== b.type.kind || a.type.kind === "date")
    return fault(context, at, differ(a, b, "two answers of one question"));
  return made(a.node, b.node, a.type);
}

/** A quantity goes over into the argument's unit; a plain number is taken in it. */
function modelCall(
  context: Context,
  name: string,
  args: readonly NumberTyped[],
  at: Span,
): Typed | undefined {
  const model = sandModelByName.get(name)!;
  let sound = true;
  const nodes = args.map(({ node, type, at: place }, k) => {
    const { unit, also, name: argument } = model.args[k]!;
    const own = [unit, also].find((each) => each && type.unit && sameDimension(type.unit, each));
    if (!type.unit || own) return inUnit(node, type.unit, own);
    sound = false;
    const what = `${argument} of ${name}`;
    fault(
      context,
      place,
      unit
        ? formulaIssue.needsUnit(what, unit.text, typeText(type))
        : formulaIssue.needsNumber(
            what,
            `in ${type.unit.text}`,
            "Divide by its unit first, if the figure belongs here.",
          ),
    );
    return node;
  });
  if (!sound) return undefined;
  return { node: { op: "model", model, args: nodes, at }, at, type: { kind: "number", unit: model.unit } };
}
