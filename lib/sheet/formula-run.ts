// A checked formula as a list of loops over a stretch of rows, one after the other, in buffers that are used again.

import { invariant } from "../issue.ts";
import type { Slots } from "./formula-context.ts";
import { type Loop, loops } from "./formula-loops.ts";
import type { Node, Slot, Typed } from "./formula-node.ts";
import type { Formula } from "./formula-type.ts";
import { reasonFor } from "./formula-why.ts";
import type { ArrayModel } from "./functions-model.ts";

/** Rows of a stretch: three buffers of 8 KB and the columns' stretches stay in the nearest cache. */
const STRETCH = 1024;

const none = new Float64Array(0);

interface Step {
  readonly loop?: Loop;
  readonly model?: ArrayModel;
  /** Numbers of operands: inputs first, then constants, then buffers. */
  readonly args: readonly number[];
  readonly to: number;
}

interface Program {
  readonly steps: readonly Step[];
  readonly inputs: number;
  readonly constants: readonly number[];
  readonly operands: number;
}

/** Place of an input in the list that run() is given: rows, then sheet, then aggregates, then lookUps. */
function inputPlace(slots: Slots, slot: Slot, index: number): number {
  const before: { readonly [slot in Slot]: number } = {
    row: 0,
    sheet: slots.rows.length,
    aggregate: slots.rows.length + slots.sheet.length,
    "look-up": slots.rows.length + slots.sheet.length + slots.aggregates.length,
  };
  return before[slot] + index;
}

/** source: the whole formula, in which the places of the nodes count; text: the part that this is. */
export function formulaOf(source: string, text: string, { node, type }: Typed, slots: Slots): Formula {
  const inputs = slots.rows.length + slots.sheet.length + slots.aggregates.length + slots.lookUps.length;
  const place = (slot: Slot, index: number): number => inputPlace(slots, slot, index);
  let runner: ReturnType<typeof runnerOf> | undefined;
  return {
    text,
    ...(type.kind === "number" && type.unit ? { unit: type.unit } : {}),
    result: type.kind === "text" || type.kind === "condition" ? type.kind : "number",
    rows: slots.rows,
    sheet: slots.sheet,
    aggregates: slots.aggregates,
    lookUps: slots.lookUps,
    run(values, out) {
      invariant(
        values.length === inputs,
        `the formula has ${inputs} inputs, and ${values.length} were given`,
      );
      runner ??= runnerOf(programOf(node, inputs, place));
      runner(values, out);
    },
    why(values) {
      invariant(
        values.length === inputs,
        `the formula has ${inputs} inputs, and ${values.length} were given`,
      );
      return values.some(Number.isNaN)
        ? undefined
        : reasonFor(node, (slot, index) => values[place(slot, index)]!, source);
    },
  };
}

function programOf(root: Node, inputs: number, place: (slot: Slot, index: number) => number): Program {
  const constants: number[] = [];
  const draft: (Omit<Step, "to" | "args"> & { args: Node[]; operands: number[]; to: number })[] = [];
  let most = 0;
  // Constants are numbered after the inputs, buffers after the constants: so those are counted first.
  const countConstants = (node: Node): void => {
    if (node.op === "constant" && !constants.some((value) => Object.is(value, node.value)))
      constants.push(node.value);
    if ("args" in node) node.args.forEach(countConstants);
  };
  countConstants(root);
  const buffers = inputs + constants.length;
  const walk = (node: Node, free: number): number => {
    if (node.op === "input") return place(node.slot, node.index);
    if (node.op === "constant") return inputs + constants.findIndex((value) => Object.is(value, node.value));
    let next = free;
    const operands = node.args.map((arg) => {
      const operand = walk(arg, next);
      if (operand === buffers + next) next++;
      return operand;
    });
    most = Math.max(most, free + 1);
    draft.push({
      ...(node.op === "loop" ? { loop: node.loop } : { model: node.model }),
      args: [],
      operands,
      to: buffers + free,
    });
    return buffers + free;
  };
  const last = walk(root, 0);
  const steps: Step[] = draft.map(({ operands, args: _, ...step }) => ({ ...step, args: operands }));
  if (steps.length === 0) steps.push({ loop: loops.copy, args: [last], to: buffers });
  return { steps, inputs, constants, operands: buffers + Math.max(most, 1) };
}

function runnerOf(program: Program): Formula["run"] {
  const { steps, inputs, constants, operands } = program;
  const arrays: Float64Array[] = new Array(operands);
  const offsets = new Array<number>(operands).fill(0);
  const moving: boolean[] = new Array(inputs).fill(false);
  /** Of an input that is one number for all rows. */
  const own: (Float64Array | undefined)[] = new Array(inputs);
  let room = 0;
  const final = steps.at(-1)!;

  const makeRoom = (length: number): void => {
    const wanted = Math.min(STRETCH, length);
    if (wanted <= room) return;
    room = wanted === 1 ? 1 : STRETCH;
    constants.forEach((value, k) => {
      arrays[inputs + k] = new Float64Array(room).fill(value);
    });
    for (let k = inputs + constants.length; k < operands; k++) arrays[k] = new Float64Array(room);
    own.fill(undefined);
  };

  return (values, out) => {
    makeRoom(out.length);
    const stretch = Math.min(STRETCH, out.length);
    for (let k = 0; k < inputs; k++) {
      const value = values[k]!;
      moving[k] = typeof value !== "number";
      if (typeof value !== "number") {
        invariant(
          value.length === out.length,
          `input ${k} has ${value.length} rows, and the result has ${out.length}`,
        );
        arrays[k] = value;
      } else {
        own[k] ??= new Float64Array(room);
        arrays[k] = own[k]!.fill(value, 0, stretch);
        offsets[k] = 0;
      }
    }
    for (let start = 0; start < out.length; start += STRETCH) {
      const count = Math.min(STRETCH, out.length - start);
      for (let k = 0; k < inputs; k++) if (moving[k]) offsets[k] = start;
      for (const step of steps) {
        const to = step === final ? out : arrays[step.to]!;
        const from = step === final ? start : 0;
        if (step.model) callModel(step.model, step.args, arrays, offsets, to, from, count);
        else {
          const [a, b = a!, c = a!] = step.args as [number, ...number[]];
          step.loop!.run(
            to,
            from,
            count,
            arrays[a]!,
            offsets[a]!,
            arrays[b]!,
            offsets[b]!,
            arrays[c]!,
            offsets[c]!,
          );
        }
      }
    }
    // Nobody's columns are kept alive by a formula that has read them.
    for (let k = 0; k < inputs; k++) if (moving[k]) arrays[k] = none;
  };
}

function callModel(
  model: ArrayModel,
  args: readonly number[],
  arrays: readonly Float64Array[],
  offsets: readonly number[],
  out: Float64Array,
  o: number,
  n: number,
): void {
  const values: number[] = new Array(args.length).fill(0);
  for (let i = 0; i < n; i++) {
    let missing = false;
    for (let k = 0; k < args.length; k++) {
      const value = arrays[args[k]!]![offsets[args[k]!]! + i]!;
      values[k] = value;
      missing ||= Number.isNaN(value);
    }
    out[o + i] = missing ? Number.NaN : figureOf(model, values);
  }
}

/** NaN where the model refuses its arguments. */
function figureOf(model: ArrayModel, values: readonly number[]): number {
  try {
    return model.call(values);
  } catch (error) {
    if (error instanceof RangeError) return Number.NaN;
    throw error;
  }
}
