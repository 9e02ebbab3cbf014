// The grain of silica sand.

/** Density of quartz, kg/m³. Agreed value of settling references; measured quartz is 2648 ± 2 (from memory). */
export const QUARTZ_KG_M3 = 2650;
