// A trial whose batches stand in a CSV file; invented, as are all its figures.

import type { LogText } from "../../lib/index.ts";

export const filedTrial: readonly LogText[] = [
  {
    name: "filed-trial.yaml",
    text: `format: 1
title: Seven waters in a file
founder: Ottoline Frayne (invented)
invented: yes
metal: aluminium
bond: bentonite
aims: { compactability: 41 to 47 % }
trial: { axis: moisture }
batches file: waters.csv
`,
  },
  {
    name: "waters.csv",
    text: `batch,date,order,moisture,compactability,green compression,note
W1,2026-04-11,4,2.7 % ± 0.1 %,34.2 % ± 1 %,104 kPa ± 4 kPa,
W2,2026-04-12,7,3.0 % ± 0.1 %,40.4 % ± 1 %,98 kPa ± 4 kPa,"first heap, dry"
W3,2026-04-12,6,3.3 % ± 0.1 %,41.0 % ± 1 %,111 kPa ± 4 kPa,
W4,2026-04-11,1,3.6 % ± 0.1 %,47.8 % ± 1 %,88 kPa ± 4 kPa,
W5,2026-04-12,5,3.9 % ± 0.1 %,51.5 % ± 1 %,81 kPa ± 4 kPa,
W6,2026-04-11,2,4.2 % ± 0.1 %,55.1 % ± 1 %,73 kPa ± 4 kPa,
W7,2026-04-11,3,4.5 % ± 0.1 %,58.3 % ± 1 %,66 kPa ± 4 kPa,
`,
  },
];
