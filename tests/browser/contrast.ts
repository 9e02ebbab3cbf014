// How well the words of a page stand out from what is behind them, from inside the page.

export interface Contrast {
  readonly said: string;
  /** True in a drawing. */
  readonly drawn: boolean;
  readonly ratio: number;
}

/**
 * Runs in the page. Scrolls to the words of drawings, since elementsFromPoint sees no further than the window. For every
 * run of text in HTML and every text of a drawing: the contrast of WCAG 2.2 (success criterion 1.4.3, relative luminance) with
 * what lies behind it: backgrounds, and fills of shapes behind the middle of a drawing's words, laid one over the
 * other with their opacities.
 */
export function contrasts(): Contrast[] {
  type Colour = [number, number, number, number];
  const canvas = document.createElement("canvas").getContext("2d", { willReadFrequently: true })!;
  /** Any CSS colour as red, green, blue (0 to 255) and opacity. */
  const known = new Map<string, Colour>();
  const read = (css: string): Colour => {
    const colour = known.get(css) ?? painted(css);
    known.set(css, colour);
    return colour;
  };
  const painted = (css: string): Colour => {
    canvas.clearRect(0, 0, 1, 1);
    canvas.fillStyle = css;
    canvas.fillRect(0, 0, 1, 1);
    const [r, g, b, a] = canvas.getImageData(0, 0, 1, 1).data;
    return [r!, g!, b!, a! / 255];
  };
  const over = (top: Colour, under: Colour): Colour => {
    const mix = (k: 0 | 1 | 2) => top[k] * top[3] + under[k] * (1 - top[3]);
    return [mix(0), mix(1), mix(2), 1];
  };
  const opacities = new Map<Element, number>();
  const opacityOf = (element: Element | null): number => {
    if (!element) return 1;
    const opacity =
      opacities.get(element) ?? Number(getComputedStyle(element).opacity) * opacityOf(element.parentElement);
    opacities.set(element, opacity);
    return opacity;
  };
  const paints = new Map<Element, Colour>();
  const paintOf = (element: Element): Colour => {
    const paint = paints.get(element) ?? worked(element);
    paints.set(element, paint);
    return paint;
  };
  const worked = (element: Element): Colour => {
    const style = getComputedStyle(element);
    const drawn = element instanceof SVGElement;
    if (drawn && (element.tagName === "svg" || style.fill === "none")) return [0, 0, 0, 0];
    const [r, g, b, a] = read(drawn ? style.fill : style.backgroundColor);
    return [r, g, b, a * opacityOf(element) * (drawn ? Number(style.fillOpacity) : 1)];
  };
  const luminance = ([r, g, b]: Colour): number => {
    const line = (value: number) => {
      const share = value / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    };
    return 0.2126 * line(r) + 0.7152 * line(g) + 0.0722 * line(b);
  };
  /** Topmost first. Part of a table may be scrolled out of sight, where no element is found from a point. */
  const ancestors = (element: Element): Element[] =>
    element.parentElement ? [element, ...ancestors(element.parentElement)] : [element];
  const shapesAt = (element: Element): Element[] => {
    if (!inWindow(element)) element.scrollIntoView({ block: "center", behavior: "instant" });
    const box = element.getBoundingClientRect();
    const all = document.elementsFromPoint(box.left + box.width / 2, box.top + box.height / 2);
    if (all.length === 0) throw new Error("a drawing's words lie outside the window");
    return all.filter(({ tagName }) => tagName !== "text" && tagName !== "tspan");
  };
  const inWindow = (element: Element): boolean => {
    const box = element.getBoundingClientRect();
    return box.top >= 0 && box.bottom <= innerHeight;
  };
  const ratioAt = (element: Element): number => {
    const behind = element instanceof SVGElement ? shapesAt(element) : ancestors(element);
    const ground = behind
      .map(paintOf)
      .reduceRight((under, top) => over(top, under), [255, 255, 255, 1] as Colour);
    const style = getComputedStyle(element);
    const [r, g, b, a] = read(element instanceof SVGElement ? style.fill : style.color);
    const fillOpacity = element instanceof SVGElement ? Number(style.fillOpacity) : 1;
    const words = over([r, g, b, a * fillOpacity * opacityOf(element)], ground);
    const [low, high] = [luminance(words), luminance(ground)].sort((x, y) => x - y);
    return (high! + 0.05) / (low! + 0.05);
  };
  const found: Contrast[] = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const said = node.textContent!.trim();
    const element = node.parentElement!;
    if (said === "" || !element.checkVisibility({ contentVisibilityAuto: true })) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const box = element instanceof SVGElement ? element.getBoundingClientRect() : range.getClientRects()[0];
    if (box && box.width > 0)
      found.push({ said, drawn: element instanceof SVGElement, ratio: ratioAt(element) });
  }
  return found;
}
