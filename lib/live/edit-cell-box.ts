// Where the field of a cell stands in the window, and where the focus goes when it is gone.

/** The space that is kept free at the sides of the window. */
const EDGE = 8;

/**
 * The field over its cell, what stands under it moved to the left as far as the window asks; a cell that is gone keeps
 * the box where it was.
 */
export function placeBox(box: HTMLElement, cell: Element): void {
  const td = cell.closest("td,th") ?? cell;
  if (!td.isConnected) return;
  const { left, top, width, height } = td.getBoundingClientRect();
  const own = Math.max(width, 112);
  const end = document.documentElement.clientWidth - EDGE;
  const x = Math.max(EDGE, Math.min(left - 6, end - own));
  const under =
    box.querySelector<HTMLElement>(":scope > .live-under, :scope > .live-try")?.offsetWidth ?? own;
  box.style.setProperty("left", `${x + scrollX}px`);
  box.style.setProperty("top", `${top + scrollY}px`);
  box.style.setProperty("--w", `${own}px`);
  box.style.setProperty("--h", `${Math.max(height, 32)}px`);
  box.style.setProperty("--back", `${Math.max(EDGE - x, Math.min(0, end - under - x))}px`);
}

export function keepInView(box: HTMLElement): void {
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  box.scrollIntoView({ block: "nearest", behavior: still ? "instant" : "smooth" });
}

/** The cell, or what stands in its place after the page was worked out anew. */
export function focusIn(cell: Element): void {
  const to = cell.isConnected ? cell : undefined;
  if (to instanceof HTMLElement) to.focus({ preventScroll: true });
}
