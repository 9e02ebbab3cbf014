import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["tests/**/*.test.ts"],
    env: { TZ: "UTC" },
    // Files that run one after the other share what they load: the library, the drawing library, a browser.
    isolate: false,
    // One for each of two cores: by itself vitest leaves one of them idle.
    maxWorkers: 2,
    testTimeout: 180_000,
    hookTimeout: 180_000,
    reporters: ["default", "./tests/tally.ts"],
  },
});
