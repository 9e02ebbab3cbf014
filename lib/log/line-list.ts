// Numbers of lines in words.

/** "line 5", "lines 5 to 17", "lines 5 to 9, 12 and 14"; more than five runs end in "and more". Lines ascend. */
export function lineList(lines: readonly number[]): string {
  const runs: [first: number, last: number][] = [];
  for (const line of lines) {
    const run = runs.at(-1);
    if (run && line === run[1] + 1) run[1] = line;
    else runs.push([line, line]);
  }
  const words = runs
    .slice(0, 5)
    .map(([first, last]) => (first === last ? `${first}` : `${first} to ${last}`));
  if (runs.length > 5) words.push("more");
  const all = words.length === 1 ? words[0]! : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
  return `${lines.length === 1 ? "line" : "lines"} ${all}`;
}
