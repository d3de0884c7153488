import { lampsAt } from '../../core/form/lamps';
import { type TapedSet, tapedSets } from '../../core/form/tape/tape';
import { tapeWords } from '../../core/form/tape/words';
import { cameraAt, spanOf } from '../../core/optics/camera';
import { itemsOf } from '../../core/plan/items';
import { bearingOf } from '../../core/plan/runs';
import type { Gear } from '../../core/plan/schema/gear';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { setupLetter } from '../../core/plan/setupLetter';
import { formatHeading } from '../../core/units/angles';
import { formatLength, type LengthSystem } from '../../core/units/lengths';
import { formatSigned } from '../../core/units/numbers';
import { asin } from '../../core/units/steadyMath';

/** A place that is set by two tapes, in words. */
export interface StandingPlace {
  /** What of the thing stands there: `the column`, `the mark`. */
  readonly to: string;
  /** Height of the floor that is measured on. */
  readonly level: string;
  /** Two distances, each with the corner that it is drawn from. */
  readonly tapes: readonly [string, string];
  /** On which side, where the two tapes would meet at another place too; else empty. */
  readonly side: string;
}

/** A thing that is set by tapes, with how high it goes and where it looks; all in words, empty where it has none. */
export interface Standing {
  readonly id: string;
  readonly label: string;
  readonly height: string;
  readonly aim: string;
  /** What it carries. */
  readonly carries: readonly string[];
  readonly places: readonly StandingPlace[];
}

/** How a list of what is set by tapes is read. */
export const STANDING_WORDS =
  'Draw both tapes along the floor and put the thing where they meet. Bearings are clockwise from up the overhead. Heights of stands and ladders are over their own foot, all others over the floor of the plan.';

const RADIANS = Math.PI / 180;

const placeOf = (
  plan: Plan,
  { key, to, levelMetres, tapes: [one, other], mirror, side }: TapedSet,
  id: string,
  lengths: LengthSystem,
): StandingPlace => ({
  to: markWords(plan, id, key) ?? to,
  level: formatLength(levelMetres, lengths),
  tapes: [tapeWords(one, lengths), tapeWords(other, lengths)],
  side: mirror === 'possible' ? side.words : '',
});

/** A performer's mark by its beat. */
function markWords(plan: Plan, id: string, key: string): string | null {
  const mark = plan.cast.find((each) => each.id === id)?.marks.find((each) => each.id === key);
  if (!mark) return null;
  return `mark, ${plan.beats.find((beat) => beat.id === mark.beat)?.label ?? mark.beat}`;
}

/** Where a direction looks: its bearing by the plan's own north up the sheet, and its tilt. */
const wayWords = (bearingDegrees: number, tiltDegrees: number): string =>
  `${formatHeading(bearingDegrees)}, tilt ${formatSigned(tiltDegrees, 0)}°`;

/** Where what a thing is or carries looks. */
function aimOf(gear: Gear, carried: readonly Gear[], aims: ReadonlyMap<string, string>): string {
  const own = [gear, ...carried];
  const lamps = own.flatMap(({ id }) => aims.get(id) ?? []);
  const cloths = own.flatMap((each) =>
    each.kind === 'flag' || each.kind === 'frame' || each.kind === 'bounce'
      ? [wayWords(each.headingDegrees, each.tiltDegrees)]
      : [],
  );
  const all = [...lamps, ...cloths];
  if (all.length > 0) return all.join('; ');
  return 'headingDegrees' in gear && gear.kind !== 'stand' ? formatHeading(gear.headingDegrees) : '';
}

function heightOf(gear: Gear, lengths: LengthSystem): string {
  if (gear.kind === 'stand' || gear.kind === 'ladder') return formatLength(gear.heightMetres, lengths);
  if ('place' in gear && 'at' in gear.place) return formatLength(gear.place.at[1], lengths);
  return '';
}

/** Every lamp's way of looking, in words, by its id; a string of bulbs looks nowhere. */
function aimsOf(plan: Plan): ReadonlyMap<string, string> {
  const strings = new Set(plan.gear.filter(({ kind }) => kind === 'bulb string').map(({ id }) => id));
  return new Map(
    lampsAt(plan, 0)
      .filter(({ itemId }) => !strings.has(itemId))
      .map(({ itemId, direction: [x, y, z] }) => [
        itemId,
        wayWords(bearingOf([0, 0], [x, z]), asin(Math.max(-1, Math.min(1, y))) / RADIANS),
      ]),
  );
}

const cameraOf = (plan: Plan, setup: Setup, lengths: LengthSystem): Standing => {
  const { pose } = cameraAt(plan, setup, spanOf(plan, setup)[0]);
  const [x, y, z] = pose.forward;
  return {
    id: setup.id,
    label: `Camera ${setupLetter(plan.setups.indexOf(setup))}, ${setup.label}`,
    height: formatLength(pose.position[1], lengths),
    aim: wayWords(bearingOf([0, 0], [x, z]), asin(Math.max(-1, Math.min(1, y))) / RADIANS),
    carries: [],
    places: tapedSets(plan, setup.id).map((set) => placeOf(plan, set, setup.id, lengths)),
  };
};

/** Whatever of a plan is set by tapes: gear, marks, what is carried in of the set, cameras; what no two corners reach with the longest tape is left out. */
export function standingOf(plan: Plan, lengths: LengthSystem): readonly Standing[] {
  const aims = aimsOf(plan);
  const carriers = new Map<string, Gear[]>();
  for (const gear of plan.gear)
    if ('place' in gear && 'on' in gear.place)
      carriers.set(gear.place.on, [...(carriers.get(gear.place.on) ?? []), gear]);
  const things = itemsOf(plan).map((item): Standing => {
    const { id, label } = item.record;
    const carried = carriers.get(id) ?? [];
    return {
      id,
      label,
      height: item.section === 'gear' ? heightOf(item.record, lengths) : '',
      aim: item.section === 'gear' ? aimOf(item.record, carried, aims) : '',
      carries: carried.map((each) => each.label),
      places: tapedSets(plan, id).map((set) => placeOf(plan, set, id, lengths)),
    };
  });
  const cameras = plan.setups.map((setup) => cameraOf(plan, setup, lengths));
  return [...things, ...cameras].filter(({ places }) => places.length > 0);
}
