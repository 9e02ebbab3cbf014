// The port of a log: the same after a restart, another one where it is taken.

import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { type Server, serve } from "../../lib/disk/serve.ts";
import { portOf } from "../../lib/disk/serve-port.ts";
import { folderWith, version } from "./saving.ts";

const nothing = () => Promise.resolve({ status: 404 });
const portIn = ({ address }: Server) => Number(new URL(address).port);

test("a log has one dynamic port, whatever is written in it, and another log another", () => {
  const [one, other] = [version(1), version(1)].map((texts) => join(folderWith(texts), "log.yaml"));
  expect(portOf(one!)).toBe(portOf(one!));
  expect(portOf(one!)).not.toBe(portOf(other!));
  expect(portOf(one!)).toBeGreaterThanOrEqual(49_152);
  expect(portOf(one!)).toBeLessThanOrEqual(65_535);
});

test("a server comes back to its port with another secret; a second one meanwhile gets another port", async () => {
  const first = await serve(nothing);
  const port = portIn(first);
  const second = await serve(nothing, { port });
  onTestFinished(() => second.close());
  expect(portIn(second)).not.toBe(port);
  await first.close();
  const again = await serve(nothing, { port });
  onTestFinished(() => again.close());
  expect(portIn(again)).toBe(port);
  expect(again.root).not.toBe(first.root);
});
