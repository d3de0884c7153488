import { useRef } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { blockingStore, type Loop } from '../../../desk/blocking/blockingStore';
import { stepBeat } from '../../../desk/blocking/choosing';
import { beatsInTime } from '../../../desk/blocking/things';
import { letterOf, stepFrames } from '../../../desk/choose';
import { useLive, useSession } from '../../../desk/hooks';
import { liveStore } from '../../../desk/liveStore';
import { useDriver } from '../../overhead/useDriver';
import { SelectField } from '../../parts/Field';
import { Icon } from '../../parts/Icon';
import { Menu } from '../../parts/Menu';
import { addBeatHere } from './doing';
import { momentText } from './words';

/** The clock as a number, written past React. */
function Clock() {
  const text = useRef<HTMLElement>(null);
  useDriver(() => {
    if (text.current) text.current.textContent = momentText(liveStore.getState().seconds);
  });
  return <b className="clock" ref={text} />;
}

/** A small drawing in a button that its label names. */
function Drawn({
  label,
  path,
  act,
}: {
  readonly label: string;
  readonly path: string;
  readonly act: () => void;
}) {
  return (
    <button type="button" className="icon" aria-label={label} title={label} onClick={act}>
      <svg className="i" aria-hidden="true">
        <path d={path} />
      </svg>
    </button>
  );
}

function loopWord(plan: Plan, loop: Loop, setupId: string | null): string {
  if (loop.type === 'setup' && setupId !== null) return `setup ${letterOf(plan, setupId)}`;
  if (loop.type !== 'beats') return 'all of it';
  const numberOf = (id: string): number => beatsInTime(plan).findIndex((beat) => beat.id === id) + 1;
  return `beat ${numberOf(loop.from)} to ${numberOf(loop.to)}`;
}

/** Over what the clock runs: all of the action, the setup that is looked through, or from one beat to another. */
function LoopMenu({ plan }: { readonly plan: Plan }) {
  const loop = useStore(blockingStore, (state) => state.loop);
  const setupId = useSession((state) => state.setupId);
  const beats = beatsInTime(plan);
  const [first, last] = [beats[0], beats.at(-1)];
  const set = (next: Loop): void => blockingStore.setState({ loop: next });
  const between = first && last ? { type: 'beats' as const, from: first.id, to: last.id } : null;
  const options = beats.map(({ id, label }, k) => (
    <option key={id} value={id}>
      {k + 1} {label}
    </option>
  ));
  return (
    <Menu word={`Plays ${loopWord(plan, loop, setupId)}`} className="loop-menu">
      <label>
        <input
          type="radio"
          name="loop"
          checked={loop.type === 'whole'}
          onChange={() => set({ type: 'whole' })}
        />
        all of the action
      </label>
      {setupId === null ? null : (
        <label>
          <input
            type="radio"
            name="loop"
            checked={loop.type === 'setup'}
            onChange={() => set({ type: 'setup' })}
          />
          what setup {letterOf(plan, setupId)} covers
        </label>
      )}
      {between ? (
        <label>
          <input type="radio" name="loop" checked={loop.type === 'beats'} onChange={() => set(between)} />
          from beat to beat
        </label>
      ) : null}
      {loop.type === 'beats' ? (
        <>
          <SelectField label="from" value={loop.from} onChange={(from) => set({ ...loop, from })}>
            {options}
          </SelectField>
          <SelectField label="to" value={loop.to} onChange={(to) => set({ ...loop, to })}>
            {options}
          </SelectField>
        </>
      ) : null}
    </Menu>
  );
}

interface Props {
  readonly plan: Plan;
  readonly zoomIn: () => void;
  readonly zoomOut: () => void;
  readonly fit: () => void;
}

/** Playing, stepping, catching and the scale of the timeline. */
export function Toolbar({ plan, zoomIn, zoomOut, fit }: Props) {
  const playing = useLive((state) => state.playing);
  const { snaps, ripples, allLamps, panel } = useStore(blockingStore);
  return (
    <div className="blocking-tools" role="toolbar" aria-label="Playing and the timeline">
      <button
        type="button"
        className="icon"
        aria-label={playing ? 'Pause the action' : 'Play the action'}
        disabled={plan.beats.length < 2}
        onClick={() => liveStore.getState().setPlaying(!playing)}
      >
        {playing ? (
          <svg className="i" aria-hidden="true">
            <path d="M8 5v14M16 5v14" />
          </svg>
        ) : (
          <Icon name="play" />
        )}
      </button>
      <Clock />
      <span className="tool-group">
        <Drawn label="Beat before" path="M6 5v14M18 6l-8 6 8 6z" act={() => stepBeat(-1)} />
        <Drawn label="A frame back" path="M15 6l-6 6 6 6" act={() => stepFrames(-1)} />
        <Drawn label="A frame on" path="M9 6l6 6-6 6" act={() => stepFrames(1)} />
        <Drawn label="Next beat" path="M18 5v14M6 6l8 6-8 6z" act={() => stepBeat(1)} />
      </span>
      <LoopMenu plan={plan} />
      <span className="gap" />
      <button type="button" className="try" onClick={addBeatHere}>
        Add a beat
      </button>
      <button
        type="button"
        className="bare toggle"
        aria-pressed={snaps}
        title="Catches on beats and whole seconds; Alt lets go"
        onClick={() => blockingStore.setState({ snaps: !snaps })}
      >
        catch
      </button>
      <button
        type="button"
        className="bare toggle"
        aria-pressed={ripples}
        title="A beat that is moved takes along all after it; Shift does it once"
        onClick={() => blockingStore.setState({ ripples: !ripples })}
      >
        ripple
      </button>
      <button
        type="button"
        className="bare toggle"
        aria-pressed={allLamps}
        title="Lanes for steady lamps too"
        onClick={() => blockingStore.setState({ allLamps: !allLamps })}
      >
        lamps
      </button>
      <span className="tool-group">
        <Drawn label="Farther" path="M6 12h12" act={zoomOut} />
        <Drawn label="Nearer" path="M6 12h12M12 6v12" act={zoomIn} />
        <Drawn
          label="All of it"
          path="M4 6v12M20 6v12M8 12h8M10.5 9.5 8 12l2.5 2.5M13.5 9.5 16 12l-2.5 2.5"
          act={fit}
        />
      </span>
      <button
        type="button"
        className="bare toggle"
        aria-pressed={panel}
        aria-controls={panel ? 'blocking-panel' : undefined}
        onClick={() => blockingStore.setState({ panel: !panel })}
      >
        fields
      </button>
    </div>
  );
}
