// What was left out, and why: by the founder, by the reader of the log, by the curves.

import type { WriteUp } from "../finding/write-up-record.ts";
import type { Section, Text } from "./blocks.ts";
import { told } from "./write-up-question.ts";

export function writeUpLeftOut({ log, record, report }: WriteUp): Section {
  const names = log.batches.filter(({ usable }) => !usable).map(({ name }) => name);
  const faulty = log.batches.flatMap(({ name, leftOut = [] }) =>
    leftOut.map(
      (test): Text => `${name}: a reading of ${test} could not be used; the notes on the log say why.`,
    ),
  );
  const apart = report.properties.flatMap(({ test, leftOut }) => {
    const far = report.rows.filter((_, i) => leftOut[i]).map(({ batch }) => batch.name);
    return far.length === 0
      ? []
      : [`${test}: ${far.join(", ")} left off the curve, for specimens of another density.`];
  });
  const kept = report.keptOut.map(
    ({ row, why }): Text => `${row.batch.name}: left out of every curve. ${why}`,
  );
  const items: Text[] = [
    ...kept,
    ...names.map((name) => `${name}: a line of it could not be read, so the whole batch is left out.`),
    ...faulty,
    ...report.offAxis.map((name) => `${name}: without a figure on the axis, so it stands on no curve.`),
    ...apart,
  ];
  return {
    role: "data",
    title: "What was left out, and why",
    blocks: [
      ...told("By the founder", record?.leftOut),
      ...(items.length > 0 ? [{ kind: "list", items } as const] : []),
      ...(items.length === 0 && (record?.leftOut.length ?? 0) === 0
        ? [{ kind: "prose", text: "Nothing: every reading of the log is in the figures." } as const]
        : []),
    ],
  };
}
