// Simple line drawings of home rigs, each with its labels. Our own.

import {
  box,
  dish,
  drawing,
  heap,
  line,
  measure,
  type Piece,
  path,
  round,
  sand,
  say,
  steam,
  tube,
  water,
} from "./card-drawing-parts.ts";

const fullDish = (x: number): Piece => heap(x, 50) + dish(x, 56);
const arrow = (x: number, y: number, length: number): Piece => path(`M${x} ${y}h${length}m-6 -5l6 5l-6 5`);

export const moistureDrawing = drawing(
  380,
  110,
  "A dish of damp sand is weighed, dried until it loses no more, and weighed again.",
  fullDish(20),
  box(10, 84, 110, 14),
  say(65, 30, "damp", "middle"),
  arrow(135, 70, 26),
  fullDish(170),
  steam(195, 42),
  say(215, 102, "105 °C", "middle"),
  arrow(270, 70, 16),
  fullDish(290),
  box(280, 84, 100, 14),
  say(335, 30, "dry", "middle"),
);

/** A tube on the bench, filled loose and struck off at this height. */
const struckOff = (y: number): Piece =>
  [
    sand(30, y, 50, 130 - y),
    tube(30, y, 50, 130 - y),
    measure(98, y, 130, "filled"),
    line(20, y, 90, y),
    say(22, y - 6, "struck off"),
  ].join("");

export const compactabilityDrawing = drawing(
  330,
  150,
  "A tube filled loose to the rim and struck off; the same tube after three blows, the sand lower.",
  struckOff(20),
  sand(190, 78, 50, 52),
  tube(190, 20, 50, 110),
  box(192, 62, 46, 16),
  line(215, 0, 215, 62),
  measure(258, 78, 130, "rammed"),
);

export const pressedDrawing = drawing(
  330,
  150,
  "A tube filled loose to the rim and struck off; the same tube under the plunger of a press, the sand lower.",
  struckOff(30),
  sand(190, 82, 50, 48),
  tube(190, 30, 50, 100),
  box(192, 66, 46, 16),
  path("M215 12v54"),
  path("M150 12h130M275 12v10"),
  say(222, 26, "press"),
  measure(258, 82, 130, "pressed"),
);

export const compressionDrawing = drawing(
  330,
  190,
  "A specimen stands between two plates; on the upper disc stands a pail that is filled slowly, between two blocks.",
  path("M105 14l8 58h74l8 -58"),
  water(109, 40, 82, 28),
  say(205, 40, "pail, filled slowly"),
  box(112, 76, 76, 9),
  say(205, 84, "disc"),
  sand(125, 85, 50, 50),
  say(205, 114, "specimen"),
  box(95, 135, 110, 10),
  box(70, 92, 22, 53),
  box(208, 128, 22, 17),
  say(14, 60, "blocks"),
  say(14, 74, "that catch it"),
  line(20, 145, 260, 145),
);

export const shearDrawing = drawing(
  330,
  150,
  "A specimen lies in two short sleeves; one is fixed, the load hangs from the other and shears it along one plane.",
  sand(90, 40, 52, 44),
  sand(142, 40, 52, 44),
  box(86, 34, 54, 56),
  box(144, 34, 54, 56),
  line(142, 20, 142, 104),
  say(142, 14, "it shears here", "middle"),
  box(40, 90, 100, 12),
  line(40, 102, 40, 140),
  line(140, 102, 140, 140),
  say(52, 122, "fixed"),
  line(171, 90, 171, 110),
  path("M155 110l4 30h24l4 -30z"),
  say(196, 130, "pail, filled slowly"),
);

export const splittingDrawing = drawing(
  330,
  170,
  "A specimen lies on its side between two strips; the load on the upper one splits it from top to bottom.",
  path("M125 8l6 38h58l6 -38"),
  water(130, 26, 60, 18),
  say(205, 30, "pail, filled slowly"),
  box(115, 50, 90, 8),
  box(155, 58, 10, 5),
  `<circle cx="160" cy="93" r="30" fill="var(--rule)"/>`,
  path("M160 63l-3 20l6 12l-6 14l3 14"),
  box(155, 123, 10, 5),
  box(105, 128, 110, 10),
  say(205, 98, "specimen on its side"),
  say(20, 70, "strips"),
  line(55, 66, 152, 61),
);

const specimenTube = (x: number, y: number): Piece =>
  `${sand(x, y, 40, 36)}${box(x - 3, y - 22, 46, 58)}${say(x + 20, y + 52, "specimen", "middle")}${path(`M${x + 20} ${y - 42}v20`)}`;

