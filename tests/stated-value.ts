// The value that an example in a comment states, and whether another is it to the digits that are written.

/** A number as written: 45.0 is meant to a tenth, 0.2309... to its last digit, cut off. */
class Written {
  readonly value: number;
  readonly within: number;
  constructor(value: number, within: number) {
    this.value = value;
    this.within = within;
  }
}

export interface StatedExample {
  readonly code: string;
  /** Undefined where none is stated. Numbers in it are as written: see fits. */
  readonly value?: unknown;
}

/** "code // value, more words", "Example: code is value." or "Example: code → value". */
export function statedValue(example: string): StatedExample {
  const sentence = /^Example: ([\s\S]*?)(?: is | → )([\s\S]*?)\.?$/.exec(example);
  const [code, stated] = sentence ? [sentence[1]!, sentence[2]!] : apart(example);
  const value = stated === undefined ? undefined : literalIn(stated);
  return value === undefined ? { code } : { code, value: value[0] };
}

function apart(example: string): [string, string?] {
  const at = example.lastIndexOf("// ");
  return at < 0 ? [example] : [example.slice(0, at), example.slice(at + 3)];
}

/** The longest beginning that is a value, in a list of one; undefined where none is: then words stand there. */
function literalIn(text: string): [unknown] | undefined {
  const ends = [text.length, ...[...text.matchAll(/[,;] /g)].map(({ index }) => index).reverse()];
  for (const end of ends) {
    const literal = text.slice(0, end).replace(TOKEN, (token) => written(token));
    try {
      return [
        new Function("N", `return (${literal});`)(
          (value: number, within: number) => new Written(value, within),
        ),
      ];
    } catch {}
  }
  return undefined;
}

const TOKEN =
  /"(?:\\.|[^"\\])*"|'(?:\\.|[^'\\])*'|[A-Za-z_$][\w$]*|[-−]?\d{1,3}(?: \d{3})+|[-−]?\d+(?:\.\d+)?(?:e[-+]?\d+)?(?:\.\.\.|…)?/g;

function written(token: string): string {
  if (/^["'A-Za-z_$]/.test(token)) return token;
  const cut = /(\.\.\.|…)$/.test(token);
  const plain = token
    .replace(/(\.\.\.|…)$/, "")
    .replace("−", "-")
    .replaceAll(" ", "");
  const [digits, power = "0"] = plain.split("e") as [string, string?];
  const decimals = (digits.split(".")[1] ?? "").length;
  const unit = 10 ** (Number(power) - decimals);
  return `N(${plain}, ${cut ? unit : unit / 2})`;
}

/** Objects may hold more than is stated; lists may not. */
export function fits(got: unknown, stated: unknown): boolean {
  if (stated instanceof Written) {
    const { value, within } = stated;
    if (typeof got !== "number") return false;
    // A count is what it is.
    if (Number.isInteger(got) && Number.isInteger(value)) return got === value;
    return Math.abs(got - value) <= within * (1 + 1e-9);
  }
  if (Array.isArray(stated)) {
    const list = Array.from(got as ArrayLike<unknown>);
    return list.length === stated.length && stated.every((one, i) => fits(list[i], one));
  }
  if (typeof stated === "object" && stated !== null)
    return (
      typeof got === "object" &&
      got !== null &&
      Object.entries(stated).every(([key, one]) => fits((got as Record<string, unknown>)[key], one))
    );
  return Object.is(got, stated);
}
