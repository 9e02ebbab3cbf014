/** GUM H.3, calibration of a thermometer: reading above 20 °C and observed correction, °C; read in public code that cites it. */
export const thermometer = {
  t: [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511].map(
    (reading) => reading - 20,
  ),
  b: [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16],
};
