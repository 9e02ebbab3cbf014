// A small invented trial to spoil. People, places and figures are made up.

import { readLog } from "../../lib/log/read-log.ts";

export const soundTrial = `format: 1
title: An invented trial
invented: yes
scales:
  small scale: { reads to: 0.1 g, within: 0.2 g }
  pail scale: { reads to: 10 g, within: 20 g }
rigs:
  yard tube: { bore: 50.8 ± 0.2 mm, tube: 120 mm, rammer: 2 kg, drop: 161 mm, blows: 3, ruler: 0.5 mm }
  rain butt: { bore: 50.8 mm, column: 112.84 mm, blank time: 0 s }
aims:
  moisture: 3 to 4 %
  compactability: 42-48 %
  green compression: 50 kPa to 100 kPa
trial: { axis: moisture }
batches:
  Heron 1:
    date: 2026-04-11
    order: 2
    made of: { sand: 4 kg, bentonite: 320 g, water: 110 g, scale: small scale }
    mulled: 10 min
    stood: 2 h
    moisture: { method: oven, scale: small scale, damp: 152.4 g, dry: 148.6 g }
    compactability: 38 %
    green compression: { scale: pail scale, rig: yard tube, load: 14.2 kg, height: 51 mm }
  Heron 2:
    date: 2026-04-11
    order: 1
    made of: { sand: 4 kg, bentonite: 320 g, water: 155 g, scale: small scale }
    mulled: 10 min
    stood: 2 h
    moisture: { method: oven, scale: small scale, damp: 152.4 g, dry: 147.3 g }
    compactability: 45 %
    green compression: 71 ± 2 kPa
`;

export function readTrial(text: string, files: Readonly<Record<string, string>> = {}) {
  return readLog(text, { name: "trial.yaml", files });
}

/** The sound trial with one piece of text put in another's place. */
export function swapped(from: string | RegExp, to: string): string {
  const text = soundTrial.replace(from, () => to);
  if (text === soundTrial) throw new Error(`${from} is not in the sound trial`);
  return text;
}

export function batchNamed(result: ReturnType<typeof readTrial>, name: string) {
  const found = result.value?.batches.find((batch) => batch.name === name);
  if (!found) throw new Error(`no batch ${name}`);
  return found;
}