export const constantHeadDrawing = drawing(
  360,
  170,
  "An upturned can floats in a pail of water and presses air through a hose into the tube with the specimen.",
  path("M30 50V150H150V50"),
  water(31, 80, 118, 60),
  path("M55 130V40H125V130"),
  say(90, 34, "floating can", "middle"),
  path("M90 70V165H215V58H270"),
  specimenTube(250, 100),
  say(168, 84, "marks: air"),
  line(127, 80, 165, 80),
  path("M215 100h18v40h14v-60"),
  say(196, 60, "gauge", "end"),
);

export const aspiratorDrawing = drawing(
  360,
  180,
  "Water drains from a closed bottle; the air that takes its place is drawn through the specimen; a U-tube shows the suction.",
  path("M60 60q0 -20 20 -22v-20h20v20q20 2 20 22v90h-60z"),
  water(61, 85, 58, 58),
  path("M118 140h30v20m-4 -6l4 6l4 -6"),
  say(156, 166, "water into a jug"),
  path("M90 18V8H270V58"),
  specimenTube(250, 100),
  path("M180 8v50q0 14 12 14t12 -14v-36"),
  say(212, 52, "suction"),
);

export const fallingColumnDrawing = drawing(
  360,
  190,
  "A U of two legs: water sinks in the wide open leg and pushes the air in the other through the specimen; two marks show where the watch starts and stops.",
  path("M70 10V170H200V60"),
  path("M130 10V140H170V60"),
  water(71, 45, 58, 96),
  water(171, 120, 28, 22),
  line(62, 45, 138, 45),
  line(62, 85, 138, 85),
  say(58, 49, "start", "end"),
  say(58, 89, "stop", "end"),
  path("M170 60V40H270V58M200 60V56H255"),
  measure(150, 45, 120, ""),
  say(147, 32, "from ... to", "start"),
  specimenTube(250, 100),
);

export const bleedingVesselDrawing = drawing(
  360,
  170,
  "A closed drum under a little air pressure bleeds down through the specimen; a U-tube of water shows the pressure and blows out before it rises too far.",
  box(30, 50, 90, 90),
  say(75, 90, "closed", "middle"),
  say(75, 106, "vessel", "middle"),
  path("M120 70h25v50q0 14 12 14t12 -14V30"),
  say(176, 72, "U-tube:"),
  say(176, 86, "from, to"),
  path("M75 50V20H270V58"),
  box(222, 14, 14, 12),
  say(229, 44, "tap", "middle"),
  specimenTube(250, 100),
);

export const densityDrawing = drawing(
  330,
  120,
  "A rammed specimen is weighed, and its height and diameter are measured.",
  sand(60, 30, 54, 54),
  box(45, 84, 84, 12),
  measure(140, 30, 84, "height"),
  path("M60 20h54M60 16v8M114 16v8"),
  say(87, 12, "diameter", "middle"),
  say(87, 112, "mass", "middle"),
);

export const washDrawing = drawing(
  330,
  180,
  "A tall jar of stirred sand in water; after the wait a siphon draws off the upper five inches, never nearer to the sand.",
  path("M60 10V165H150V10"),
  water(61, 25, 88, 110),
  sand(61, 145, 88, 20),
  measure(170, 25, 135, "127 mm drawn off"),
  path("M120 135V4h-90v150"),
  say(14, 172, "siphon"),
  say(160, 160, "grain stays"),
);

export const sievingDrawing = drawing(
  300,
  170,
  "A stack of sieves, coarse on top, with a lid and a pan.",
  box(90, 14, 100, 10),
  say(200, 23, "lid"),
  ...[0, 1, 2, 3].map((i) => `${box(92, 26 + i * 28, 96, 26)}${line(94, 46 + i * 28, 186, 46 + i * 28)}`),
  say(200, 44, "coarse"),
  say(200, 128, "fine"),
  box(92, 138, 96, 22),
  say(200, 154, "pan"),
);

export const squeezeDrawing = drawing(
  380,
  70,
  "Five lumps of sand from dry to wet: loose grains, a crumbling lump, a clean break, a blunt break, a smear.",
  ...[10, 18, 26, 34, 44, 50, 22, 38].map((x, i) => round(x, 44 - (i % 3) * 4, 2)),
  path("M92 46q4 -20 24 -18t22 18z"),
  round(90, 44, 2),
  round(140, 42, 2),
  path("M166 46v-16h20l-4 6l6 4l-4 6zM196 46l4 -6l-6 -5l4 -5h20v16z"),
  path("M244 46q-2 -18 12 -18q14 2 18 8q8 -8 18 -6q10 2 8 16z"),
  path("M320 48q10 -8 20 -4t22 -2q10 2 8 8h-52z"),
  ...[30, 115, 192, 270, 344].map((x, i) => say(x, 66, String(i + 1), "middle")),
);
