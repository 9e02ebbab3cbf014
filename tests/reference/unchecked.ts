// What stands in the table and is no row of it: what could not be checked, and truths that we made up ourselves.

export const unchecked: readonly { readonly what: string; readonly why: string }[] = [
  {
    what: "Compactability",
    why: "no published example with its inputs and its result was found; the rows are worked out from the definition.",
  },
  {
    what: "Fineness, the handbooks' own table of multipliers and the natural bonded sand",
    why: "the book itself was not readable; the rows are from memory, their sum and result read elsewhere.",
  },
  {
    what: "Strength against minutes mulled",
    why: "no published curve with numbers was found; mulling's curve is held to certified fits of its form and to simulated founders.",
  },
  {
    what: "Clay burnt by a pour of aluminium, brass or bronze",
    why: "no published figure was found; ours follow from a plate's heat and are tagged our own. The wear factor was read for iron only.",
  },
  {
    what: "Depth of burnt sand behind a casting",
    why: "no measured depth was found; held to the closed form and to a program of explicit differences.",
  },
  {
    what: "Actual surface by air and the coefficient of angularity",
    why: "no example with inputs and result could be read; the theoretical surface is worked out by hand.",
  },
  {
    what: "Permeability from fineness",
    why: "a model; six published sands are too few to fit it, so four lie in its range and two clayey ones are refused.",
  },
  {
    what: "Ranges by class of casting",
    why: "the old handbook table could not be read again; it is for natural-bonded sands, and is drawn without deciding a finding.",
  },
  {
    what: "Water lost by a heap outdoors",
    why: "no measured heap is at hand; the parts of the model are held one by one.",
  },
  {
    what: "Weighed blends and the steady state of a heap",
    why: "no published example is at hand; mass is held to balance, and the closed form to the steps.",
  },
  {
    what: "JCGM 101:2008 9.3 to 9.5, GUM H.3",
    why: "inputs were read; the printed results are from memory. Where plain draws were worked out apart they have a row of their own.",
  },
  {
    what: "NIST StRD beyond the sets above",
    why: "data and certified values of the others were not at hand whole; none was left out for a poor result.",
  },
];

/** What, how many, covered, and the test that holds it. */
export const simulated: readonly (readonly [string, string, string, string])[] = [
  [
    "likely range of a home stack, random sands on random stacks",
    "4,000",
    "96 % (one mode 99, two 97, gap-graded 94, river 95, crushed 100, screened 95, blend 92), median width a quarter of the possible one",
    "sand/home-stack",
  ],
  [
    "the same, five published sievings thinned every third way",
    "about 2,960",
    "93 %: natural bonded 100, Korean 96, construction 95, student sheet 93; a made-up exercise with three peaks one sieve wide 84",
    "sand/home-stack",
  ],
  [
    "the whole ± of a fineness number, four grabs on a full stack; one sieving on six sieves",
    "400; 800 (2,000; 4,000 in the bench)",
    "96 %; 95 %",
    "sand/fineness-figure",
  ],
  ["curve, new batch, aim of a trial of 5 to 12 batches", "880", "95 %; 95 %; 95 %", "trial/coverage"],
  ["a chance of 70 % of meeting the aims", "880", "comes true in 65 to 75 %", "trial/coverage"],
  ["offset of two blocks", "1,500", "95 %", "trial/block-difference"],
];
