import type { Setting } from './marks';
import type { Cell, Column } from './table';

/** What the parts of a pack that are words and tables are written with: pages of paper, or one file for a screen. */
export interface PartWriter {
  /** Begins a part. */
  newPage(part: string): void;
  heading(text: string): void;
  /** @param before what comes next: words also go beside the link's code, where no table does */
  subheading(text: string, before?: 'text' | 'table'): void;
  /** A paragraph, `indent` points in. */
  text(text: string, setting?: Setting, indent?: number): void;
  /** Begins a page where fewer points are left for words: what follows stays together. */
  keep(height: number): void;
  /** Leaves points free. */
  gap(points: number): void;
  /** Nothing where it has no rows. */
  table(columns: readonly Column[], rows: readonly (readonly Cell[])[]): void;
}
