import { type KeyboardEvent, type ReactNode, type RefObject, useMemo } from 'react';
import { useStore } from 'zustand';
import { calledBy } from '../../../core/plan/named';
import type { Plan } from '../../../core/plan/schema/plan';
import { withNames } from '../../../core/plan/withNames';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { chooseThing } from '../../../desk/blocking/choosing';
import { beatsInTime, isSame, keyOf, type Thing } from '../../../desk/blocking/things';
import { letterOf } from '../../../desk/choose';
import { useSession } from '../../../desk/hooks';
import { BeatLines, Beats, beatRows, NameInput } from './Beats';
import { enterThing } from './doing';
import { useDrawn } from './drawing';
import { LampTrack } from './LampTrack';
import { type Lane, lanesOf } from './lanes';
import { HandsTrack, SetupTrack } from './OtherTracks';
import { PerformerTrack } from './PerformerTrack';
import { Playhead, useSeeking } from './Playhead';
import { Ruler } from './Ruler';
import { xOf } from './scale';
import { spokenOf } from './words';

/** What a lane is called, beside it. */
function nameOf(plan: Plan, lane: Lane): string {
  switch (lane.type) {
    case 'performer':
      return calledBy(lane.performer.label, 'performer');
    case 'prop':
      return `the ${lane.lane.prop}`;
    case 'setup':
      return `${letterOf(plan, lane.setup.id)} ${calledBy(lane.setup.label, 'setup')}`;
    case 'lamp':
      return calledBy(lane.lamp.label, lane.lamp.kind);
  }
}

/** The thing that a press on a lane's name chooses; null where there is none. */
function thingOf(lane: Lane): Thing | null {
  if (lane.type === 'performer') return { type: 'performer', performerId: lane.id };
  if (lane.type === 'lamp') return { type: 'lamp', itemId: lane.id };
  return lane.type === 'setup' ? { type: 'setup', setupId: lane.id } : null;
}

function LaneName({ plan, lane }: { readonly plan: Plan; readonly lane: Lane }) {
  const { lengths } = useDrawn();
  const thing = thingOf(lane);
  const chosen = useStore(blockingStore, (state) => isSame(state.chosen, thing));
  const naming = useStore(blockingStore, (state) => thing !== null && state.naming === keyOf(thing));
  const name = nameOf(plan, lane);
  if (thing && naming && lane.type === 'performer')
    return <NameInput thing={thing} label={name} spoken={`name of ${name}`} />;
  if (!thing) return <span title={name}>{name}</span>;
  return (
    <button
      type="button"
      title={name}
      aria-pressed={chosen}
      aria-label={spokenOf(withNames(plan), thing, lengths)}
      data-thing={keyOf(thing)}
      onClick={() => chooseThing(thing)}
      onDoubleClick={() => enterThing(thing)}
      onKeyDown={(event) => {
        if (event.key !== 'F2') return;
        event.preventDefault();
        enterThing(thing);
      }}
    >
      {lane.type === 'setup' ? <b>{letterOf(plan, lane.id)} </b> : null}
      <span>{lane.type === 'setup' ? calledBy(lane.setup.label, 'setup') : name}</span>
    </button>
  );
}

function LaneTrack({ plan, lane }: { readonly plan: Plan; readonly lane: Lane }): ReactNode {
  switch (lane.type) {
    case 'performer':
      return <PerformerTrack plan={plan} lane={lane} />;
    case 'prop':
      return <HandsTrack plan={plan} lane={lane} />;
    case 'setup':
      return <SetupTrack plan={plan} lane={lane} />;
    case 'lamp':
      return <LampTrack plan={plan} lane={lane} />;
  }
}

