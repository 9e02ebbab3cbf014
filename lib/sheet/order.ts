// In which order columns and foot figures are worked out, and who needs each other in a circle.

export interface Order {
  /** Everything outside circles, each after what it needs; what needs a circle comes too. */
  readonly order: readonly string[];
  /** Each circle as a walk through it: every member needs the next, the last the first. All members: see in. */
  readonly circles: readonly { readonly walk: readonly string[]; readonly members: readonly string[] }[];
}

/**
 * needs: by name, in the order of the sheet; names that are not among the keys need nothing.
 * Method: A. B. Kahn, Communications of the ACM 5 (1962) 558–562; circles are the strongly connected parts,
 * R. Tarjan, SIAM Journal on Computing 1 (1972) 146–160, without recursion.
 */
export function orderByNeed(needs: ReadonlyMap<string, readonly string[]>): Order {
  const parts = connectedParts(needs);
  const order: string[] = [];
  const circles: { walk: readonly string[]; members: readonly string[] }[] = [];
  for (const part of parts) {
    const [only] = part;
    if (part.length === 1 && !needs.get(only!)!.includes(only!)) order.push(only!);
    else circles.push({ walk: walkOf(part, needs), members: part });
  }
  return { order, circles };
}

/** Each part after the parts that it needs. */
function connectedParts(needs: ReadonlyMap<string, readonly string[]>): string[][] {
  const index = new Map<string, number>();
  const low = new Map<string, number>();
  const open: string[] = [];
  const isOpen = new Set<string>();
  const parts: string[][] = [];
  const rank = new Map([...needs.keys()].map((name, k) => [name, k]));
  for (const root of needs.keys()) {
    if (index.has(root)) continue;
    const path: { readonly name: string; next: number }[] = [];
    const enter = (name: string): void => {
      index.set(name, index.size);
      low.set(name, index.get(name)!);
      open.push(name);
      isOpen.add(name);
      path.push({ name, next: 0 });
    };
    enter(root);
    while (path.length > 0) {
      const top = path.at(-1)!;
      const need = needs.get(top.name)![top.next++];
      if (need === undefined) {
        path.pop();
        const above = path.at(-1);
        if (above) low.set(above.name, Math.min(low.get(above.name)!, low.get(top.name)!));
        if (low.get(top.name) !== index.get(top.name)) continue;
        const part: string[] = [];
        let name: string;
        do {
          name = open.pop()!;
          isOpen.delete(name);
          part.push(name);
        } while (name !== top.name);
        parts.push(part.sort((a, b) => rank.get(a)! - rank.get(b)!));
      } else if (!needs.has(need)) continue;
      else if (!index.has(need)) enter(need);
      else if (isOpen.has(need)) low.set(top.name, Math.min(low.get(top.name)!, index.get(need)!));
    }
  }
  return parts;
}

/** The shortest way from the first member back to itself. */
function walkOf(part: readonly string[], needs: ReadonlyMap<string, readonly string[]>): string[] {
  const start = part[0]!;
  const members = new Set(part);
  const cameFrom = new Map<string, string>();
  const queue = [start];
  for (const name of queue) {
    for (const need of needs.get(name)!) {
      if (need === start) {
        const walk = [name];
        while (walk[0] !== start) walk.unshift(cameFrom.get(walk[0]!)!);
        return walk;
      }
      if (!members.has(need) || cameFrom.has(need)) continue;
      cameFrom.set(need, name);
      queue.push(need);
    }
  }
  return [start];
}
