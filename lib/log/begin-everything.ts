// A log to begin with that shows everything a log can hold, most of it in comments to open.

import type { Beginning } from "./beginning.ts";

const body = `format: 1
title: My sands
founder: (your name)
invented: yes                 # the figures below are made up
metal: aluminium              # what you pour
# units: US                   # print pages in lb, psi and in; metric if left out
bond: bentonite               # bentonite, or natural for a sand that came with its own clay

scales:
  kitchen scale:
    reads to: 0.1 g           # the smallest step of its display
    within: 0.2 g             # after a check with known weights; leave out if never checked

sieve sets:
  home stack:
    frame: 200 mm             # inside diameter
    checked: no               # yes, if the openings were compared with a certified set

sands:
  Example sand (invented):
    state: new                # new: as bought. used: has been in a heap with clay
    note: "Example only: overwrite this sand."
    sievings:
      - date: 2026-03-02
        portion: A            # name each portion that you sieve: A, B, C
        repeat of: split      # split: parted from one sample. grab: taken anew from the bag
        scale: kitchen scale
        sieve set: home stack
        minutes: 15
        washed: no            # yes, if clay was washed out and the sand dried again
        start: 50.0 g         # dry mass put on the top sieve
        retained:             # what each sieve held, coarse to fine, down to the pan
          No. 30: 0.4         # or 0.6 mm, 600 µm, or cloth with its wire: "30 mesh, 0.3 mm wire"
          No. 40: 3.1
          No. 50: 12.6
          No. 70: 18.3
          No. 100: 11.2
          No. 140: 3.4
          No. 200: 0.7
          pan: 0.2

      - date: 2026-03-02
        portion: B            # a second portion shows how well your sievings repeat
        repeat of: split
        scale: kitchen scale
        sieve set: home stack
        minutes: 15
        washed: no
        start: 50.0 g
        retained:
          No. 30: 0.5
          No. 40: 3.3
          No. 50: 12.4
          No. 70: 18.0
          No. 100: 11.4
          No. 140: 3.3
          No. 200: 0.8
          pan: 0.2

    # Many sievings fit better in a CSV file beside this log, one row each, with the columns
    #   date,portion,repeat of,scale,sieve set,minutes,washed,start,No. 30,No. 40,No. 50,No. 70,No. 100,No. 140,No. 200,pan
    # and here one line that names it (take the # away):
    # sievings file: my-sievings.csv

# A trial: a few batches at several waters. Take the "# " away from the lines below and write your own figures.
# The commands "card trial" and "card moisture" write sheets to print for the bench.
# trial: { axis: moisture }       # what you vary: moisture, clay or compactability
# aims:                           # what you want; leave out what you don't know
#   compactability: 42 to 48 %
#   green compression: 50 to 100 kPa
# rigs:
#   home tube: { bore: 50 mm, tube: 120 mm, rammer: 2 kg, drop: 161 mm, blows: 3, ruler: 0.5 mm }
# batches:
#   First batch (invented):
#     date: 2026-03-09
#     order: 1                    # the first that was made and tested
#     made of: { sand: 4 kg, bentonite: 320 g, water: 150 g }
#     mulled: 10 min
#     stood: 2 h
#     moisture: { method: oven, scale: kitchen scale, damp: 152.4 g, dry: 147.3 g }
#     compactability:             # repeats stand as a list
#       - { rig: home tube, filled: 120 mm, rammed: 66 mm }
#       - { rig: home tube, filled: 120 mm, rammed: 67 mm }
#     green compression: 71 kPa   # or 10.3 psi; or the load: { rig: home tube, load: 14.2 kg }
#     squeeze: 3                  # 1 falls apart, 2 crumbles, 3 snaps clean, 4 bends first, 5 smears
#   Second batch (invented):
#     date: 2026-03-09
#     order: 2
#     moisture: { method: oven, scale: kitchen scale, damp: 150.8 g, dry: 144.9 g }
#     compactability: 52 %
#     green compression: 62 kPa
#     squeeze: 4

## A recipe, and the heap that it makes. The command "write recipe my-sands.yaml" works out what to weigh.
## A recipe that you know by its weights: basis: by weight, with sand: 25 kg, clay: 2.2 kg, water: 0.9 kg in it.
# recipe:
#   basis: per 100 of sand        # or of dry mix, or of damp mass: what the bare numbers below are shares of
#   clay: 8.7                     # dry clay
#   additives: { wood flour: 0.5 }
#   moisture: 3.4 % of damp mass  # wanted
#   sand moisture: 0.5 % ± 0.2 %  # what the sand holds already; dry a weighed portion to know
#   clay moisture: 9 % ± 2 %      # what the bagged clay holds: often 6 to 12 %
#   make: 120 kg                  # damp, all together; or what there is: sand: 100 kg
#   muller pan: 12 kg             # what one load may be
# prices: { currency: pounds, sand: { cost: 9.50, for: 25 kg }, bentonite: { cost: 14, for: 25 kg } }
# heap: { mass: 120 kg ± 5 kg, clay kind: sodium bentonite, shape: heap, cover: sheet }
#
## What happens to the heap, day by day, and what is wanted of it.
# wanted: { moisture: 3.4 % of damp mass, live clay: 8 % of dry mix, gfn: 60 }
# measured:
#   - { date: 2026-05-09, moisture: 2.6 %, live clay: 6.8 % of dry mix ± 0.5 %, gfn: 63, fines: 4 % }
# events:
#   - { date: 2026-05-02, pour: { metal: 2.4 kg, at: 720 °C, section: 8 mm, scrap share: 40 % } }
#   - { date: 2026-05-02, lost: 1.5 kg }                                  # swept up or thrown out, dry
#   - { date: 2026-05-03, rebond: { clay: 0.25 kg, clay moisture: 9 % } }
#   - { date: 2026-05-03, new sand: 2 kg }
#   - { date: 2026-05-03, water: 1.1 kg }
#   - { date: 2026-05-09, tested: { green compression: 62 kPa, compactability: 44 %, moisture: 3.3 % } }
# planned: { pours: 30, metal: 2.5 kg, section: 8 mm, every: 7 days }
# flask: { volume: 14 L, casting volume: 0.9 L }
# weather: { air: 18 °C, humidity: 60 %, wind: 0.5 m/s, wind at: 10 m, hours: 16, start: 3.8 %, want: 3.5 % }
#
## What was found on the castings, and the few pairs that you want to know of, named before looking.
# castings:
#   - { date: 2026-05-02, name: lamp base, faults: [ gas holes, rough skin ] }
#   - { date: 2026-05-02, name: hinge, faults: none }   # looked over, and nothing found
# questions:
#   - { fault: gas holes, against: moisture }
#
## How long to mull: one load, tested as it goes, without more water. Six readings tell a plateau; four are the fewest.
# mulling:
#   by hand:
#     load: 5 kg
#     readings:
#       - { minutes: 2, green compression: 38 kPa }
#       - { minutes: 4, green compression: 51 kPa }
#       - { minutes: 7, green compression: 59 kPa }
#       - { minutes: 10, green compression: 62 kPa }
#       - { minutes: 15, green compression: 64 kPa }
#       - { minutes: 20, green compression: 64 kPa }
# muller: { motor: 1450 rpm, reduction: 60, pan diameter: 500 mm, wheel width: 60 mm, wheels: 2, load: 12 kg, minutes: 12 }
## A blend of two sands of this log or more, once there are two:
## blend: { of: [ first sand, second sand ], to: { gfn: 60 } }

## A question of your own, so that somebody else can repeat the answer.
# experiment:
#   question: Does fifteen minutes of mulling give more green strength than eight?
#   changed: minutes mulled
#   held: [ sand and clay, water, tube and hand ]
#   measured: [ three specimens of each batch, loaded within two minutes of ramming ]
#   open: whether twenty-five minutes would give more

# sheets:                         # your own: columns with units, formulas by the columns' names, a foot
#   Clay bags (invented):
#     columns:
#       bag: text                   # text, date, number, or a unit
#       damp: { unit: g, scale: kitchen scale }
#       dry: { unit: g, scale: kitchen scale }
#       moisture: { unit: "% of damp mass", formula: 100 * (damp - dry) / damp }
#     rows:                         # or the name of a CSV file beside this log: rows: my-bags.csv
#       - { bag: first, damp: 52.4, dry: 47.6 }
#       - { bag: second, damp: 50.9, dry: 47.1 ± 0.2 }
#     foot:
#       mean moisture: mean(moisture)
#     charts:
#       - { x: bag, y: moisture }
`;

/** What begin makes where nothing is asked for. */
export const everything: Beginning = {
  name: "everything",
  says: "an invented sand, and all else that a log can hold, in comments to open",
  notebook: "grain-fineness",
  cards: ["sieving"],
  does: "A log of your sands, with all else that a log can hold in comments below them.",
  hazard:
    "Dry sand makes dust that harms the lungs: lid on, outdoors or under extraction, a mask that seals.",
  body,
};
