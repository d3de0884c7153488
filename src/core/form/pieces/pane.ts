import { standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { facing, frame } from './making/holed';
import { fixed, type PieceOf } from './making/placed';

/** Refractive index of window glass, from memory. */
const GLASS_INDEX = 1.52;
/** Light through a clear sheet seen square on, both faces reflecting to and fro: 2n ÷ (n² + 1), from Fresnel. */
const GLASS_OPENNESS = (2 * GLASS_INDEX) / (GLASS_INDEX * GLASS_INDEX + 1);
const BAR_METRES = 0.04;
const FRAME_DEPTH_METRES = 0.05;

/**
 * A sheet of glass or mirror in a thin `frame` of the record's outer size. The `sheet` is flat and faces the
 * heading; glass lets most light through and mirrors as well. A mirror has a `back` that hides what is behind it.
 */
export function paneParts(pane: PieceOf<'pane'>): readonly PlacedPart[] {
  const placement = standingAt(pane.at, pane.headingDegrees);
  const { widthMetres: width, heightMetres: height } = pane;
  const bar = Math.min(BAR_METRES, width / 5, height / 5);
  const outer = { x: [-width / 2, width / 2], y: [0, height] } as const;
  const inner = { x: [bar - width / 2, width / 2 - bar], y: [bar, height - bar] } as const;
  const half = Math.min(FRAME_DEPTH_METRES, bar) / 2;
  const surround = new ShapeBuilder();
  frame(surround, outer, inner, [-half, half]);
  const sheet = new ShapeBuilder().quad(...facing(inner.x, inner.y, 0));
  const mirror = { normal: [0, 0, -1], point: [0, height / 2, 0] } as const;
  const parts = [
    fixed(
      'sheet',
      pane.finish === 'glass'
        ? sheet.finish({ substance: 'glass', openness: GLASS_OPENNESS, mirror }, placement)
        : sheet.finish({ substance: 'mirror', mirror }, placement),
    ),
    fixed('frame', surround.finish({ substance: 'dark metal' }, placement)),
  ];
  if (pane.finish === 'mirror') {
    const [low, high] = [inner.y[0], inner.y[1]];
    const board = new ShapeBuilder().box(
      [0, (low + high) / 2, half * 0.6],
      [inner.x[1] - inner.x[0], high - low, half * 0.4],
    );
    parts.push(fixed('back', board.finish({ substance: 'boards' }, placement)));
  }
  return parts;
}
