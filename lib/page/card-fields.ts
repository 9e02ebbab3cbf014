// A card's boxes and its lines of the log, both from what the log's reader knows of the test.

import { formsOf, type TestField } from "../log/test-forms.ts";
import type { Card, CardBox } from "./card-kinds.ts";

/** The readings of the card's test that are written down each time, in the order of the log. */
export function readingBoxes({ test }: Card): readonly CardBox[] {
  if (!test) return [];
  if (test.name === "squeeze") return [{ key: "squeeze", unit: "", says: "step, 1 to 5" }];
  return fieldsOf(test).map(({ key, unit, says, fromRig }) => ({
    key,
    unit,
    says: fromRig === undefined ? says : `${says}; leave out what the rig says`,
  }));
}

/** The lines to copy. Each blank is ____; filled gives it a figure by its key, to try the lines out. */
export function cardYaml(card: Card, filled: (key: string) => string = () => "____"): string {
  const { test, yaml } = card;
  if (yaml !== undefined) return fillIn(yaml, filled);
  if (!test) return "";
  const head = `batches:\n  ____:\n    date: ____`;
  if (test.name === "squeeze") return fillIn(`${head}\n    squeeze: ____`, filled);
  const parts = [
    test.method === undefined ? "" : `method: ${test.method}`,
    ...card.once.flatMap(({ key }) => (key === "rig" || key === "scale" ? [`${key}: ____`] : [])),
    ...fieldsOf(test).flatMap(({ key, unit, fromRig }) =>
      fromRig === undefined ? [`${key}: ____ ${unit}`] : [],
    ),
  ].filter((part) => part !== "");
  const one = `      - { ${parts.join(", ")} }`;
  return fillIn(`${head}\n    ${test.name}:\n${one}\n${one}`, filled);
}

function fieldsOf({ name, method }: NonNullable<Card["test"]>): readonly TestField[] {
  const forms = formsOf(name);
  return (
    (forms.find(({ methods }) => method !== undefined && methods.includes(method)) ?? forms[0])?.fields ?? []
  );
}

/** A blank belongs to the nearest key before it on its line; one without is a name. */
function fillIn(yaml: string, filled: (key: string) => string): string {
  return yaml
    .split("\n")
    .map((line) => {
      let of = "name";
      return line.replace(/([A-Za-z][\w. ]*): |____/g, (part, key: string | undefined) => {
        if (key === undefined) return filled(of);
        of = key.trim();
        return part;
      });
    })
    .join("\n");
}
