// Times of things done in turn, so that a machine that drifts drifts for all of them.

/** Milliseconds of processor time of one call: what else the machine is doing hardly changes it. */
export function processorMs(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Median of each of the named measures, taken in turn round by round; the first rounds warm up and don't count. */
export async function interleaved<Name extends string>(
  measures: { readonly [name in Name]: () => Promise<number> | number },
  { rounds, warm = 2 }: { readonly rounds: number; readonly warm?: number },
): Promise<{ readonly [name in Name]: number }> {
  const names = Object.keys(measures) as Name[];
  const times = new Map<Name, number[]>(names.map((name) => [name, []]));
  for (let round = -warm; round < rounds; round++) {
    for (const name of names) {
      const time = await measures[name]();
      if (round >= 0) times.get(name)!.push(time);
    }
  }
  return Object.fromEntries(names.map((name) => [name, median(times.get(name)!)])) as {
    readonly [name in Name]: number;
  };
}
