import { sessionStore } from '../../desk/sessionStore';
import { pickTool, putDown } from '../../desk/tools/drawing';
import type { WantedPlace } from '../../desk/tools/toolStore';
import { useTool } from '../../desk/tools/useTool';

/** Has a place pressed on the overhead: the next press there, or Enter at the keys' crosshair, takes it. */
export function PickPlace({ wanted, word }: { readonly wanted: WantedPlace; readonly word: string }) {
  const picked = useTool(({ tool }) => tool.type === 'place' && tool.wanted.key === wanted.key);
  const pick = (): void => {
    sessionStore.getState().setRoofView('overhead');
    pickTool({ type: 'place', wanted });
    document.querySelector('.roof')?.scrollIntoView({ block: 'nearest' });
  };
  return (
    <div className="wide">
      {picked ? (
        <p className="advice">
          Press the place on the overhead, or point with the arrows and press Enter. <kbd>Esc</kbd> leaves it.
        </p>
      ) : null}
      <p className="acts">
        <button type="button" aria-pressed={picked} onClick={picked ? putDown : pick}>
          {picked ? 'Leave it' : word}
          <span className="vh">, the {wanted.word}</span>
        </button>
      </p>
    </div>
  );
}
