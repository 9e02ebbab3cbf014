// Ways in by the sand itself: its first sieving, and a blend of two.

import { type Beginning, whoAndScale } from "./beginning.ts";

const hazard =
  "Dry sieving makes the dust that scars lungs: lid on, outdoors or under extraction, a mask that seals.";

export const sieving: Beginning = {
  name: "sieving",
  says: "one sand, two portions sieved",
  notebook: "grain-fineness",
  cards: ["sieving"],
  does: "The first sieving: one bag of sand, two portions split from one sample.",
  hazard,
  body: `${whoAndScale("First sieving")}
sieve sets:
  home stack: { frame: 200 mm }   # inside diameter; checked: yes, if compared with a certified set

# List every sieve of the stack, also one that held nothing. Labels: No. 40, 0.425 mm, 425 µm.
sands:
  Lime Kiln sand (invented):
    state: new                # new: as bought. used: has been in a heap with clay
    sievings:
      - date: 2026-03-07
        portion: A
        repeat of: split      # split: parted from one sample. grab: taken anew from the bag
        scale: kitchen scale
        sieve set: home stack
        minutes: 15
        washed: no            # yes, if clay was washed out and the sand dried again
        start: 50.0 g         # dry mass put on the top sieve
        retained: { No. 30: 0.3, No. 40: 2.4, No. 50: 10.9, No. 70: 17.8, No. 100: 13.0, No. 140: 4.4, No. 200: 0.9, pan: 0.2 }
      - date: 2026-03-07
        portion: B            # the second portion shows how well your sievings repeat
        repeat of: split
        scale: kitchen scale
        sieve set: home stack
        minutes: 15
        washed: no
        start: 50.0 g
        retained: { No. 30: 0.4, No. 40: 2.5, No. 50: 11.2, No. 70: 17.4, No. 100: 12.9, No. 140: 4.3, No. 200: 1.0, pan: 0.2 }
`,
};

const portion = (name: string, retained: string): string =>
  `      - { date: 2026-03-14, portion: ${name}, repeat of: grab, scale: kitchen scale, sieve set: home stack, minutes: 15, washed: no, start: 50.0 g, retained: { ${retained} } }`;

export const blend: Beginning = {
  name: "blend",
  says: "two sands to be mixed to a fineness number",
  notebook: "blend",
  cards: ["sieving"],
  does: "A blend: two sands, each sieved from three places in its bag, and what the mix is to come to.",
  hazard,
  body: `${whoAndScale("A blend of two sands")}
sieve sets:
  home stack: { frame: 200 mm }

sands:
  Coarse bag (invented):
    state: new
    sievings:                 # three grabs show how much one bag differs within itself
${portion("top", "No. 30: 0.5, No. 40: 4.2, No. 50: 14.6, No. 70: 17.9, No. 100: 9.6, No. 140: 2.5, No. 200: 0.4, pan: 0.1")}
${portion("middle", "No. 30: 0.6, No. 40: 4.4, No. 50: 15.0, No. 70: 17.5, No. 100: 9.4, No. 140: 2.4, No. 200: 0.4, pan: 0.1")}
${portion("bottom", "No. 30: 0.5, No. 40: 4.0, No. 50: 14.3, No. 70: 18.2, No. 100: 9.8, No. 140: 2.5, No. 200: 0.5, pan: 0.1")}
  Fine bag (invented):
    state: new
    sievings:
${portion("top", "No. 30: 0, No. 40: 0.2, No. 50: 1.3, No. 70: 7.1, No. 100: 18.8, No. 140: 15.9, No. 200: 5.3, pan: 1.3")}
${portion("middle", "No. 30: 0, No. 40: 0.2, No. 50: 1.4, No. 70: 7.4, No. 100: 19.0, No. 140: 15.5, No. 200: 5.1, pan: 1.2")}
${portion("bottom", "No. 30: 0, No. 40: 0.1, No. 50: 1.2, No. 70: 6.9, No. 100: 18.6, No. 140: 16.2, No. 200: 5.5, pan: 1.4")}

blend:
  of: [ Coarse bag (invented), Fine bag (invented) ]
  to: { gfn: 70 }             # or { like: a sand of this log }, or { band: aluminium }

# prices: { currency: pounds, Fine bag (invented): { cost: 14, for: 25 kg } }
`,
};
