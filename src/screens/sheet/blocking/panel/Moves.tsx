import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { whereabouts } from '../../../../core/form/figure/whereabouts';
import { circleAround } from '../../../../core/plan/edits/moves/circleAround';
import { comeFrom } from '../../../../core/plan/edits/moves/comeFrom';
import { stopFaceToFace } from '../../../../core/plan/edits/moves/stopFaceToFace';
import { named } from '../../../../core/plan/named';
import type { Performer } from '../../../../core/plan/schema/cast';
import type { Plan } from '../../../../core/plan/schema/plan';
import { formatLength } from '../../../../core/units/lengths';
import { blockingStore } from '../../../../desk/blocking/blockingStore';
import { beatsInTime, secondsOfBeat } from '../../../../desk/blocking/things';
import { usePlanState, useSession } from '../../../../desk/hooks';
import { SelectField } from '../../../parts/Field';
import { LengthField } from '../../../parts/LengthField';
import { NumberField } from '../../../parts/NumberField';
import { useFocusGoesOn } from '../../../parts/useFocusGoesOn';
import { beatHere } from '../doing';
import { BeatChoice, PersonChoice } from './choices';
import { cornersOfRoof } from './corners';
import { acceptProposal, dropProposal, propose } from './proposing';

/** What two people stand apart who talk. Source: common practice, no source */
const APART_METRES = 0.6;
const HALF_WAY_ROUND = 180;

/** How far apart the eyes of two people are at a moment, seen from above, metres; null where one is nowhere. */
export function eyesApart(plan: Plan, one: Performer, other: Performer, seconds: number): number | null {
  const [a, b] = [one, other].map(({ id }) => {
    const performer = plan.cast.find((each) => each.id === id);
    return performer ? whereabouts(performer, plan, seconds)?.eyes : undefined;
  });
  return a && b ? Math.hypot(a[0] - b[0], a[2] - b[2]) : null;
}

interface MoveProps {
  readonly word: string;
  readonly performer: Performer;
  /** Why it cannot be done as it is asked, where it changes nothing. */
  readonly refusal: string;
  readonly change: (plan: Plan) => Plan;
  /** The numbers, as they are asked now. */
  readonly asked: object;
  readonly children: ReactNode;
}

/** One ready move: its numbers, shown dashed on the timeline and the roof before it is done. */
function Move({ word, performer, refusal, change, asked, children }: MoveProps) {
  const [open, setOpen] = useState(false);
  const [refused, setRefused] = useState(false);
  const proposing = useStore(blockingStore, (state) => state.proposing);
  const [shown, setShown] = useState(false);
  const isShown = shown && proposing === performer.id;
  const acts = useRef<HTMLParagraphElement>(null);
  useFocusGoesOn(isShown, () => acts.current?.querySelector('button'));
  const show = (): void => {
    const done = propose(performer.id, change);
    setRefused(!done);
    setShown(done);
  };
  const latest = useRef(change);
  latest.current = change;
  // What is shown follows what is asked, and nothing else: it would follow itself round and round.
  const before = useRef(asked);
  useEffect(() => {
    if (before.current === asked) return;
    before.current = asked;
    if (isShown) propose(performer.id, latest.current);
  }, [asked, isShown, performer.id]);
  useEffect(() => dropProposal, []);
  return (
    <details
      open={open}
      onToggle={(event) => {
        setOpen(event.currentTarget.open);
        if (!event.currentTarget.open && isShown) dropProposal();
      }}
    >
      <summary>{word}</summary>
      <div className={isShown ? 'fields try' : 'fields'}>{children}</div>
      {refused ? <p className="err">{refusal}</p> : null}
      <p className="acts" ref={acts}>
        {isShown ? (
          <>
            <button type="button" className="do" onClick={() => acceptProposal(word.toLowerCase())}>
              Do it
            </button>
            <button type="button" className="bare" onClick={dropProposal}>
              Leave it
            </button>
          </>
        ) : (
          <button type="button" className="try" onClick={show}>
            Preview
          </button>
        )}
      </p>
    </details>
  );
}

