// A small log for the tests of editing. Invented, as are all its figures.

import type { LogText } from "../../lib/index.ts";

export const logText = `format: 1
title: Two waters   # a first try
invented: yes
metal: aluminium
bond: bentonite
scales:
  kitchen scale: { reads to: 0.1 g, within: 0.2 g }
batches:
  W1:
    date: 2026-07-11
    made of: { sand: 5.00 kg, bentonite: 0.455 kg, water: 0.107 kg }
    moisture: { method: oven, damp: 152.6 g, dry: 148.5 g, scale: kitchen scale }   # from the tub's middle
    green compression: [ { load: 14.7 kg }, { load: 14.2 kg }, { load: 14.9 kg } ]
  W2:
    date: 2026-07-12
    made of: { sand: 5.00 kg, bentonite: 0.455 kg, water: 0.125 kg }
    moisture: { method: oven, damp: 153.0 g, dry: 148.4 g, scale: kitchen scale }
sheets:
  swelling:
    columns: { jar: text, dry: g, wet: g }
    rows: swelling.csv
`;

export const csvText = "jar,dry,wet\nA,10.0,14.1\nB,10.1,13.9\nC,10.0,14.4\n";

export const texts: readonly LogText[] = [
  { name: "two-waters.yaml", text: logText },
  { name: "swelling.csv", text: csvText },
];
