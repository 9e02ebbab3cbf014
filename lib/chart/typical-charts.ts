// The typical curves of the trade as charts: what is drawn comes from lib/sand, the founder's batches on top.

import type { Bond } from "../sand/metals.ts";
import {
  permeabilityModel,
  permeabilityModelOrigin,
  permeabilityModelRange,
} from "../sand/permeability-model.ts";
import { temperMoisture } from "../sand/temper-moisture.ts";
import { type ClayKind, temperOrigins, temperWayNames } from "../sand/temper-ways.ts";
import {
  typicalPermeability,
  typicalPermeabilityOrigin,
  typicalPermeabilityRange,
} from "../sand/typical-permeability.ts";
import { type PublishedPoint, publishedPoints } from "../sand/typical-points.ts";
import { typicalStrength, typicalStrengthOrigin, typicalStrengthRange } from "../sand/typical-strength.ts";
import type { TypicalOrigin, TypicalValue } from "../sand/typical-value.ts";
import type { Chart } from "./chart.ts";
import { figure } from "./text.ts";
import { typicalCurveChart } from "./typical-curve-chart.ts";
import { inPsi } from "./typical-in-psi.ts";
import type { TypicalBatch, TypicalCurve, TypicalCurveInput, TypicalPublished } from "./typical-input.ts";

interface Own {
  readonly name: string;
  readonly batches: readonly TypicalBatch[];
}
const steps = 40;
const strength = { title: "green compression strength", unit: "kPa" } as const;
const permeability = { title: "permeability number", unit: "" } as const;
const clayAxis = (bond: Bond, takenAsLive = false) =>
  bond === "bentonite"
    ? ({
        title: takenAsLive ? "bentonite, taken as live" : "bentonite",
        unit: "%",
        basis: "dry sand and clay",
      } as const)
    : ({ title: "clay by wash", unit: "%", basis: "dry sand" } as const);

/** Clay added is not live clay: where it has to stand in for it, axis, caption and text say so. */
interface ClayStated {
  /** True where the batches' clay is what was added, which these relations take as live. */
  readonly takenAsLive?: boolean;
}
const stated = (takenAsLive = false): string => (takenAsLive ? ", the clay added taken as live" : "");

/**
 * Green compression strength against clay, at a stated moisture and compactability. Bentonite: the bond relations'
 * range, see typicalStrength. Natural sand: published points only, because clay alone does not order their strength.
 * Arguments as in typicalStrength; outside its range there is no curve.
 *
 *     strengthByClayChart({ name: "strength-by-clay", bond: "bentonite", moistureOfDampPercent: 3.5,
 *       compactabilityPercent: 45, batches: [] })
 */
export function strengthByClayChart({
  name,
  batches,
  bond,
  strengthUnit = "kPa",
  takenAsLive,
  ...at
}: Own &
  ClayStated & {
    readonly bond: Bond;
    /** What the strengths are drawn in; the batches are given in kPa either way. */
    readonly strengthUnit?: "kPa" | "psi";
    readonly moistureOfDampPercent: number;
    readonly compactabilityPercent: number;
    readonly mullingEfficiencyPercent?: number;
  }): Chart {
  const { moistureOfDampPercent: moisture, compactabilityPercent, mullingEfficiencyPercent: mulled } = at;
  const curve = curveOf(
    "bond relation",
    typicalStrengthOrigin,
    typicalStrengthRange.clayPercent,
    (clayPercent) => typicalStrength({ clayPercent, ...at }),
  );
  const mulling = mulled === undefined ? "mulling not stated" : `mulling efficiency ${figure(mulled)} %`;
  const bentonite = bond === "bentonite";
  const input: TypicalCurveInput = {
    name,
    axis: clayAxis(bond, takenAsLive),
    property: strength,
    curves: bentonite ? [curve] : [],
    published: published(bond, "clayPercent", "strengthKPa"),
    batches,
    ...(bentonite
      ? {
          conditions: `at ${figure(moisture)} % water of damp mass, compactability ${figure(compactabilityPercent)} %, ${mulling}${stated(takenAsLive)}`,
        }
      : {}),
  };
  if (strengthUnit === "kPa") return typicalCurveChart(input);
  return { ...typicalCurveChart(inPsi(input)), data: typicalCurveChart(input).table };
}

/**
 * Permeability number against clay at a stated moisture: one published bentonite sand's own surface (see
 * typicalPermeability), or natural sands as points only.
 *
 *     permeabilityByClayChart({ name: "permeability-by-clay", bond: "bentonite", moistureOfDampPercent: 4, batches: [] })
 */
export function permeabilityByClayChart({
  name,
  batches,
  bond,
  moistureOfDampPercent,
  takenAsLive,
}: Own & ClayStated & { readonly bond: Bond; readonly moistureOfDampPercent: number }): Chart {
  const { clayPercent } = typicalPermeabilityRange;
  const curve = curveOf("one published sand", typicalPermeabilityOrigin, clayPercent, (clay) =>
    typicalPermeability({ clayPercent: clay, moistureOfDampPercent }),
  );
  const bentonite = bond === "bentonite";
  return typicalCurveChart({
    name,
    axis: clayAxis(bond, takenAsLive),
    property: permeability,
    curves: bentonite ? [curve] : [],
    published: published(bond, "clayPercent", "permeability", ({ label, moisturePercent }) =>
      bentonite ? `${figure(moisturePercent ?? Number.NaN)} % water` : label,
    ),
    batches,
    ...(bentonite
      ? { conditions: `at ${figure(moistureOfDampPercent)} % water of damp mass${stated(takenAsLive)}` }
      : {}),
  });
}

