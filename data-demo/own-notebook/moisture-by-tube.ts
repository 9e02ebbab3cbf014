// How damp is the sand by the drop tube alone? Batches that were oven-dried as well tell what the tube means.
import * as mull from "mullbook";

export default mull.notebook("Moisture by tube", (log) => {
  const rows = mull.batchFigures(log).figures;
  const { batch, compactability, moisture } = mull.batchColumns(log);
  const curve = mull.curveThrough(compactability, moisture);
  const findings = batch.values.flatMap((name, row) => {
    const tube = compactability.values[row];
    if (!tube || moisture.values[row]) return [];
    const because = [`The tube read ${tube.value.toFixed(1)} ${compactability.unit}.`];
    const at = curve.at(tube.value);
    if (!at)
      return mull.finding(`No figure for ${name}: outside the dried batches.`, because, { tone: "doubt" });
    because.push(`A ${curve.form} through ${curve.rows} batches; the ± is that of one new batch.`);
    because.push("What oven and scale get wrong in every batch alike is not in it.");
    const [value, low, high] = [at.mean, at.newLow, at.newHigh];
    const { text } = mull.printFigure({ value, low, high, unit: moisture.unit, atLeast: true });
    return mull.finding(`${text}: so much water ${name} holds, by the tube.`, because);
  });
  const labels = batch.values;
  const chart = mull.pointsChart({ name: "tube-and-oven", labels, x: compactability, y: moisture, curve });
  const caption = "Batches by tube and oven; ± is half of the 95 % interval";
  const table = mull.columnTable({ name: "batches", caption, columns: [batch, compactability, moisture] });
  const cautions = mull.section("cautions", "Before you test", mull.trialCautions(rows));
  const result = mull.section("result", "Tube and oven", [table, chart]);
  const says = mull.section("findings", "What the figures say", findings);
  const question = "How damp is the sand, by the drop tube alone?";
  return { question, answer: findings.map(({ text }) => text), sections: [cautions, result, says] };
});
