import { changeMark, type MarkPatch } from '../../../core/plan/edits/changeMark';
import { moveMark } from '../../../core/plan/edits/moveMark';
import { setWay } from '../../../core/plan/edits/setWay';
import { setWayLine } from '../../../core/plan/edits/setWayLine';
import { markBefore } from '../../../core/plan/edits/timedMarks';
import { bearingOf, metresBetween, spotFrom } from '../../../core/plan/runs';
import type { Looks, Mark, Performer, Stance, Towards } from '../../../core/plan/schema/cast';
import type { Point, Spot } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { beatsInTime } from '../../../desk/blocking/things';
import { SelectField } from '../../parts/Field';
import { HeadingField } from '../../parts/HeadingField';
import { LengthField } from '../../parts/LengthField';
import { NumberField } from '../../parts/NumberField';
import { useEdit } from '../fields/edit';
import { TowardsFields } from './TowardsFields';

const STANCES: readonly Stance[] = [
  'stand',
  'walk',
  'run',
  'crouch',
  'sit',
  'lean',
  'arms out',
  'reach',
  'holding',
];

/** A point that somebody turns to begins so far ahead of them, at eye height. Source: common practice, no source */
const AHEAD_METRES = 3;
const EYE_SHARE = 0.93;
/** How far a walk bends to the side where it is made a curve, as a share of its length. Source: common practice, no source */
const BEND_SHARE = 0.2;

/** Half way, to the side of the straight line. */
function bentThrough(from: Spot, to: Spot): Spot {
  const heading = bearingOf(from, to);
  const length = metresBetween(from, to);
  return spotFrom(spotFrom(from, heading, length / 2), heading + 90, length * BEND_SHARE);
}

/** What can be faced; the head alone can be turned by angles. */
const facedBy = (value: Looks | undefined): Towards | undefined =>
  value && 'turnDegrees' in value ? undefined : value;

interface Props {
  readonly plan: Plan;
  readonly performer: Performer;
  readonly mark: Mark;
}

/** How somebody comes to a mark: on which way, facing and looking where. */
function WayFields({ plan, performer, mark }: Props) {
  const edit = useEdit();
  const before = markBefore(plan, performer, mark.id);
  if (!before || metresBetween(before.at, mark.at) === 0) return null;
  const of = { performerId: performer.id, markId: mark.id };
  const set = (step: string, patch: MarkPatch): string | null =>
    edit(step, (was) => changeMark(was, { ...of, patch }));
  const through = mark.way?.through ?? [];
  const [x, z] = spotFrom(mark.at, mark.headingDegrees, AHEAD_METRES);
  const firstPoint: Point = [x, performer.statureMetres * EYE_SHARE, z];
  const setLine = (line: string): void => {
    if (line === 'direct')
      edit('straighten a walk', (was) => setWay(was, { ...of, through: [], line: 'straight' }));
    else if (through.length === 0)
      edit('bend a walk', (was) =>
        setWay(was, {
          ...of,
          through: [bentThrough(before.at, mark.at)],
          line: line === 'curved' ? 'curved' : 'straight',
        }),
      );
    else
      edit('change a walk', (was) =>
        setWayLine(was, { ...of, line: line === 'curved' ? 'curved' : 'straight' }),
      );
  };
  const places =
    through.length === 1
      ? 'one place'
      : `${through.length || 'one'} places`.replace('one places', 'one place');
  return (
    <>
      <SelectField
        label="comes"
        value={through.length === 0 ? 'direct' : (mark.way?.line ?? 'straight')}
        onChange={setLine}
      >
        <option value="direct">straight</option>
        <option value="straight">by {places}, in straight lines</option>
        <option value="curved">by {places}, on a curve</option>
      </SelectField>
      <TowardsFields
        plan={plan}
        performer={performer}
        label="on the way faces"
        otherwise="the way"
        value={mark.facesOnTheWay}
        firstPoint={firstPoint}
        commit={(value) => set('face on the way', { facesOnTheWay: facedBy(value) })}
      />
      <TowardsFields
        plan={plan}
        performer={performer}
        label="on the way looks"
        otherwise="ahead"
        value={mark.looksOnTheWay}
        firstPoint={firstPoint}
        angles
        commit={(looksOnTheWay) => set('look on the way', { looksOnTheWay })}
      />
    </>
  );
}

/** Where and when somebody stands, how, and which way they turn and come. */
export function MarkFields({ plan, performer, mark }: Props) {
  const edit = useEdit();
  const of = { performerId: performer.id, markId: mark.id };
  const set = (step: string, patch: MarkPatch): string | null =>
    edit(step, (before) => changeMark(before, { ...of, patch }));
  const move = (to: Spot): string | null => edit('move a mark', (before) => moveMark(before, { ...of, to }));
  const [x, z] = mark.at;
  const [aheadX, aheadZ] = spotFrom(mark.at, mark.headingDegrees, AHEAD_METRES);
  const firstPoint: Point = [aheadX, performer.statureMetres * EYE_SHARE, aheadZ];
  return (
    <div className="fields">
      <SelectField label="beat" value={mark.beat} onChange={(beat) => void set('move to a beat', { beat })}>
        {beatsInTime(plan).map(({ id, label }, k) => (
          <option key={id} value={id}>
            {k + 1} {label}
          </option>
        ))}
      </SelectField>
      <SelectField
        label="stance"
        value={mark.stance}
        onChange={(value) => {
          const stance = STANCES.find((each) => each === value);
          if (stance) set('set the stance', { stance });
        }}
      >
        {STANCES.map((stance) => (
          <option key={stance}>{stance}</option>
        ))}
      </SelectField>
      <LengthField label="x, right" metres={x} commit={(to) => move([to, z])} />
      <LengthField label="z, down" metres={z} commit={(to) => move([x, to])} />
      <TowardsFields
        plan={plan}
        performer={performer}
        label="faces"
        otherwise="a heading"
        value={mark.faces}
        firstPoint={firstPoint}
        commit={(value) => set('face', { faces: facedBy(value) })}
      />
      {mark.faces ? null : (
        <HeadingField
          label="heading"
          degrees={mark.headingDegrees}
          commit={(headingDegrees) => set('turn a mark', { headingDegrees })}
        />
      )}
      <TowardsFields
        plan={plan}
        performer={performer}
        label="looks"
        otherwise="ahead"
        value={mark.looks}
        firstPoint={firstPoint}
        angles
        commit={(looks) => set('look', { looks })}
      />
      <NumberField
        label="holds for"
        unit="s"
        decimals={Math.abs(mark.holdSeconds * 10 - Math.round(mark.holdSeconds * 10)) < 1e-3 ? 1 : 2}
        value={mark.holdSeconds}
        commit={(holdSeconds) => set('hold a mark', { holdSeconds })}
      />
      <LengthField
        label="floor at"
        metres={mark.floorMetres ?? 0}
        commit={(floorMetres) => set('raise a mark', { floorMetres })}
      />
      <WayFields plan={plan} performer={performer} mark={mark} />
    </div>
  );
}
