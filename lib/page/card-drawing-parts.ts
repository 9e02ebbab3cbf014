// The pieces that the drawings of home rigs are put together from; drawn in the colour of the text.

export type Piece = string;

export const line = (x1: number, y1: number, x2: number, y2: number): Piece =>
  `<path d="M${x1} ${y1}L${x2} ${y2}"/>`;
export const path = (d: string): Piece => `<path d="${d}"/>`;
export const box = (x: number, y: number, width: number, height: number): Piece =>
  `<rect x="${x}" y="${y}" width="${width}" height="${height}"/>`;
export const round = (x: number, y: number, r: number): Piece => `<circle cx="${x}" cy="${y}" r="${r}"/>`;
/** Sand: a box filled with the colour of the bands. */
export const sand = (x: number, y: number, width: number, height: number): Piece =>
  `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="var(--rule)"/>`;
export const water = (x: number, y: number, width: number, height: number): Piece =>
  `${line(x, y, x + width, y)}${Array.from({ length: Math.floor(height / 9) }, (_, i) =>
    line(x + 3, y + 6 + i * 9, x + width - 3, y + 6 + i * 9),
  )
    .join("")
    .replaceAll("/>", ' stroke-width="0.5"/>')}`;
export const say = (
  x: number,
  y: number,
  text: string,
  anchor: "start" | "middle" | "end" = "start",
): Piece => `<text x="${x}" y="${y}" text-anchor="${anchor}">${text}</text>`;
/** A height between two levels, with a mark at either end. */
export const measure = (x: number, y1: number, y2: number, text: string): Piece =>
  `${path(`M${x - 4} ${y1}h8M${x} ${y1}V${y2}M${x - 4} ${y2}h8`)}${say(x + 7, (y1 + y2) / 2 + 4, text)}`;
export const tube = (x: number, y: number, width: number, height: number): Piece =>
  path(`M${x} ${y}V${y + height}H${x + width}V${y}`);

export function drawing(width: number, height: number, alt: string, ...pieces: readonly Piece[]): string {
  return `<svg viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${alt}"><g fill="none" stroke="currentColor" stroke-width="1.3" stroke-linejoin="round">${pieces
    .map((piece) => piece.replaceAll("<text ", '<text fill="currentColor" stroke="none" font-size="12" '))
    .join("")}</g></svg>`;
}

export const dish = (x: number, y: number): Piece => path(`M${x} ${y}l10 26h70l10 -26`);
export const heap = (x: number, y: number): Piece =>
  `<path d="M${x + 6} ${y + 12}q40 -34 78 0l-6 14h-66z" fill="var(--rule)"/>`;
export const steam = (x: number, y: number): Piece =>
  [0, 18, 36].map((step) => path(`M${x + step} ${y}q5 -7 0 -14t0 -14`)).join("");
