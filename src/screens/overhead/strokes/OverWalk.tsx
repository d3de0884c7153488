import { useCallback } from 'react';
import type { Spot } from '../../../core/plan/schema/numbers';
import { dropStroke, endStroke, putDown, takeBackCorner } from '../../../desk/tools/drawing';
import { entryOf } from '../../../desk/tools/making';
import { useTool } from '../../../desk/tools/useTool';
import { EntryChip } from './EntryChip';
import { useToolKeys } from './useToolKeys';
import '../styles/strokes.css';

const nowhere = (): Spot => [0, 0];

/** The keys, the typed numbers and the buttons of a tool in the walk-round, whose arrow keys turn the view. */
export function OverWalk() {
  const tool = useTool((state) => state.tool);
  const drawing = useTool((state) => (state.stroke?.corners.length ?? 0) > 0);
  const entry = useTool((state) => state.entry);
  const refusal = useTool((state) => state.refusal);
  const board = useCallback(() => document.querySelector('.walk-round'), []);
  useToolKeys(board, nowhere, false);
  if (tool.type === 'hand') return null;
  const how = entryOf(tool)?.how;
  const sentence = entry?.fault ?? refusal;
  return (
    <div className="over-walk">
      {sentence !== null && (
        <p className="stroke-refusal" role="alert">
          {sentence}
        </p>
      )}
      {entry && <EntryChip />}
      <div className="finger-buttons">
        {drawing && (how === 'run' || how === 'outline') && (
          <button type="button" className="do" onClick={() => endStroke()}>
            End
          </button>
        )}
        {drawing && (
          <button type="button" onClick={takeBackCorner}>
            Take back
          </button>
        )}
        <button type="button" onClick={drawing ? () => void dropStroke() : putDown}>
          {drawing ? 'Drop' : 'Put it down'}
        </button>
      </div>
    </div>
  );
}
