import { createContext, useContext } from 'react';
import type { LengthSystem } from '../../../core/units/lengths';
import { textWidth } from '../../overhead/measureText';
import type { Scale } from './scale';

/** How all that lies along the timeline is drawn. */
export interface Drawn {
  readonly scale: Scale;
  /** Right end of the lanes, pixels. */
  readonly width: number;
  /** What is drawn anew when the view is scrolled, pixels: somewhat more than is seen. */
  readonly left: number;
  readonly right: number;
  readonly touch: boolean;
  readonly lengths: LengthSystem;
}

export const DrawnContext = createContext<Drawn>({
  scale: { pixelsPerSecond: 10, until: 8 },
  width: 0,
  left: 0,
  right: 0,
  touch: false,
  lengths: 'm',
});

export const useDrawn = (): Drawn => useContext(DrawnContext);

/** How far to either side a thing takes a press, pixels: a finger needs 48 in all. */
export const reachOf = (touch: boolean): number => (touch ? 24 : 9);

/** Width of a line of lettering on the timeline, pixels. */
export const measure =
  (touch: boolean, style: 'mark' | 'strong' = 'mark') =>
  (text: string): number =>
    textWidth(text, style, touch);
