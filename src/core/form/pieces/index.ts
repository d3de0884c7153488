import type { Piece } from '../../plan/schema/pieces';
import type { Ground } from '../../plan/schema/plan';
import type { PlacedPart } from '../types';
import { boxParts } from './box';
import { chartParts } from './chart';
import { chimneyParts } from './chimney';
import { deckParts } from './deck';
import { fenceParts } from './fence';
import { lineParts } from './line';
import { modelParts } from './model';
import { paneParts } from './pane';
import { parapetParts } from './parapet';
import { postParts } from './post';
import { riserParts } from './riser';
import { shedParts } from './shed';
import { skylineBlockParts } from './skylineBlock';
import { stairHouseParts } from './stairHouse';
import { tankParts } from './tank';
import { wallParts } from './wall';

/**
 * The named parts of a set piece, in world coordinates, metres. Solids are closed and face outwards; sheets (a
 * deck's top, mesh, cloths, a pane's sheet, a chart's squares, windows) are open and count from both sides. A run without length
 * has no parts.
 */
export function pieceParts(piece: Piece, ground: Ground): readonly PlacedPart[] {
  switch (piece.kind) {
    case 'deck':
      return deckParts(piece, ground);
    case 'parapet':
      return parapetParts(piece);
    case 'wall':
      return wallParts(piece);
    case 'fence':
      return fenceParts(piece);
    case 'stair house':
      return stairHouseParts(piece);
    case 'shed':
      return shedParts(piece);
    case 'tank':
      return tankParts(piece);
    case 'post':
      return postParts(piece);
    case 'line':
      return lineParts(piece);
    case 'chimney':
      return chimneyParts(piece);
    case 'box':
      return boxParts(piece);
    case 'riser':
      return riserParts(piece);
    case 'model':
      return modelParts(piece);
    case 'pane':
      return paneParts(piece);
    case 'chart':
      return chartParts(piece);
    case 'skyline block':
      return skylineBlockParts(piece);
  }
}