/** Up and down go to what is nearest in time in the lane above and below. */
function goBetweenLanes(event: KeyboardEvent<HTMLElement>): void {
  if ((event.key !== 'ArrowUp' && event.key !== 'ArrowDown') || event.defaultPrevented) return;
  const own = event.target instanceof HTMLElement ? event.target.closest<HTMLElement>('[data-thing]') : null;
  const lane = own?.closest<HTMLElement>('[data-lane]');
  if (!own || !lane) return;
  event.preventDefault();
  const lanes = [...event.currentTarget.querySelectorAll<HTMLElement>('[data-lane]')];
  const step = event.key === 'ArrowUp' ? -1 : 1;
  const x = Number(own.dataset.x ?? 0);
  for (let k = lanes.indexOf(lane) + step; lanes[k]; k += step) {
    const things = [...lanes[k].querySelectorAll<HTMLElement>('[data-thing]')];
    const isAlike = (each: HTMLElement): boolean =>
      (each.dataset.x === undefined) === (own.dataset.x === undefined);
    const [nearest] = things
      .filter(isAlike)
      .toSorted((a, b) => Math.abs(Number(a.dataset.x ?? 0) - x) - Math.abs(Number(b.dataset.x ?? 0) - x));
    if (!nearest) continue;
    nearest.focus();
    return;
  }
}

/** Where a hand has brought something: a line through all lanes, dashed where it has caught on nothing. */
function HeldLine() {
  const { scale } = useDrawn();
  const held = useStore(blockingStore, (state) => state.held);
  if (!held) return null;
  return (
    <div
      className={`held-line ${held.caught?.on ?? 'free'}`}
      style={{ left: xOf(scale, held.seconds) }}
      aria-hidden="true"
    >
      <span className="held-words">{held.words}</span>
    </div>
  );
}

interface Props {
  readonly plan: Plan;
  readonly scroller: RefObject<HTMLDivElement | null>;
  readonly names: number;
  readonly proposed: string | null;
}

/** The action along its clock: the ruler and the beats stay above, the names at the left, the lanes go by. */
export function Timeline({ plan, scroller, names, proposed }: Props) {
  const { width, scale, touch } = useDrawn();
  const allLamps = useStore(blockingStore, (state) => state.allLamps);
  const setupId = useSession((state) => state.setupId);
  const lampId = useStore(blockingStore, ({ chosen }) =>
    chosen && 'itemId' in chosen ? chosen.itemId : null,
  );
  const lanes = useMemo(() => lanesOf(plan, allLamps, lampId), [plan, allLamps, lampId]);
  const seeking = useSeeking(names);
  const beats = beatsInTime(plan);
  const rows = beatRows(
    beats,
    beats.map(({ atSeconds }) => xOf(scale, atSeconds)),
    touch,
    width,
  );
  return (
    <section
      className="times"
      aria-label="Blocking along the clock"
      style={{ width: names + width }}
      onKeyDown={goBetweenLanes}
    >
      <div className="times-head" data-rows={rows} {...seeking}>
        <Playhead scroller={scroller} names={names} />
        <div className="times-corner" aria-hidden="true" />
        <div className="along" style={{ left: names, width }}>
          <Ruler />
          <Beats plan={plan} rows={rows} />
        </div>
      </div>
      <div className="lanes">
        <div className="along under" style={{ left: names, width }}>
          <BeatLines plan={plan} />
        </div>
        {lanes.map((lane) => (
          <fieldset
            key={`${lane.type} ${lane.id}`}
            className={`lane of-${lane.type}${lane.id === setupId ? ' looked-through' : ''}${lane.id === proposed ? ' proposed' : ''}`}
            aria-label={nameOf(plan, lane)}
            data-lane={lane.id}
          >
            <div className="lane-name">
              <LaneName plan={plan} lane={lane} />
            </div>
            <div className="track" style={{ width }}>
              <LaneTrack plan={plan} lane={lane} />
            </div>
          </fieldset>
        ))}
        <div className="along over" style={{ left: names, width }}>
          <HeldLine />
        </div>
      </div>
      <i className="playhead-line" aria-hidden="true" />
    </section>
  );
}
