import { useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { changeBeat } from '../../../core/plan/edits/changeBeat';
import { renameItem } from '../../../core/plan/edits/renameItem';
import type { Beat } from '../../../core/plan/schema/cast';
import type { Plan } from '../../../core/plan/schema/plan';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { beatsInTime, keyOf, type Thing } from '../../../desk/blocking/things';
import { editPlan } from '../fields/edit';
import { focusThing } from './doing';
import { measure, reachOf, useDrawn } from './drawing';
import { Handle } from './Handle';
import { cutTo, placeAlong, reaches } from './labels';
import { xOf } from './scale';

/** Beside a beat's dotted line, pixels. */
const INDENT = 5;
/** So much of a name that is cut must be left, pixels. */
const LEAST_NAME = 44;

/** A name typed in its place: Enter or leaving it takes it, Escape gives the old one back. */
export function NameInput(props: { readonly thing: Thing; readonly label: string; readonly spoken: string }) {
  const { thing, label, spoken } = props;
  const input = useRef<HTMLInputElement>(null);
  const left = useRef(false);
  const [fault, setFault] = useState<string | null>(null);
  useEffect(() => {
    input.current?.focus();
    input.current?.select();
  }, []);
  const done = (back: boolean): void => {
    left.current = true;
    blockingStore.setState({ naming: null });
    if (back) focusThing(thing);
  };
  const take = (): void => {
    if (left.current) return;
    const text = input.current?.value.trim() ?? '';
    const sentence =
      text === label
        ? null
        : editPlan('rename', (plan) =>
            thing.type === 'beat'
              ? changeBeat(plan, { beatId: thing.beatId, patch: { label: text } })
              : thing.type === 'performer'
                ? renameItem(plan, { id: thing.performerId, label: text })
                : plan,
          );
    setFault(text === '' ? 'It needs a name of at least one letter.' : sentence);
    if (text !== '' && sentence === null) done(true);
  };
  return (
    <span className="name-input">
      <input
        ref={input}
        aria-label={spoken}
        aria-invalid={fault !== null}
        defaultValue={label}
        maxLength={80}
        autoComplete="off"
        onPointerDown={(event) => event.stopPropagation()}
        onBlur={() => {
          take();
          if (!left.current) done(false);
        }}
        onKeyDown={(event) => {
          event.stopPropagation();
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') done(true);
        }}
      />
      {fault === null ? null : (
        <span className="err" role="alert">
          {fault}
        </span>
      )}
    </span>
  );
}

/** In how many rows the beats are lettered: one where every name has room. */
export function beatRows(
  beats: readonly Beat[],
  placesX: readonly number[],
  touch: boolean,
  until: number,
): 1 | 2 {
  const width = measure(touch);
  const fits = beats.every(({ label }, k) => {
    const next = placesX[k + 1] ?? until;
    return width(`${k + 1}  ${label}`) + INDENT + 10 <= next - placesX[k];
  });
  return fits ? 1 : 2;
}

/** The beats over the lanes: number and name at each dotted line, cut where the next begins. */
export function Beats({ plan, rows }: { readonly plan: Plan; readonly rows: 1 | 2 }) {
  const { scale, width, touch } = useDrawn();
  const naming = useStore(blockingStore, (state) => state.naming);
  const beats = beatsInTime(plan);
  const places = beats.map(({ atSeconds }) => xOf(scale, atSeconds));
  const letters = measure(touch);
  const placed = placeAlong(
    beats.map(({ label }, k) => ({ x: places[k] + INDENT, texts: [`${k + 1}  ${label}`, `${k + 1}`] })),
    letters,
    width,
    rows,
  );
  const reached = reaches(places, reachOf(touch));
  return (
    <div className="beats" data-rows={rows}>
      {beats.map((beat, k) => {
        const { text, row } = placed[k];
        const thing: Thing = { type: 'beat', beatId: beat.id };
        const next = places[k + rows] ?? width;
        const room = next - places[k] - INDENT - 10;
        const full = `${k + 1}  ${beat.label}`;
        const shown = text === full || room < LEAST_NAME ? text : cutTo(full, letters, room);
        const own = letters(shown) + INDENT + 4;
        const { before, after } = reached[k];
        return (
          <Handle
            key={beat.id}
            thing={thing}
            plan={plan}
            x={places[k]}
            before={before}
            after={Math.max(after, Math.min(own, next - places[k]))}
            className={`row-${row}`}
          >
            <i className="dot" style={{ left: before }} aria-hidden="true" />
            {naming === keyOf(thing) ? (
              <NameInput thing={thing} label={beat.label} spoken={`name of beat ${k + 1}`} />
            ) : (
              <span
                className="beat-name"
                style={{ left: before + INDENT }}
                data-full={full}
                aria-hidden="true"
              >
                {shown}
              </span>
            )}
          </Handle>
        );
      })}
    </div>
  );
}

/** Dotted lines through all lanes, one for each beat. */
export function BeatLines({ plan }: { readonly plan: Plan }) {
  const { scale } = useDrawn();
  const chosen = useStore(blockingStore, (state) =>
    state.chosen?.type === 'beat' ? state.chosen.beatId : null,
  );
  return (
    <div className="beat-lines" aria-hidden="true">
      {plan.beats.map(({ id, atSeconds }) => (
        <i key={id} className={id === chosen ? 'chosen' : ''} style={{ left: xOf(scale, atSeconds) }} />
      ))}
    </div>
  );
}
