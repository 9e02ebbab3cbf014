// A founder's text through the reader; a log that it complains of is a fault of the simulation.

import { readLog } from "../../lib/log/read-log.ts";
import type { Log } from "../../lib/log/types.ts";

export const head = (title: string): string => `# Invented: every figure.
format: 1
title: ${title}
founder: somebody (invented)
invented: yes
metal: aluminium
bond: bentonite
`;

export function logOf(text: string): Log {
  const { value, issues } = readLog(text, { name: "simulated.yaml" });
  const wrong = issues.find(({ severity }) => severity === "error");
  if (!value || wrong)
    throw new Error(`a simulated log is wrong: ${wrong?.message ?? "no log"}\n${text.slice(0, 4000)}`);
  return value;
}
