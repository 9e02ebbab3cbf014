// The only door to mathjs: its grammar and nothing else of it.

// The parser's own file, by its path: "mathjs/number" builds all its functions when it is loaded, a second of
// processor time for each process that reads a log, where the parser alone takes a thirtieth of that.
// @ts-expect-error: the file has no types of its own
import { createParse } from "../../node_modules/mathjs/lib/esm/expression/parse.js";
import { invariant } from "../issue.ts";

/** What a formula consists of, by the places of its tokens in the list. Brackets are kept, so that texts can be cut out. */
export type Tree = {
  readonly first: number;
  readonly last: number;
  readonly depth: number;
} & (
  | { readonly kind: "leaf" }
  | { readonly kind: "group"; readonly args: readonly [Tree] }
  | { readonly kind: "call"; readonly args: readonly Tree[] }
  | { readonly kind: "sign"; readonly op: string; readonly args: readonly [Tree] }
  | { readonly kind: "pair"; readonly op: string; readonly args: readonly [Tree, Tree] }
  | { readonly kind: "chain"; readonly ops: readonly string[]; readonly args: readonly Tree[] }
  | { readonly kind: "choice"; readonly args: readonly [Tree, Tree, Tree] }
);

export type Parsed =
  | { readonly tree: Tree }
  /** The token where reading came to an end; past the last where something is missing there. */
  | { readonly stuckAt: number }
  | { readonly tooDeep: true };

/** A tree is walked by functions that call themselves: this keeps them far from the end of the stack. */
export const DEEPEST = 100;

/**
 * Reads tokens by the grammar of mathjs expressions. mathjs sees signs and the stand-ins _0, _1, … only, never a
 * founder's names, numbers or texts; and the parts it would build a program from are replaced by plain records here,
 * so that nothing it returns can be run.
 * words: each token as a sign of mathjs, undefined for an operand or the name of a function.
 */
export function parseTokens(words: readonly (string | undefined)[]): Parsed {
  const starts: number[] = [];
  let text = "";
  words.forEach((word, k) => {
    starts.push(text.length);
    text += `${word ?? `_${k}`} `;
  });
  try {
    return { tree: (parse(text) as Part).tree };
  } catch (error) {
    if (error instanceof TooDeep || error instanceof RangeError) return { tooDeep: true };
    if (error instanceof Refused) return { stuckAt: error.token };
    if (!(error instanceof SyntaxError)) throw error;
    const at = (error as SyntaxError & { char?: number }).char ?? text.length + 1;
    const after = starts.findIndex((start) => start > at - 1);
    return { stuckAt: at - 1 >= text.length ? words.length : after < 0 ? words.length - 1 : after - 1 };
  }
}

class TooDeep extends Error {}
class Refused extends Error {
  readonly token: number;
  constructor(token: number) {
    super("refused");
    this.token = token;
  }
}

type Shape = Tree extends infer One
  ? One extends Tree
    ? Omit<One, "first" | "last" | "depth">
    : never
  : never;

/** What the grammar hands about. It asks for isNode at the prototype. */
class Part {
  readonly tree: Tree;
  get isNode(): boolean {
    return true;
  }
  constructor(tree: Tree) {
    if (tree.depth > DEEPEST) throw new TooDeep();
    this.tree = tree;
  }
}

const grown = (first: number, last: number, shape: Shape & { args: readonly Tree[] }): Tree => {
  const depth = 1 + shape.args.reduce((most, arg) => Math.max(most, arg.depth), 0);
  return { ...shape, first, last, depth } as Tree;
};
const trees = (parts: readonly Part[]): Tree[] => parts.map(({ tree }) => tree);

class Leaf extends Part {
  readonly isSymbolNode = true;
  constructor(name: string) {
    const token = Number(name.slice(1));
    // A range without an end brings in a name of its own.
    if (!Number.isInteger(token)) throw new Refused(0);
    super({ kind: "leaf", first: token, last: token, depth: 1 });
  }
}

class Group extends Part {
  constructor({ tree }: Part) {
    super(grown(tree.first - 1, tree.last + 1, { kind: "group", args: [tree] }));
  }
}

class Call extends Part {
  constructor({ tree }: Part, parts: readonly Part[]) {
    const args = trees(parts);
    super(grown(tree.first, (args.at(-1)?.last ?? tree.first + 1) + 1, { kind: "call", args }));
  }
}

class Operator extends Part {
  constructor(op: string, _fn: string, parts: readonly Part[]) {
    const [a, b] = trees(parts);
    invariant(a, "an operator has an operand");
    super(
      b
        ? grown(a.first, b.last, { kind: "pair", op, args: [a, b] })
        : grown(a.first - 1, a.last, { kind: "sign", op, args: [a] }),
    );
  }
}

const comparisons: { readonly [fn: string]: string } = {
  equal: "==",
  unequal: "!=",
  smaller: "<",
  larger: ">",
  smallerEq: "<=",
  largerEq: ">=",
};

class Chain extends Part {
  constructor(names: readonly string[], parts: readonly Part[]) {
    const args = trees(parts);
    const ops = names.map((name) => comparisons[name] ?? "");
    super(grown(args[0]!.first, args.at(-1)!.last, { kind: "chain", ops, args }));
  }
}

class Choice extends Part {
  constructor(...parts: readonly [Part, Part, Part]) {
    const [condition, yes, no] = parts.map(({ tree }) => tree) as [Tree, Tree, Tree];
    super(grown(condition.first, no.last, { kind: "choice", args: [condition, yes, no] }));
  }
}

/** Stands for what has no place in a formula; no sign that makes one gets past the tokens, but for ":". */
class Nothing {
  constructor(part?: unknown) {
    throw new Refused(part instanceof Part ? part.tree.last + 1 : 0);
  }
}

const parse: (text: string) => unknown = createParse({
  typed: Object.assign((_name: string, by: { string: (text: string) => unknown }) => by.string, {
    addConversion: () => {},
  }),
  numeric: Number,
  config: { number: "number" },
  SymbolNode: Leaf,
  ParenthesisNode: Group,
  FunctionNode: Call,
  OperatorNode: Operator,
  RelationalNode: Chain,
  ConditionalNode: Choice,
  AccessorNode: Nothing,
  ArrayNode: Nothing,
  AssignmentNode: Nothing,
  BlockNode: Nothing,
  ConstantNode: Nothing,
  FunctionAssignmentNode: Nothing,
  IndexNode: Nothing,
  ObjectNode: Nothing,
  RangeNode: Nothing,
});