/** The moves that are ready to be taken, each with its few numbers. What they write are plain marks and ways. */
export function Moves({ plan, performer }: { readonly plan: Plan; readonly performer: Performer }) {
  const lengths = useSession((state) => state.lengths);
  const committed = usePlanState((state) => state.plan);
  const others = committed.cast.filter(({ id, marks }) => id !== performer.id && marks.length > 0);
  const beats = beatsInTime(committed);
  const here = beatHere(committed) ?? '';
  const after = beats[beats.findIndex(({ id }) => id === here) + 1]?.id ?? here;
  const corners = cornersOfRoof(committed);
  const [asked, setAsked] = useState({
    other: others[0]?.id ?? '',
    fromBeat: after === here ? (beats.at(-2)?.id ?? here) : here,
    toBeat: after,
    turnDegrees: HALF_WAY_ROUND,
    radiusMetres: null as number | null,
    beat: here,
    apartMetres: APART_METRES,
    corner: '0',
  });
  const set = (part: Partial<typeof asked>): null => {
    setAsked((before) => ({ ...before, ...part }));
    return null;
  };
  const performerId = performer.id;
  const other = others.find(({ id }) => id === asked.other);
  const stays = other
    ? eyesApart(committed, performer, other, secondsOfBeat(committed, asked.fromBeat))
    : null;
  const apart = other ? eyesApart(plan, performer, other, secondsOfBeat(plan, asked.beat)) : null;
  const corner = corners[Number(asked.corner)];
  if (beats.length < 2) return null;
  const whom = (label: string): ReactNode => (
    <PersonChoice label={label} value={asked.other} people={others} onChange={(id) => set({ other: id })} />
  );
  return (
    <section className="group moves-of">
      <h4>Ready moves</h4>
      {other ? (
        <>
          <Move
            word="Circle"
            performer={performer}
            asked={asked}
            refusal={`${named(performer.label)} needs a mark, and the second beat has to be after the first.`}
            change={(before) =>
              circleAround(before, {
                performerId,
                aroundId: other.id,
                fromBeat: asked.fromBeat,
                toBeat: asked.toBeat,
                turnDegrees: asked.turnDegrees,
                ...(asked.radiusMetres === null ? {} : { radiusMetres: asked.radiusMetres }),
              })
            }
          >
            {whom('around')}
            <BeatChoice
              plan={committed}
              label="from beat"
              value={asked.fromBeat}
              onChange={(fromBeat) => set({ fromBeat })}
            />
            <BeatChoice
              plan={committed}
              label="to beat"
              value={asked.toBeat}
              onChange={(toBeat) => set({ toBeat })}
            />
            <NumberField
              label="how far round"
              unit="°"
              value={asked.turnDegrees}
              commit={(turnDegrees) => set({ turnDegrees })}
            />
            <LengthField
              label="how far away"
              metres={asked.radiusMetres ?? stays}
              commit={(radiusMetres) => set({ radiusMetres })}
            />
          </Move>
          <Move
            word="Stop face to face"
            performer={performer}
            asked={asked}
            refusal={`${named(performer.label)} and ${named(other.label)} need a mark each, and some distance between them.`}
            change={(before) =>
              stopFaceToFace(before, {
                performerId,
                otherId: other.id,
                beatId: asked.beat,
                apartMetres: asked.apartMetres,
              })
            }
          >
            {whom('with')}
            <BeatChoice
              plan={committed}
              label="at beat"
              value={asked.beat}
              onChange={(beat) => set({ beat })}
            />
            <LengthField
              label="between their eyes"
              metres={asked.apartMetres}
              commit={(apartMetres) => set({ apartMetres })}
            />
            {apart === null ? null : (
              <p className="advice">Their eyes are {formatLength(apart, lengths)} apart there.</p>
            )}
          </Move>
        </>
      ) : (
        <p className="advice">Circle, and stop face to face, need somebody else with a mark.</p>
      )}
      {corner ? (
        <Move
          word="Come from a corner"
          performer={performer}
          asked={asked}
          refusal={`${named(performer.label)} needs a mark, and a beat before this one.`}
          change={(before) =>
            comeFrom(before, { performerId, beatId: asked.beat, corner: [corner.at[0], corner.at[1]] })
          }
        >
          <SelectField label="corner" value={asked.corner} onChange={(value) => set({ corner: value })}>
            {corners.map(({ word, at }, k) => (
              <option key={`${at[0]} ${at[1]}`} value={String(k)}>
                {word}
              </option>
            ))}
          </SelectField>
          <BeatChoice
            plan={committed}
            label="to be there at"
            value={asked.beat}
            onChange={(beat) => set({ beat })}
          />
        </Move>
      ) : null}
    </section>
  );
}
