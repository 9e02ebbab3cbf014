// How many batches the advice of the next trial saves against going on evenly: tsx tests/bench/next-trial.ts [founders, 100].

import { batchesSaved, wantedWidth } from "../trial/next-trial.ts";

const tried = batchesSaved(900, Number(process.argv[2] ?? 100));
const mean = (of: (one: (typeof tried)[number]) => number): number =>
  tried.reduce((all, one) => all + of(one), 0) / tried.length;
const saved = mean(({ advised, evenly }) => evenly - advised);
const error = Math.sqrt(mean(({ advised, evenly }) => (evenly - advised - saved) ** 2) / (tried.length - 1));
console.log(
  `batches until the aim is ${wantedWidth} % wide: advised ${mean(({ advised }) => advised).toFixed(2)}, evenly ${mean(({ evenly }) => evenly).toFixed(2)}, saved ${saved.toFixed(2)} (standard error ${error.toFixed(2)}), over ${tried.length} founders who can meet their aims`,
);
