import type { SourceKey } from '../sources';

/** A gate by its generic name: the used rectangle of film or sensor, in millimetres. */
export interface GateFormat {
  readonly id: string;
  readonly label: string;
  readonly gateMm: readonly [width: number, height: number];
  readonly source: SourceKey;
}

/** Gates of film and sensors by their generic names, from large to small. */
export const GATE_FORMATS: readonly GateFormat[] = [
  { id: 'still-35', label: 'Full frame, 36 × 24', gateMm: [36, 24], source: 'still-frame' },
  {
    id: 'full-aperture-35',
    label: '35 mm full aperture, 4-perf',
    gateMm: [24.892, 18.669],
    source: 'full-aperture',
  },
  {
    id: 'anamorphic-35',
    label: '35 mm anamorphic, 4-perf',
    gateMm: [22, 18.59],
    source: 'anamorphic-aperture',
  },
  { id: 'academy-35', label: '35 mm Academy', gateMm: [22.05, 16.03], source: 'academy-aperture' },
  { id: 'three-perf-35', label: '35 mm 3-perf', gateMm: [24.89, 13.9], source: 'gates-from-memory' },
  { id: 'two-perf-35', label: '35 mm 2-perf', gateMm: [22, 9.35], source: 'gates-from-memory' },
  { id: 'four-thirds', label: 'Micro four thirds', gateMm: [17.3, 13], source: 'gates-from-memory' },
  { id: 'super-16', label: 'Super 16', gateMm: [12.52, 7.41], source: 'gates-from-memory' },
  { id: 'standard-16', label: '16 mm', gateMm: [10.26, 7.49], source: 'sixteen-aperture' },
  { id: 'large-65', label: '65 mm, 5-perf', gateMm: [52.48, 23.01], source: 'gates-from-memory' },
];

/** The gate of that id, or null. */
export const gateFormat = (id: string): GateFormat | null =>
  GATE_FORMATS.find((format) => format.id === id) ?? null;

/** Horizontal squeezes that lenses are made with. Source: common practice, no source */
export const SQUEEZES: readonly number[] = [1, 1.25, 1.33, 1.5, 1.6, 1.65, 1.8, 2];

/** An aspect ratio that goes out. */
export interface Delivery {
  readonly id: string;
  readonly label: string;
  /** Width over height. */
  readonly aspect: number;
}

/** Aspect ratios that go out, from wide to tall. Source: common practice, no source */
export const DELIVERIES: readonly Delivery[] = [
  { id: 'scope', label: '2.39', aspect: 2.39 },
  { id: 'two-to-one', label: '2.00', aspect: 2 },
  { id: 'flat', label: '1.85', aspect: 1.85 },
  { id: 'sixteen-nine', label: '1.78, 16:9', aspect: 16 / 9 },
  { id: 'european-flat', label: '1.66', aspect: 1.66 },
  { id: 'four-three', label: '1.33, 4:3', aspect: 4 / 3 },
  { id: 'square', label: 'Square, 1:1', aspect: 1 },
  { id: 'four-five', label: 'Tall, 4:5', aspect: 4 / 5 },
  { id: 'nine-sixteen', label: 'Upright, 9:16', aspect: 9 / 16 },
];

/** The delivery whose aspect is nearest to a ratio, where it is within half a per cent; else null. */
export function deliveryOf(aspect: number): Delivery | null {
  return DELIVERIES.find((delivery) => Math.abs(delivery.aspect / aspect - 1) < 0.005) ?? null;
}
