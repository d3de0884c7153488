import { useState } from 'react';
import { WALKING_PACE } from '../../../core/kit/supports';
import { spanOf } from '../../../core/optics/camera';
import { keysOf } from '../../../core/optics/cameraKey';
import { heldKey } from '../../../core/optics/heldKey';
import { paceOf, speedAt } from '../../../core/optics/pace';
import { addKey, changeKeys, removeKey } from '../../../core/plan/edits/changeKeys';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import type { DepartmentFault } from '../../../core/report/cameraNotices';
import { formatLength } from '../../../core/units/lengths';
import { NBSP } from '../../../core/units/numbers';
import { formatSeconds } from '../../../core/units/seconds';
import { goToSeconds } from '../../../desk/choose';
import { useLive, useSession } from '../../../desk/hooks';
import { liveStore } from '../../../desk/liveStore';
import { Segmented } from '../../parts/Segmented';
import { edit } from './editing';
import { MoveFaults } from './MoveFaults';
import { MoveKeyFields } from './MoveKeyFields';
import { OperatorFields } from './MoveOperator';
import { SwayFields } from './MoveSway';
import './move.css';

const speedWord = (metresPerSecond: number): string => `${metresPerSecond.toFixed(1)}${NBSP}m/s`;
/** Two keys nearer to each other than this are at one moment, seconds. */
const SAME_SECONDS = 0.02;

/** How fast the camera goes: now, and at most. */
function SpeedLine({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const lengths = useSession((state) => state.lengths);
  const now = useLive((state) => Math.round(speedAt(plan, setup, state.seconds) * 10) / 10);
  const { metres, fastestMetresPerSecond, atSeconds } = paceOf(plan, setup);
  if (metres < 0.01) return <p className="advice">The camera stays where it is.</p>;
  return (
    <p className="advice">
      {formatLength(metres, lengths)} in all, {speedWord(now)} now, at most{' '}
      <b>{speedWord(fastestMetresPerSecond)}</b> at {formatSeconds(atSeconds)}. Somebody walks at{' '}
      {speedWord(WALKING_PACE)}.
    </p>
  );
}

/** A new key that holds the camera as it is at the playhead. */
function keyHere(plan: Plan, setup: Setup): number | null {
  const [from, to] = spanOf(plan, setup);
  const seconds = Math.min(to, Math.max(from, liveStore.getState().seconds));
  const there = keysOf(plan, setup).findIndex((key) => Math.abs(key.atSeconds - seconds) < SAME_SECONDS);
  if (there >= 0) return there;
  const beat = plan.beats.find(({ atSeconds }) => Math.abs(atSeconds - seconds) < SAME_SECONDS);
  edit('add a key', (before) =>
    addKey(before, { setupId: setup.id, key: heldKey(plan, setup, seconds, beat?.id) }),
  );
  return keysOf(plan, setup).filter((key) => key.atSeconds < seconds).length;
}

/** The keys of a move, its speed, whom the operator holds, and the unrest of whoever carries it. */
export function MoveSection(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly faults: readonly DepartmentFault[];
}) {
  const { plan, setup, faults } = props;
  const [open, setOpen] = useState(0);
  const setupId = setup.id;
  const keys = keysOf(plan, setup);
  const momentWord = (index: number): string => {
    const beat = plan.beats.find(({ id }) => id === setup.move.keys[index]?.beat);
    const at = formatSeconds(keys[index].atSeconds);
    return beat ? `${at}, ${beat.label}` : at;
  };
  return (
    <section className="group" aria-label="Move">
      <h4>{keys.length === 1 ? 'Move, one key' : `Move, ${keys.length} keys`}</h4>
      <SpeedLine plan={plan} setup={setup} />
      <MoveFaults faults={faults} about="pace" />
      <ul className="move-keys">
        {keys.map((key, index) => (
          <li key={`${key.atSeconds}`}>
            <div className="of-part">
              <button
                type="button"
                className="bare"
                aria-expanded={open === index}
                onClick={() => {
                  setOpen(open === index ? -1 : index);
                  goToSeconds(key.atSeconds);
                }}
              >
                Key {index + 1}, {momentWord(index)}
              </button>
              {keys.length > 1 ? (
                <button
                  type="button"
                  className="bare"
                  onClick={() =>
                    edit('take out a key', (before) => removeKey(before, { setupId, keyIndex: index }))
                  }
                >
                  Take it out<span className="vh"> key {index + 1}</span>
                </button>
              ) : null}
            </div>
            {open === index ? (
              <MoveKeyFields
                plan={plan}
                setup={setup}
                cameraKey={setup.move.keys[index]}
                keyIndex={index}
                seconds={key.atSeconds}
                faults={faults}
              />
            ) : (
              (['along', 'key', 'zoom'] as const).map((about) => (
                <MoveFaults key={about} faults={faults} about={about} keyIndex={index} />
              ))
            )}
          </li>
        ))}
      </ul>
      <div className="acts">
        <button
          type="button"
          onClick={() => {
            const index = keyHere(plan, setup);
            if (index !== null) setOpen(index);
          }}
        >
          Key it here
        </button>
        {keys.length > 1 ? (
          <Segmented
            label="Between keys"
            choices={[
              { value: 'eased', word: 'eased' },
              { value: 'linear', word: 'linear' },
            ]}
            chosen={setup.move.ease}
            onChoose={(ease) =>
              edit('ease the move', (before) => changeKeys(before, { setupId, change: (same) => same, ease }))
            }
          />
        ) : null}
      </div>
      <OperatorFields plan={plan} setup={setup} />
      <SwayFields setup={setup} />
    </section>
  );
}
