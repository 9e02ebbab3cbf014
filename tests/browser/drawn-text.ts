// Looks at the words in a page's drawings, from inside the page.

export interface DrawnWords {
  readonly figure: string;
  /** Classes of the drawings that are shown. */
  readonly shown: readonly string[];
  /** How many words were looked at. */
  readonly count: number;
  readonly overlaps: readonly string[];
  /** Words that leave the drawing or are cut off by a clip. */
  readonly cut: readonly string[];
  readonly smallestPx: number;
}

/** Runs in the page. Boxes may share slackPx, since a box is taller than the letters in it. */
export function drawnWords(slackPx: number): DrawnWords[] {
  return [...document.querySelectorAll("figure")].map((figure) => {
    const drawings = [...figure.querySelectorAll("svg")].filter((svg) => svg.getClientRects().length > 0);
    const overlaps: string[] = [];
    const cut: string[] = [];
    let smallestPx = Number.POSITIVE_INFINITY;
    let count = 0;
    for (const svg of drawings) {
      const words = [...svg.querySelectorAll("text")]
        .map((element) => ({
          element,
          said: element.textContent ?? "",
          box: element.getBoundingClientRect(),
        }))
        .filter(({ said, box }) => said.trim() !== "" && box.width > 0);
      count += words.length;
      const edge = svg.getBoundingClientRect();
      words.forEach(({ element, said, box }, k) => {
        const matrix = element.getScreenCTM()!;
        const scale = Math.sqrt(Math.abs(matrix.a * matrix.d - matrix.b * matrix.c));
        smallestPx = Math.min(smallestPx, Number.parseFloat(getComputedStyle(element).fontSize) * scale);
        const clip = element.closest("[clip-path]")?.getAttribute("clip-path") ?? null;
        const shape = clip && svg.querySelector(clip.slice(4, -1))?.firstElementChild;
        for (const within of [edge, ...(shape ? [shape.getBoundingClientRect()] : [])]) {
          if (within.width === 0) continue;
          const over = [within.left - box.left, within.top - box.top, box.right - within.right];
          if (Math.max(...over, box.bottom - within.bottom) > slackPx) cut.push(said);
        }
        for (const other of words.slice(k + 1)) {
          const wide = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
          const high = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
          if (wide > slackPx && high > slackPx)
            overlaps.push(`"${said}" and "${other.said}" by ${wide.toFixed(1)} x ${high.toFixed(1)} px`);
        }
      });
    }
    const shown = drawings.map((svg) => svg.parentElement!.className);
    return { figure: figure.id, shown, count, overlaps, cut, smallestPx };
  });
}
