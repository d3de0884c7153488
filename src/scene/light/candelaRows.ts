import { DataTexture, FloatType, NearestFilter, RedFormat } from 'three';
import { candelaTable } from '../../core/form/photometry/candelaTable';
import type { Distribution } from '../../core/plan/schema/distribution';
import { radians } from './beam';

/** Half degrees off the axis, both ends included. */
export const COLUMNS = 361;
/** Half-planes round the axis that a table which is not the same all round is drawn with, five degrees apart. */
const PLANES = 72;

/** Where a distribution lies in the texture: its first row, and how many half-planes it has; 1 is the same all round. */
export interface Rows {
  readonly first: number;
  readonly planes: number;
}

/** What no table is needed for: the curve of beam and field. */
export const NO_ROWS: Rows = { first: 0, planes: 0 };

function rowsOf(distribution: Distribution): Float32Array {
  const { candelaAt, peakCandela, isAxial } = candelaTable(distribution);
  const planes = isAxial ? 1 : PLANES;
  return Float32Array.from(
    { length: planes * COLUMNS },
    (_, k) => candelaAt((k % COLUMNS) / 2, (Math.floor(k / COLUMNS) * 360) / planes) / peakCandela,
  );
}

/** The measured tables of all lamps as one texture: a row for each half-plane, shares of the peak by half degrees. */
export class CandelaRows {
  private readonly known = new Map<Distribution, Rows>();
  private values: Float32Array = Float32Array.from({ length: COLUMNS }, (_, k) =>
    Math.max(0, Math.cos(radians(k / 2))),
  );
  texture = textureOf(this.values);

  /** An even diffuser: the first row. */
  readonly diffuser: Rows = { first: 0, planes: 1 };

  /** Where a table lies; it is added when it is new, in a new texture. */
  rowsOf(distribution: Distribution): Rows {
    const found = this.known.get(distribution);
    if (found) return found;
    const own = rowsOf(distribution);
    const rows = { first: this.values.length / COLUMNS, planes: own.length / COLUMNS };
    const values = new Float32Array(this.values.length + own.length);
    values.set(this.values);
    values.set(own, this.values.length);
    this.values = values;
    this.texture.dispose();
    this.texture = textureOf(values);
    this.known.set(distribution, rows);
    return rows;
  }

  dispose(): void {
    this.texture.dispose();
  }
}

function textureOf(values: Float32Array): DataTexture {
  const rows = values.length / COLUMNS;
  const texture = new DataTexture(new Float32Array(values), COLUMNS, rows, RedFormat, FloatType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
}
