// The names that the sections of a heap and its season know, and how each section is written, for a remedy.

export const heapSectionLines: { readonly [key: string]: string } = {
  recipe: "recipe: { basis: per 100 of sand, clay: 8.7, moisture: 3.4 %, make: 120 kg }",
  prices: "prices: { currency: pounds, sand: { cost: 9.50, for: 25 kg } }",
  wanted: "wanted: { moisture: 3.4 %, live clay: 8 % of dry mix }",
  measured: "measured: [ { date: 2026-05-09, moisture: 2.6 % } ]",
  weather: "weather: { air: 18 °C, humidity: 60 %, hours: 16 }",
  flask: "flask: { volume: 14 L, casting volume: 0.9 L }",
  events: "events: [ { date: 2026-05-02, lost: 1.5 kg } ]",
  planned: "planned: { pours: 30, metal: 2.5 kg, every: 7 days }",
  mulling: "mulling: { by hand: { load: 5 kg, readings: [ { minutes: 2, green compression: 38 kPa } ] } }",
  muller: "muller: { motor: 1450 rpm, reduction: 60, load: 12 kg, minutes: 12 }",
  remind: "remind: { moisture: 1 day, green compression: 7 days }",
  castings: "castings: [ { date: 2026-05-02, name: lamp base, faults: [ gas holes, rough skin ] } ]",
  questions: "questions: [ { fault: gas holes, against: moisture } ]",
  blend: "blend: { of: [ first sand, second sand ], to: { gfn: 60 } }",
};

export const heapSectionKeys = Object.freeze(Object.keys(heapSectionLines));

export const loggedRecipeKeys = [
  "basis",
  "clay",
  "bentonite",
  "additives",
  "moisture",
  "sand moisture",
  "clay moisture",
  "bentonite moisture",
  "water",
  "make",
  "sand",
  "muller pan",
  "bucket of",
  "note",
] as const;

export const stateKeys = [
  "moisture",
  "live clay",
  "compactability",
  "green compression",
  "gfn",
  "fines",
  "note",
] as const;

export const weatherKeys = [
  "air",
  "sand",
  "humidity",
  "wind",
  "wind at",
  "hours",
  "start",
  "want",
  "note",
] as const;
export const flaskKeys = ["volume", "casting volume", "density", "note"] as const;
export const pourKeys = ["metal", "alloy", "at", "section", "scrap share", "degassed", "note"] as const;
export const eventKinds = ["pour", "lost", "rebond", "new sand", "water", "tested"] as const;
export const castingKeys = ["date", "name", "of pour", "faults", "note"] as const;
export const castingQuestionKeys = ["fault", "against", "limit", "note"] as const;
export const planKeys = ["pours", "metal", "section", "every", "lost", "note"] as const;
export const mullingKeys = ["load", "readings", "note"] as const;
export const mullingReadingKeys = [
  "minutes",
  "green compression",
  "compactability",
  "moisture",
  "note",
] as const;
export const mullerKeys = [
  "motor",
  "reduction",
  "pan diameter",
  "wheel width",
  "wheels",
  "ploughs",
  "load",
  "minutes",
  "sand",
  "note",
] as const;
