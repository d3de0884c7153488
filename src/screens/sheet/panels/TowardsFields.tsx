import type { Looks, Performer, Towards } from '../../../core/plan/schema/cast';
import type { Point } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { withNames } from '../../../core/plan/withNames';
import type { WantedPlace } from '../../../desk/tools/toolStore';
import { SelectField } from '../../parts/Field';
import { HeadingField } from '../../parts/HeadingField';
import { LengthField } from '../../parts/LengthField';
import { PickPlace } from '../PickPlace';

/** What a choice is called that names nobody. */
const POINT = 'a point';
const ANGLES = 'by angles';

interface Props<Value extends Looks> {
  readonly plan: Plan;
  readonly performer: Performer;
  readonly label: string;
  /** What it is called where nothing is said: `a heading`, `ahead`, `the way`. */
  readonly otherwise: string;
  readonly value: Value | undefined;
  /** Where a point is put first, metres. */
  readonly firstPoint: Point;
  /** Whether the head may be turned by angles, too. */
  readonly angles?: boolean;
  readonly commit: (value: Looks | undefined) => string | null;
}

const choiceOf = (value: Looks | undefined): string => {
  if (!value) return '';
  if ('who' in value) return `who ${value.who}`;
  return 'point' in value ? POINT : ANGLES;
};

function PointFields(props: {
  readonly label: string;
  readonly performer: Performer;
  readonly point: Point;
  readonly commit: (value: Towards) => string | null;
}) {
  const { label, performer, point, commit } = props;
  const [x, y, z] = point;
  const wanted: WantedPlace = {
    key: `${performer.id} ${label}`,
    word: `point that ${performer.label} ${label.replace('on the way ', '')}${label.endsWith('looks') ? ' at' : ''}`,
    take: ([toX, toZ]) => commit({ point: [toX, y, toZ] }),
  };
  return (
    <>
      <PickPlace wanted={wanted} word="Pick it on the roof" />
      <LengthField label={`${label} x, right`} metres={x} commit={(to) => commit({ point: [to, y, z] })} />
      <LengthField label={`${label} y, up`} metres={y} commit={(to) => commit({ point: [x, to, z] })} />
      <LengthField label={`${label} z, down`} metres={z} commit={(to) => commit({ point: [x, y, to] })} />
    </>
  );
}

/** What somebody turns to: as it is without a word, another performer, a point of the roof, or angles for the head alone. */
export function TowardsFields<Value extends Looks>(props: Props<Value>) {
  const { plan, performer, label, otherwise, value, firstPoint, angles = false, commit } = props;
  const others = withNames(plan).cast.filter(({ id }) => id !== performer.id);
  const choose = (choice: string): void => {
    if (choice === '') commit(undefined);
    else if (choice === POINT) commit({ point: firstPoint });
    else if (choice === ANGLES) commit({ turnDegrees: 0, tiltDegrees: 0 });
    else commit({ who: choice.replace('who ', '') });
  };
  return (
    <>
      <SelectField label={label} value={choiceOf(value)} onChange={choose}>
        <option value="">{otherwise}</option>
        {others.map(({ id, label: name }) => (
          <option key={id} value={`who ${id}`}>
            {name}
          </option>
        ))}
        <option value={POINT}>{POINT}</option>
        {angles ? <option value={ANGLES}>{ANGLES}</option> : null}
      </SelectField>
      {value && 'point' in value ? (
        <PointFields label={label} performer={performer} point={value.point} commit={commit} />
      ) : null}
      {value && 'turnDegrees' in value ? (
        <>
          <HeadingField
            label="head turned"
            degrees={value.turnDegrees}
            commit={(turnDegrees) => commit({ ...value, turnDegrees })}
          />
          <HeadingField
            label="head tilted"
            degrees={value.tiltDegrees}
            commit={(tiltDegrees) => commit({ ...value, tiltDegrees })}
          />
        </>
      ) : null}
    </>
  );
}
