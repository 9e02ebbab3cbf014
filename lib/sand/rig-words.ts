// What each home rig looks like, in a sentence, after what can go wrong with it.

export interface RigWords {
  /** A test of the log: "moisture", "green compression". */
  readonly test: string;
  /** Its method, where there are several: "falling column". */
  readonly method?: string;
  /** The hazard, first. */
  readonly hazard: string;
  /** The rig, so that it can be built or told from another. */
  readonly shows: string;
  /** What puts its figure off most, and how that is seen. */
  readonly doubt: string;
}

const dust =
  "Sand that has dried makes dust that scars the lungs: turn it out damp or under water, with a mask on.";
const burst = "Never above 100 gf/cm², 1 m of water: vessels burst.";
const load =
  "Ten to twenty kilograms come down at once: a stop under the load, feet and fingers out from under.";

const words: readonly RigWords[] = [
  {
    test: "moisture",
    method: "oven",
    hazard: `An oven that has dried sand is not used for food again. ${dust}`,
    shows:
      "A weighed dish of 100 g or more, spread thin, at 105 °C, weighed cool every ten minutes until it stands still.",
    doubt: "The step of the scale against the sample: 0.1 g on 100 g is ± 0.1 %.",
  },
  {
    test: "moisture",
    method: "pan",
    hazard: `A flame gives off carbon monoxide: outdoors only. Hot sand burns and wet sand spits; a pan that has dried sand is not used for food again. ${dust}`,
    shows:
      "A weighed pan of 100 g or more over a low flame, stirred, weighed every minute until it stands still.",
    doubt:
      "It also drives off water that the clay keeps at 105 °C: up to 0.05 points for each percent of bentonite.",
  },
  {
    test: "moisture",
    method: "microwave",
    hazard: `A microwave that has dried sand is not used for food again, and iron in sand sparks. ${dust}`,
    shows:
      "A weighed glass dish of 100 g or more with a cup of water beside it, low power, three minutes and then one by one.",
    doubt: "Not reliable with bentonite (ASTM D4643): dry a split of one batch in the oven as well.",
  },
  {
    test: "compactability",
    method: "height",
    hazard: "The rammer takes fingers with it: both hands on its handle.",
    shows:
      "A tube of about 50 mm bore filled through a coarse riddle, struck off level, given three blows; a ruler down to the sand.",
    doubt: "A dry or dirty tube reads high; the ruler, ± 0.5 mm of 120 mm, is ± 0.4 points.",
  },
  {
    test: "compactability",
    method: "two weighings",
    hazard: "The rammer takes fingers with it: both hands on its handle.",
    shows:
      "A pot of any volume filled through the riddle and struck off, weighed; then filled rammed, layer on layer, struck off, weighed.",
    doubt: "How the loose filling falls: riddle from the same height each time.",
  },
  {
    test: "compactability",
    method: "pressed",
    hazard: "A press holds 200 kg over the tube: keep hands out, and stand aside of it.",
    shows:
      "A tube 100 mm high and 50 mm wide, filled and struck off, pressed at 100 N/cm²; a ruler down to the sand.",
    doubt: "Another definition than by blows: the two never stand on one curve.",
  },
  {
    test: "green compression",
    hazard: load,
    shows:
      "A rammed specimen as high as it is wide, a rigid disc on it, a pail on the disc that is filled slowly until the specimen breaks; then disc, pail and filling are weighed together.",
    doubt:
      "How alike the specimens are: three of one batch within two minutes of ramming, since drying makes them strong.",
  },
  {
    test: "green shear",
    hazard: load,
    shows:
      "A specimen in two rings that meet at its middle; one ring is held, a pail hangs from the other and is filled until it slides off.",
    doubt: "Rings that bind or grip read high: leave a hair's gap between them.",
  },
  {
    test: "splitting",
    hazard: load,
    shows:
      "A specimen on its side between two straight edges, a pail on the upper one that is filled slowly until it splits.",
    doubt: "An edge that rests on one end only: a strip of card under each spreads the load.",
  },
  {
    test: "permeability",
    method: "constant head",
    hazard: burst,
    shows:
      "An open can floats mouth down in a wider one and sinks as its air goes through the specimen in its tube; a water gauge stands between.",
    doubt:
      "A leak along the wall (a ring of grease), and the hose: run it once without a specimen and once with a sealed plug.",
  },
  {
    test: "permeability",
    method: "falling column",
    hazard: burst,
    shows:
      "A clear pipe of water runs down into a closed vessel and drives its air through the specimen; the clock runs from one mark to the next.",
    doubt:
      "The bore of the pipe, twice over; where the other level rises too, take the area that stands for both.",
  },
  {
    test: "permeability",
    method: "aspirator",
    hazard: "Glass under suction can break inward: a thick plastic bottle, and less than 200 mm of water.",
    shows:
      "A closed bottle drains through a tap and draws air through the specimen; a U-tube shows the suction, a jug catches the water.",
    doubt: "The suction falls as the bottle empties: hold it with the tap, and read it at the middle.",
  },
  {
    test: "permeability",
    method: "bleeding vessel",
    hazard: `${burst} A drum or tank that held fuel is not used.`,
    shows:
      "A rigid vessel of known volume pumped up a little and left half a minute, then opened to the specimen; a water gauge falls from one mark to the next.",
    doubt: "Seconds are few: a larger vessel. One that gives reads low.",
  },
  {
    test: "density",
    hazard: "The rammer takes fingers with it: both hands on its handle.",
    shows: "The rammed specimen on the scale, and its height by a ruler against the known tube.",
    doubt: "The bore counts twice, the height once: measure the bore across two ways.",
  },
  {
    test: "clay by wash",
    hazard: `Washing soda or pyrophosphate only, gloves and glasses on, never caustic soda. ${dust}`,
    shows:
      "50 g of dried sand stirred in water with a pinch of washing soda, left to settle for the time of the water's temperature, drawn off 5 in deep, again until clear; the grain dried and weighed.",
    doubt: "It counts silt as clay, so it is more than live clay.",
  },
  {
    test: "squeeze",
    hazard: "Never with sand that is still warm inside, or from a muller that can start.",
    shows: "A fistful squeezed once, the hand opened, the lump broken in the middle.",
    doubt: "It is one hand's own: log compactability beside it for a few batches.",
  },
];

/** Every home rig, one row for each test and method. Common practice, in our own words; figures as in the models. */
export const rigWords: readonly RigWords[] = Object.freeze(words.map((row) => Object.freeze(row)));

/**
 * The rows of one test, or of one of its methods; empty where there is none.
 * test, method: as in the log. Example: rigWordsFor("moisture", "pan").length is 1.
 */
export function rigWordsFor(test: string, method?: string): readonly RigWords[] {
  return rigWords.filter((row) => row.test === test && (method === undefined || row.method === method));
}
