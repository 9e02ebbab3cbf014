// Reads an SVG back for the tests: its words and lines with their places, by nothing but the SVG itself.

export interface SvgWord {
  readonly text: string;
  readonly sizePx: number;
  readonly anchor: string;
  readonly angle: number;
  readonly x: number;
  readonly y: number;
}
export interface ReadSvg {
  readonly width: number;
  readonly height: number;
  readonly words: readonly SvgWord[];
  /** Marks with a place of their own, by class. */
  places(name: string): { x: number; y: number }[];
  /** Paths as lists of points, by class; curves and arcs are not read. */
  paths(name: string): { x: number; y: number }[][];
  readonly elements: readonly {
    tag: string;
    attributes: ReadonlyMap<string, string>;
    classes: readonly string[];
    x: number;
    y: number;
  }[];
}

const unescaped = (text: string) =>
  text.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&quot;", '"').replaceAll("&amp;", "&");

function move(transform: string): { x: number; y: number; angle: number } {
  const at = /translate\((-?[\d.e-]+),(-?[\d.e-]+)\)/u.exec(transform);
  const turn = /rotate\((-?[\d.]+)/u.exec(transform);
  return { x: Number(at?.[1] ?? 0), y: Number(at?.[2] ?? 0), angle: Number(turn?.[1] ?? 0) };
}

/** Throws when the elements do not close in order. */
export function readSvg(svg: string): ReadSvg {
  const open: { tag: string; x: number; y: number; classes: string[] }[] = [];
  const elements: {
    tag: string;
    attributes: Map<string, string>;
    classes: string[];
    x: number;
    y: number;
  }[] = [];
  const words: SvgWord[] = [];
  let down = 0;
  const word = ({ attributes, x, y }: (typeof elements)[number], text: string): SvgWord => ({
    text: unescaped(text),
    sizePx: Number.parseFloat(attributes.get("font-size") ?? "0"),
    anchor: attributes.get("text-anchor") ?? "start",
    angle: move(attributes.get("transform") ?? "").angle,
    x,
    y,
  });
  const rest = svg.replaceAll(/<(\/?)([a-z]+)((?: [\w:-]+="[^"<>]*")*)\s*(\/?)>([^<]*)/gu, (...found) => {
    const [, closing, tag, attributeText, empty, text] = found as [
      string,
      string,
      string,
      string,
      string,
      string,
    ];
    if (closing) {
      if (open.pop()?.tag !== tag) throw new Error(`</${tag}> closes nothing`);
      return "";
    }
    const attributes = new Map<string, string>();
    for (const [, name, value] of attributeText.matchAll(/ ([\w:-]+)="([^"]*)"/gu))
      attributes.set(name!, unescaped(value!));
    const parent = open.at(-1) ?? { x: 0, y: 0, classes: [] };
    const own = move(attributes.get("transform") ?? "");
    const classes = [...parent.classes, ...(attributes.get("class")?.split(" ") ?? [])];
    const here = { tag, x: parent.x + own.x, y: parent.y + own.y, classes };
    elements.push({ ...here, attributes });
    if (tag === "tspan") {
      // A further line of a text: everything but its height is the text's.
      const owner = elements.findLast((each) => each.tag === "text")!;
      down = attributes.has("dy") ? down + Number(attributes.get("dy")) : 0;
      if (text !== "") words.push({ ...word(owner, text), y: owner.y + down });
    } else if (tag === "text" && text !== "") words.push(word(elements.at(-1)!, text));
    if (!empty) open.push(here);
    return "";
  });
  if (rest.trim() !== "" || open.length > 0) throw new Error(`not read: ${rest.slice(0, 80)}`);
  const [, , width, height] = elements[0]!.attributes.get("viewBox")!.split(" ").map(Number);
  const named = (name: string) => elements.filter((each) => each.classes.includes(name) && each.tag !== "g");
  return {
    width: width!,
    height: height!,
    words,
    elements,
    places: (name) => named(name).map(({ x, y }) => ({ x, y })),
    paths: (name) =>
      named(name).map(({ x, y, attributes }) => {
        const points: { x: number; y: number }[] = [];
        let at = { x, y };
        for (const [, sign, dx, dy] of (attributes.get("d") ?? "").matchAll(
          /([MLhv])(-?[\d.e-]+)(?:,(-?[\d.e-]+))?/gu,
        )) {
          if (sign === "h") at = { x: at.x + Number(dx), y: at.y };
          else if (sign === "v") at = { x: at.x, y: at.y + Number(dx) };
          else at = { x: x + Number(dx), y: y + Number(dy) };
          points.push(at);
        }
        return points;
      }),
  };
}
