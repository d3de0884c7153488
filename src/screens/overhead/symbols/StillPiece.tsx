import type { Piece } from '../../../core/plan/schema/pieces';
import type { Ground } from '../../../core/plan/schema/plan';
import { Box } from './Box';
import { ChartSymbol } from './ChartSymbol';
import { Chimney } from './Chimney';
import { Fence } from './Fence';
import { Line } from './Line';
import { ModelPlan } from './ModelPlan';
import { PaneSymbol } from './PaneSymbol';
import { Post } from './Post';
import { Riser } from './Riser';
import { Run } from './Run';
import { Shed } from './Shed';
import { StairHouse } from './StairHouse';
import { Tank } from './Tank';

/** A set piece as it is drawn from above, a model as its file is at hand. Decks are the ground itself, and the skyline lies beyond the sheet. */
export function StillPiece({ piece, ground }: { readonly piece: Piece; readonly ground: Ground }) {
  switch (piece.kind) {
    case 'parapet':
    case 'wall':
      return <Run piece={piece} />;
    case 'fence':
      return <Fence piece={piece} />;
    case 'stair house':
      return <StairHouse piece={piece} />;
    case 'shed':
      return <Shed piece={piece} />;
    case 'tank':
      return <Tank piece={piece} />;
    case 'post':
      return <Post piece={piece} />;
    case 'line':
      return <Line piece={piece} ground={ground} />;
    case 'chimney':
      return <Chimney piece={piece} />;
    case 'riser':
      return <Riser piece={piece} />;
    case 'box':
      return <Box piece={piece} />;
    case 'model':
      return <ModelPlan piece={piece} />;
    case 'pane':
      return <PaneSymbol piece={piece} />;
    case 'chart':
      return <ChartSymbol piece={piece} />;
    case 'deck':
    case 'skyline block':
      return null;
  }
}
