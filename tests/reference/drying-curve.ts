/** Cumulative loss, %, minute by minute under the heater: Brawijaya lab report (Scribd 295174056), Table 1.3. */
export const DRYING = [
  [0.23, 1.14, 2.62, 4.05, 4.83, 5.13, 5.19, 5.2, 5.2, 5.21],
  [0.33, 1.14, 2.26, 3.16, 3.76, 4.2, 4.48, 4.66, 4.76, 4.81],
  [0.2, 0.76, 1.73, 2.67, 3.39, 3.92, 4.39, 4.79, 5.13, 5.38],
];
