import { expect, test } from "vitest";
import { csvColumnAdded } from "../../lib/log/edit-csv-column.ts";

const added = (text: string, column = "left out") => csvColumnAdded({ name: "a.csv", text }, column);

test("an empty column stands behind the last; quotes, blank lines and line ends stay", () => {
  expect(added('batch,note\r\nW1,"a, ""b"""\r\n\r\nW2,\r\n')).toBe(
    'batch,note,left out\r\nW1,"a, ""b""",\r\n\r\nW2,,\r\n',
  );
  expect(added("batch;note\nW1;x")).toBe("batch;note;left out\nW1;x;");
  expect(added("batch,note\nW1,x\n", 'why, "so"')).toBe('batch,note,"why, ""so"""\nW1,x,\n');
});

test("a file without a head, or a name that no file can hold, is left alone", () => {
  expect(added("")).toBeUndefined();
  expect(added("batch\nW1\n", "a\u0000b")).toBeUndefined();
});
