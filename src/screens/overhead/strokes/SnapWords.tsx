import { useSyncExternalStore } from 'react';
import { formatLength, METRES_PER_INCH } from '../../../core/units/lengths';
import { useSession } from '../../../desk/hooks';
import { pickTool, putDown } from '../../../desk/tools/drawing';
import {
  GRID_INCHES,
  GRID_METRES,
  SNAP_KINDS,
  type SnapSwitch,
  snapWords,
  snapWordsShort,
} from '../../../desk/tools/snapSettings';
import { useSnapSettings, useTool } from '../../../desk/tools/useTool';
import { Icon } from '../../parts/Icon';
import { Menu } from '../../parts/Menu';
import { Segmented } from '../../parts/Segmented';
import '../styles/strokes.css';

const SWITCHES: readonly SnapSwitch[] = ['grid', 'edges', 'points', 'square', 'inLine', 'distances'];

/** Narrower than this the bar has no room for a sentence, pixels: that of a tablet or a phone. */
const NARROW = '(max-width: 1199px)';

const watchWidth = (tell: () => void): (() => void) => {
  const query = matchMedia(NARROW);
  query.addEventListener('change', tell);
  return () => query.removeEventListener('change', tell);
};

const useNarrow = (): boolean => useSyncExternalStore(watchWidth, () => matchMedia(NARROW).matches);

/** What a hand snaps to, in words, with the menu that changes it; and the tape. */
export function SnapWords() {
  const settings = useSnapSettings((state) => state);
  const lengths = useSession((state) => state.lengths);
  const taping = useTool((state) => state.tool.type === 'tape');
  const [steps, chosen] =
    lengths === 'm' ? [GRID_METRES, settings.gridMetres] : [GRID_INCHES, settings.gridInches];
  const narrow = useNarrow();
  const stepWord = (step: number): string =>
    lengths === 'm' ? formatLength(step, 'm') : formatLength(step * METRES_PER_INCH, lengths);
  return (
    <>
      <Menu
        word={narrow ? snapWordsShort(settings, lengths) : snapWords(settings, lengths)}
        className="snap-words"
      >
        {SWITCHES.map((name) => (
          <label key={name}>
            <input
              type="checkbox"
              checked={settings[name]}
              onChange={(event) => settings.setSwitch(name, event.currentTarget.checked)}
            />
            {SNAP_KINDS[name]}
          </label>
        ))}
        <Segmented
          label="Step of the grid"
          choices={steps.map((step) => ({ value: String(step), word: stepWord(step) }))}
          chosen={String(chosen)}
          onChoose={(step) => settings.setGrid(lengths, Number(step))}
        />
      </Menu>
      <button
        type="button"
        className="icon"
        aria-label="Tape"
        title="Tape (T)"
        aria-pressed={taping}
        onClick={() => (taping ? putDown() : pickTool({ type: 'tape' }))}
      >
        <Icon name="tape" />
      </button>
    </>
  );
}
