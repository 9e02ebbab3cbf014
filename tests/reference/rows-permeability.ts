// Permeability by home rigs, against published constants and worked examples.

import { airViscosityUPaS } from "../../lib/sand/air.ts";
import {
  permeabilityConstant,
  permeabilityFromGd,
  permeabilityM2,
  permeabilityNumber,
} from "../../lib/sand/permeability.ts";
import {
  bleedingVesselPermeability,
  fallingColumnPermeability,
  floatingCanMm,
} from "../../lib/sand/permeability-rigs.ts";
import { specimens } from "../../lib/sand/specimen.ts";
import type { Published } from "./published.ts";

const { us, metric } = specimens;
const diameterOf = (areaCm2: number) => Math.sqrt((400 * areaCm2) / Math.PI);
const constant = (specimen: typeof us | typeof metric) => permeabilityConstant({ airMl: 2000, ...specimen });
const slip = { airMl: 2000, heightMm: 48.2, diameterMm: diameterOf(19.625), seconds: 36 };

export const permeabilityRows: readonly Published[] = [
  {
    figure: "constant of the 2 in specimen by minutes, and of the 50 mm one by seconds",
    source: ["lab manual 369246990", "lab manual 393702941"],
    theirs: ["501.28", "30557"],
    ours: () => [constant(us), 60 * constant(metric)],
    agree: { share: 3e-5 },
    tag: "read",
  },
  {
    figure: "constant of the 2 in specimen by seconds",
    source: "lab manual 369246990",
    theirs: ["30072"],
    ours: () => [60 * constant(us)],
    agree: { share: 2e-4 },
    tag: "read",
    note: "60 times a constant that was cut short",
  },
  {
    figure: "the same over ten, as 50.12",
    source: "expertsmind",
    theirs: ["50.12"],
    ours: () => [constant(us) / 10],
    agree: { share: 1.6e-4 },
    tag: "read",
    note: "cut short by 0.015 %",
  },
  {
    figure: "3000.7 for the 2 in specimen, 10 gf/cm², seconds",
    source: "lab manual 393702941",
    theirs: ["3000.7"],
    ours: () => [6 * constant(us)],
    agree: { instead: ["3007.65"] },
    tag: "misprint",
    note: "3007 with a digit changed; no specimen gives it",
  },
  {
    figure: "2000 cm³ in a minute at 10 gf/cm²",
    source: "exam note",
    theirs: ["50.1"],
    ours: () => [permeabilityNumber({ airMl: 2000, ...us, waterMm: 100, seconds: 60 })],
    tag: "read",
  },
  {
    figure: "2000 cm³ in 85 s at 5 gf/cm²",
    source: "rao",
    theirs: ["70.8"],
    ours: () => [permeabilityNumber({ airMl: 2000, ...us, waterMm: 50, seconds: 85 })],
    tag: "from memory",
  },
  {
    figure: 'a run at "38 cm" of water',
    source: "brawijaya 291033794",
    theirs: ["215.44"],
    ours: () => [permeabilityNumber({ ...slip, waterMm: 380 })],
    agree: { instead: ["21.54"] },
    tag: "misprint",
    note: "38 mm were meant",
  },
  {
    figure: "the same run at 38 mm, against the dial's 210",
    source: "brawijaya 291033794",
    theirs: ["210"],
    ours: () => [permeabilityNumber({ ...slip, waterMm: 38 })],
    agree: { share: 0.03 },
    tag: "read",
  },
  {
    figure: "a run of the other group, 39 cm in 0.33 minutes",
    source: "brawijaya 329123163",
    theirs: ["39.19"],
    ours: () => [
      permeabilityNumber({
        airMl: 2000,
        heightMm: 49.5,
        diameterMm: diameterOf(19.625),
        waterMm: 390,
        seconds: 19.8,
      }),
    ],
    agree: { within: 0.01 },
    tag: "read",
    note: "again ten times below its dial",
  },
  {
    figure: "100 Gd in numbers",
    source: "giesserei lexikon",
    theirs: ["98.067"],
    ours: () => [permeabilityFromGd(100)],
    tag: "by hand",
    note: "unit read",
  },
  {
    figure: "one number in m²/(Pa s), in m², in darcy",
    theirs: ["1.6995e-8", "3.08e-13", "0.312"],
    ours: () => [permeabilityM2(1, 1) / 1e-6, permeabilityM2(1), permeabilityM2(1) / 9.869233e-13],
    tag: "by hand",
    note: "Darcy's law",
  },
  {
    figure: "viscosity of air at 15 °C, µPa·s",
    source: "us atmosphere",
    theirs: ["17.894"],
    ours: () => [airViscosityUPaS(15)],
    agree: { within: 0.005 },
    tag: "from memory",
  },
  {
    figure: "viscosity of air at 0, 10, 30, 40 °C over that at 20 °C",
    theirs: ["0.946", "0.973", "1.026", "1.052"],
    ours: () => [0, 10, 30, 40].map((celsius) => airViscosityUPaS(celsius) / airViscosityUPaS(20)),
    tag: "by hand",
    note: "Sutherland's law",
  },
  {
    figure: "falling column of 100 cm² from 200 to 100 mm in 20.8 s",
    theirs: ["50"],
    ours: () => [fallingColumnPermeability({ columnCm2: 100, ...us, fromMm: 200, toMm: 100, seconds: 20.8 })],
    agree: { within: 0.2 },
    tag: "by hand",
  },
  {
    figure: "bleeding vessel of 20 L, halved in 4.0357 s; a floating can of 785.4 g on 78.54 cm², mm",
    theirs: ["50.00", "100.00"],
    ours: () => [
      bleedingVesselPermeability({ vesselMl: 20_000, ...us, fromMm: 200, toMm: 100, seconds: 4.0357 }),
      floatingCanMm({ netG: 785.4, canCm2: 78.54 }),
    ],
    tag: "by hand",
  },
];
