// Sieves against printed tables, two formulas of the standard, and the weavers' arithmetic.

import { clothOpenAreaPercent, clothOpeningMm } from "../../lib/sand/cloth.ts";
import type { Sieve } from "../../lib/sand/sieve.ts";
import { readSieveLabel } from "../../lib/sand/sieve-label.ts";
import { astmSieves } from "../../lib/sand/sieve-table-astm.ts";
import { britishSieves } from "../../lib/sand/sieve-table-british.ts";
import { isoPrincipalMm } from "../../lib/sand/sieve-table-iso.ts";
import { largestOpeningMm, standardToleranceMm } from "../../lib/sand/sieve-tolerance.ts";
import type { Published } from "./published.ts";

const us = (number: number) => astmSieves.find((row) => row.number === number)!;
const wires = ["4.0", "4.7", "5.5", "6.5", "7.6", "8.8", "10.2", "12.0", "14.0", "16.3", "18.8", "21.9", "25.4", "31.2", "36.0", "43.9", "50.8", "62.0", "72.2", "83.3", "101.6", "118.1", "143.5", "166.0", "203.2", "235.2", "285.4", "329.9", "373.5", "423.3", "508.0", "635.0"]; // biome-ignore format: as the table runs
const phi = ["-2.25", "-2.00", "-1.74", "-1.49", "-1.24", "-1.00", "-0.77", "-0.49", "-0.24", "0.00", "0.23", "0.49", "0.74", "1.00", "1.23", "1.49", "1.74", "2.00", "2.24", "2.47", "2.74", "3.00", "3.24", "3.47", "3.74", "3.99", "4.24", "4.47", "4.72", "4.97", "5.32", "5.64"]; // biome-ignore format: as the table runs
const mesh = [16, 22, 30, 44, 60, 72, 85, 100, 120, 150, 200, 240, 300];
const cloths = [[40, 0.25, "0.3850"], [100, 0.1, "0.1540"], [80, 0.12, "0.1975"], [60, 0.12, "0.3033"], [60, 0.16, "0.2633"], [60, 0.19, "0.2333"]] as const; // biome-ignore format: as the table runs
const older = ["3.36", "1.68", "0.84", "0.59", "0.42", "0.297", "0.210", "0.149", "0.105", "0.074"];
const asSieve = (label: string) => readSieveLabel(label).value as Sieve;
const asPrinted = (value: number, openingMm: number, coarse: number, fine: number): string =>
  value.toFixed(openingMm >= 1 ? coarse : fine);

export const sieveRows: readonly Published[] = [
  {
    figure: "openings of the 32 US sieves, mm",
    source: "astm e11",
    theirs: ["4.75", "4.00", "3.35", "2.80", "2.36", "2.00", "1.70", "1.40", "1.18", "1.00", "0.850", "0.710", "0.600", "0.500", "0.425", "0.355", "0.300", "0.250", "0.212", "0.180", "0.150", "0.125", "0.106", "0.090", "0.075", "0.063", "0.053", "0.045", "0.038", "0.032", "0.025", "0.020"], // biome-ignore format: as the table runs
    ours: () => astmSieves.map(({ openingMm }) => openingMm),
    tag: "from memory",
    note: "written down anew, beside the table of the library that was read",
  },
  {
    figure: "wires per inch of the 32 US sieves",
    source: ["astm e11", "iso 3310"],
    theirs: wires,
    ours: () => astmSieves.map(({ openingMm, wireMm }) => 25.4 / (openingMm + wireMm)),
    agree: { within: 0.0501 },
    tag: "by hand",
    note: "openings and wires read",
  },
  {
    figure: "their openings on the phi scale",
    source: ["astm e11", "iso 3310"],
    theirs: phi,
    ours: () => astmSieves.map(({ openingMm }) => -Math.log2(openingMm)),
    agree: { within: 0.00501 },
    tag: "by hand",
    note: "openings read",
  },
  {
    figure: "tolerance of the average opening, 32 sieves, µm",
    source: ["astm e11", "iso 3310"],
    theirs: astmSieves.map(({ toleranceUm, openingMm }) => asPrinted(toleranceUm, openingMm, 0, 1)),
    ours: () => astmSieves.map(({ openingMm }) => standardToleranceMm(openingMm) * 1000),
    tag: "from memory",
    note: "column read; formula from memory",
  },
  {
    figure: "largest single opening, 32 sieves, mm",
    source: ["astm e11", "iso 3310"],
    theirs: astmSieves.map(({ largestMm, openingMm }) => asPrinted(largestMm, openingMm, 2, 3)),
    ours: () => astmSieves.map(({ openingMm }) => largestOpeningMm(openingMm)),
    tag: "from memory",
    note: "column read; formula from memory",
  },
  {
    figure: "ten older openings, 3.36 to 0.074 mm, and the number of the sieve that each is printed for",
    source: ["quevedo", "korean page"],
    theirs: ["6", "12", "20", "30", "40", "50", "70", "100", "140", "200"],
    ours: () => older.map((mm) => asSieve(`${mm} mm`).number ?? "none"),
    tag: "read",
  },
  {
    figure: "German stack for foundry sand, mm: each opening a standard sieve's",
    source: "giesserei siebanalyse",
    theirs: ["1.4", "1.0", "0.71", "0.5", "0.355", "0.25", "0.18", "0.125", "0.09", "0.063"],
    ours: () =>
      isoPrincipalMm
        .filter((mm) => mm <= 1.4 && mm >= 0.063 && asSieve(`${mm} mm`).series !== "cloth")
        .map((mm) => asSieve(`${mm} mm`).openingMm),
    tag: "read",
  },
  {
    figure: "No. 100, least and greatest average opening, µm",
    source: "astm e11",
    theirs: ["143.4", "156.6"],
    ours: () => [
      us(100).openingMm * 1000 - us(100).toleranceUm,
      us(100).openingMm * 1000 + us(100).toleranceUm,
    ],
    tag: "read",
  },
  {
    figure: "ISO 565 principal series: steps of the preferred numbers R20/3",
    source: ["iso 565", "iso 3"],
    theirs: isoPrincipalMm.map(String),
    ours: () =>
      isoPrincipalMm.map((mm) => {
        const step = Math.round(20 * Math.log10(mm));
        return 10 ** (step / 20);
      }),
    agree: { share: 0.015 },
    tag: "from memory",
    note: "openings read; the standard rounds a step by up to 1.5 %",
  },
  {
    figure: "openings that 13 old British meshes share with US sieves, mm",
    source: "bs 410",
    theirs: [
      "1.00",
      "0.71",
      "0.50",
      "0.355",
      "0.25",
      "0.212",
      "0.18",
      "0.15",
      "0.125",
      "0.106",
      "0.075",
      "0.063",
      "0.053",
    ],
    ours: () => mesh.map((number) => britishSieves.find((row) => row.number === number)!.openingMm),
    tag: "from memory",
  },
  {
    figure: "opening of woven cloth, six cloths, mm",
    source: "wire weavers",
    theirs: cloths.map(([, , opening]) => opening),
    ours: () => cloths.map(([countPerInch, wireMm]) => clothOpeningMm({ countPerInch, wireMm })),
    tag: "by hand",
    note: "formula read",
  },
  {
    figure: "open area of 40 mesh with 0.25 mm wire, %",
    source: "wire weavers",
    theirs: ["36.76"],
    ours: () => [clothOpenAreaPercent({ countPerInch: 40, wireMm: 0.25 })],
    tag: "by hand",
    note: "formula read",
  },
];
