// The notebook that help shows; a test runs it as it stands.

export const EXAMPLE_NOTEBOOK = [
  'import { notebook } from "mullbook";',
  "",
  'export default notebook("Sands that I sieved", (log) => ({',
  '  question: "Which sands have I sieved, and how often?",',
  '  answer: log.sands.map((sand) => [sand.name, sand.sievings.length].join(": ")),',
  "  sections: [],",
  "}));",
  "",
].join("\n");
