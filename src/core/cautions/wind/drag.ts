/** Density of air, kg/m³; that of a cold night is up to a tenth more. Source: [standard-air] */
const AIR_DENSITY = 1.225;

/** Pressure of a wind, N/m², from its speed in m/s: ½ ρ v². Source: [plate-drag] */
export const pressureOf = (metresPerSecond: number): number =>
  0.5 * AIR_DENSITY * metresPerSecond * metresPerSecond;

/** The wind, m/s, whose pressure that is, N/m². Source: [plate-drag] */
export const windOfPressure = (pressure: number): number => Math.sqrt((2 * pressure) / AIR_DENSITY);

/** [how much thinner than long, coefficient]: both ends read, what is between from memory. Source: [plate-drag] */
const PLATES: readonly (readonly [slenderness: number, coefficient: number])[] = [
  [0, 1.98],
  [0.05, 1.5],
  [0.1, 1.3],
  [0.2, 1.2],
  [1, 1.17],
];
/** The same of cylinders across the wind. Source: [plate-drag] */
const CYLINDERS: readonly (readonly [slenderness: number, coefficient: number])[] = [
  [0, 1.2],
  [0.1, 0.82],
  [0.2, 0.74],
  [1, 0.63],
];

/** Between the entries of a table, in a straight line. */
function inTable(table: typeof PLATES, slenderness: number): number {
  const at = Math.min(Math.max(slenderness, 0), 1);
  const next = Math.max(
    1,
    table.findIndex(([upTo]) => upTo >= at),
  );
  const [[low, from], [high, to]] = [table[next - 1], table[next]];
  return from + ((to - from) * (at - low)) / (high - low);
}

/** Drag coefficient of a flat plate of two sides, metres, square to the wind. Source: [plate-drag] */
export const plateCoefficient = (width: number, height: number): number =>
  inTable(PLATES, Math.min(width, height) / Math.max(width, height, 1e-9));

/** Drag coefficient of a round tube, metres, across the wind, where its boundary layer is smooth. Source: [plate-drag] */
export const tubeCoefficient = (diameter: number, length: number): number =>
  inTable(CYLINDERS, diameter / Math.max(length, 1e-9));