/**
 * Permeability number against moisture at a stated bentonite content (6 to 8 %), as in typicalPermeability, with the
 * published bentonite points.
 *
 *     permeabilityByMoistureChart({ name: "permeability-by-moisture", clayPercent: 8, batches: [] })
 */
export function permeabilityByMoistureChart({
  name,
  batches,
  clayPercent,
}: Own & { readonly clayPercent: number }): Chart {
  const { moisturePercent } = typicalPermeabilityRange;
  const curve = curveOf("one published sand", typicalPermeabilityOrigin, moisturePercent, (moisture) =>
    typicalPermeability({ clayPercent, moistureOfDampPercent: moisture }),
  );
  return typicalCurveChart({
    name,
    axis: { title: "moisture", unit: "%", basis: "damp mass" },
    property: permeability,
    curves: [curve],
    published: published("bentonite", "moisturePercent", "permeability", withClay),
    batches,
    conditions: `at ${figure(clayPercent)} % bentonite`,
  });
}

/**
 * Moisture of temper against bentonite, the four ways of temperMoisture side by side, with the founder's batches.
 *
 *     temperChart({ name: "temper", clayKind: "sodium", batches: [] })
 */
export function temperChart({
  name,
  batches,
  clayKind,
  compactabilityPercent = 45,
  takenAsLive,
}: Own & ClayStated & { readonly clayKind: ClayKind; readonly compactabilityPercent?: number }): Chart {
  const curves = temperWayNames.map((way, i) =>
    curveOf(way, temperOrigins[way], { low: 4, high: 12 }, (clayPercent) => {
      return temperMoisture({ clayPercent, clayKind, compactabilityPercent }).ways[i]!;
    }),
  );
  return typicalCurveChart({
    name,
    axis: clayAxis("bentonite", takenAsLive),
    property: { title: "moisture of temper", unit: "%", basis: "damp mass" },
    curves,
    published: [],
    batches,
    conditions: `at compactability ${figure(compactabilityPercent)} %, ${clayKind === "not known" ? "kind of clay not known" : `${clayKind} bentonite`}${stated(takenAsLive)}`,
  });
}

/**
 * Permeability number against grain fineness number by the model of permeabilityModel, a guide for sands low in clay,
 * with the published points of the bond: clayey natural sands lie far below it and show why it is refused for them.
 *
 *     permeabilityByFinenessChart({ name: "permeability-by-fineness", bond: "natural", clayPercent: 0, batches: [] })
 */
export function permeabilityByFinenessChart({
  name,
  batches,
  bond,
  ...at
}: Own & {
  readonly bond: Bond;
  readonly clayPercent: number;
  readonly porosity?: number;
  readonly angularity?: number;
}): Chart {
  const curve = curveOf("model, not measured", permeabilityModelOrigin, permeabilityModelRange.gfn, (gfn) =>
    permeabilityModel({ gfn, ...at }),
  );
  return typicalCurveChart({
    name,
    axis: { title: "grain fineness number", unit: "" },
    property: permeability,
    curves: [curve],
    published: published(bond, "gfn", "permeability", withClay),
    batches,
    conditions: `for sands low in clay, ${at.porosity === undefined ? "voids 0.36 to 0.44" : `voids ${figure(at.porosity, 2)}`}`,
  });
}

function curveOf(
  label: string,
  { holds, source, tag }: TypicalOrigin,
  { low, high }: { readonly low: number; readonly high: number },
  at: (x: number) => TypicalValue,
): TypicalCurve {
  const points = Array.from({ length: steps + 1 }, (_, i) => low + ((high - low) * i) / steps).flatMap(
    (x) => {
      const found = at(x);
      return found.value === undefined ? [] : [{ x, value: found.value, low: found.low!, high: found.high! }];
    },
  );
  return { label, holds, source, tag, points };
}

const withClay = ({ label, clayPercent }: PublishedPoint) =>
  clayPercent === undefined ? label : `${figure(clayPercent, 0)} % clay`;

/** The bond's published points that have both figures. */
function published(
  bond: Bond,
  x: "clayPercent" | "moisturePercent" | "gfn",
  y: "strengthKPa" | "permeability",
  label: (point: PublishedPoint) => string = (point) => point.label,
): TypicalPublished[] {
  return publishedPoints.flatMap((point) => {
    const [at, value] = [point[x], point[y]];
    if (point.bond !== bond || at === undefined || value === undefined) return [];
    const range = y === "strengthKPa" ? point.strengthRangeKPa : undefined;
    const counted = point.clayIs === undefined || x !== "clayPercent" ? "" : `; clay: ${point.clayIs}`;
    const source = `${point.label}: ${point.source}${counted}`;
    return [{ label: label(point), x: at, y: value, ...range, tag: point.tag, source }];
  });
}
