// Ends a run with one plain line, and says what was skipped and why.

import type { Reporter, TestModule } from "vitest/node";

export default class Tally implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    let passed = 0;
    let skipped = 0;
    let failed = errors.length;
    for (const module of modules) {
      if (module.errors().length > 0) failed++;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === "passed") passed++;
        else if (state === "failed") failed++;
        else skipped++;
      }
    }
    const tail = skipped > 0 ? `, ${skipped} skipped` : "";
    console.log(`\n${passed} passed, ${failed} failed${tail}`);
  }
}
