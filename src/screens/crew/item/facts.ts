import { headPlace } from '../../../core/form/gear/headPlace';
import { headClassOf, standClassOf } from '../../../core/form/gear/references';
import { windOf } from '../../../core/form/tape/compassWords';
import { LONGEST_TAPE_METRES } from '../../../core/form/tape/nearAnchors';
import { spanOf, stateAt } from '../../../core/optics/camera';
import { metresBetween } from '../../../core/plan/runs';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { thingName } from '../../../core/plan/snap/names';
import { surfaceUnder } from '../../../core/plan/surfaces';
import { formatDegrees, formatHeading } from '../../../core/units/angles';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, formatSigned, NBSP } from '../../../core/units/numbers';
import { formatShare } from '../../../core/units/shares';
import { beforeText, whiteText } from '../../sheet/fields/beforeWords';

/** A word and what it is: a line of a card. */
export type Fact = readonly [word: string, value: string];

/** Nearer than this to where a lamp is aimed somebody is who it is aimed at, metres. */
const AT_METRES = 1;

/** A heading by the compass of the place: `123°, south-east`. */
export const compassWords = (plan: Plan, headingDegrees: number): string =>
  `${formatHeading(headingDegrees - plan.place.northDegrees)}, ${windOf(headingDegrees, plan.place.northDegrees)}`;

/** Why a place has no tapes: `No two fixed corners of the roof can be reached from it by a tape of 60 m.` */
export const noTape = (system: LengthSystem): string =>
  `No two fixed corners of the roof can be reached from it by a tape of ${formatLength(LONGEST_TAPE_METRES, system, { decimals: 0 })}.`;

/** The floor that a foot is on: `the deck`, `the riser, 0.80 m up`. */
export function floorWords(
  plan: Plan,
  at: readonly [number, number],
  footMetres: number,
  system: LengthSystem,
): string {
  const surface = surfaceUnder(plan, [at[0], at[1]], { belowMetres: footMetres + 0.02 });
  const piece = plan.pieces.find(({ id }) => id === surface.id);
  const off = footMetres - surface.metres;
  const up = surface.metres === 0 ? '' : `, ${formatLength(surface.metres, system)} up`;
  const hangs = off > 0.05 ? `, ${formatLength(off, system)} over it` : '';
  return `${piece ? thingName(piece.label) : 'the ground'}${up}${hangs}`;
}

/** Who has a mark where a lamp is aimed, in words; empty for nobody. */
function whoAt(plan: Plan, [x, , z]: readonly [number, number, number]): string {
  const there = plan.cast.filter(({ marks }) =>
    marks.some(({ at }) => metresBetween(at, [x, z]) <= AT_METRES),
  );
  const names = there.map(({ label }) => label);
  return names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)}` : (names[0] ?? '');
}

const sizeWords = (size: readonly number[], system: LengthSystem): string =>
  size.map((metres) => formatLength(metres, system)).join(`${NBSP}×${NBSP}`);

/** What somebody has to know of a piece of gear to set it, beside where it stands. */
export function gearFacts(plan: Plan, gear: Gear, system: LengthSystem): readonly Fact[] {
  switch (gear.kind) {
    case 'stand':
      return standFacts(plan, gear, system);
    case 'head':
      return headFacts(plan, gear);
    case 'flag':
    case 'frame':
    case 'bounce':
      return [
        ['size', sizeWords(gear.size, system)],
        ['faces', compassWords(plan, gear.headingDegrees)],
        ['tilt', tiltWords(gear.tiltDegrees)],
        ...('reflectance' in gear ? ([['gives back', formatShare(gear.reflectance)]] as const) : []),
        ...('transmission' in gear && gear.transmission !== undefined
          ? ([['lets through', formatShare(gear.transmission)]] as const)
          : []),
      ];
    case 'track':
      return [
        ['length', formatLength(gear.lengthMetres, system)],
        ['runs', compassWords(plan, gear.headingDegrees)],
        ...(gear.bendMetres === undefined
          ? []
          : ([
              [
                'bends',
                `${gear.bendMetres > 0 ? 'to the right' : 'to the left'}, radius ${formatLength(Math.abs(gear.bendMetres), system)}`,
              ],
            ] as const)),
        ['gauge', formatLength(gear.gaugeMetres, system)],
      ];
    case 'ladder':
      return [
        ['height', formatLength(gear.heightMetres, system)],
        ['faces', compassWords(plan, gear.headingDegrees)],
      ];
    case 'monitor':
      return [
        ['diagonal', formatLength(gear.diagonalMetres, system)],
        ['faces', compassWords(plan, gear.headingDegrees)],
      ];
    case 'cable':
    case 'bulb string':
    case 'practical':
    case 'sandbag':
      return [];
    default:
      return [
        ['size', sizeWords(gear.size, system)],
        ['faces', compassWords(plan, gear.headingDegrees)],
      ];
  }
}

const tiltWords = (degrees: number): string =>
  Math.abs(degrees) < 0.05 ? 'upright' : `${formatDegrees(Math.abs(degrees))} ${degrees > 0 ? 'up' : 'down'}`;

function standFacts(
  plan: Plan,
  stand: Extract<Gear, { kind: 'stand' }>,
  system: LengthSystem,
): readonly Fact[] {
  const own = standClassOf(stand, plan);
  const { arm, bags } = stand;
  return [
    ['height', formatLength(stand.heightMetres, system)],
    [
      'legs',
      `${formatLength(stand.spreadMetres ?? own.footprintMetres, system)} across, one to ${compassWords(plan, stand.headingDegrees)}`,
    ],
    ['stand', own.label],
    ...(arm
      ? ([
          [
            'arm',
            `${formatLength(arm.lengthMetres, system)}, ${formatSigned(arm.tiltDegrees, 0)}°, to ${compassWords(plan, arm.headingDegrees)}`,
          ],
        ] as const)
      : []),
    [
      'bags',
      bags
        ? `${bags.count}${NBSP}×${NBSP}${formatNumber(bags.kilograms, bags.kilograms % 1 === 0 ? 0 : 1)}${NBSP}kg`
        : 'none over its legs',
    ],
  ];
}

function headFacts(plan: Plan, head: Extract<Gear, { kind: 'head' }>): readonly Fact[] {
  const own = headClassOf(head, plan);
  const { headingDegrees, tiltDegrees } = headPlace(head, own, plan);
  const who = whoAt(plan, head.aim);
  const before = beforeText(own, head);
  return [
    ['head', own.label],
    [
      'aim',
      `${compassWords(plan, headingDegrees)}, ${aimTilt(tiltDegrees)}${who === '' ? '' : `, at ${who}`}`,
    ],
    ['dim', `${formatShare(head.dim)}${head.cues && head.cues.length > 0 ? ', with cues' : ''}`],
    ['white', whiteText(own.kelvin, head.before)],
    ...(head.modifier ? ([['before it', head.modifier]] as const) : []),
    ...(before ? ([['gel and scrims', before]] as const) : []),
  ];
}

const aimTilt = (degrees: number): string =>
  Math.abs(degrees) < 0.5 ? 'level' : `${formatDegrees(Math.abs(degrees), 0)} ${degrees > 0 ? 'up' : 'down'}`;

/** What somebody has to know of a camera to put it up. */
export function cameraFacts(plan: Plan, setup: Setup, system: LengthSystem): readonly Fact[] {
  const lens = plan.kit.lenses.find(({ id }) => id === setup.lens);
  const body = plan.kit.bodies.find(({ id }) => id === setup.body);
  const [from, until] = spanOf(plan, setup);
  const [first, last] = [stateAt(plan, setup, from), stateAt(plan, setup, until)];
  const heights = [first.position[1], last.position[1]].map((metres) => formatLength(metres, system));
  return [
    ['lens height', heights[0] === heights[1] ? heights[0] : `${heights[0]} to ${heights[1]}`],
    ['looks', `${compassWords(plan, first.headingDegrees)}, ${aimTilt(first.tiltDegrees)}`],
    ['support', setup.support],
    ...(lens ? ([['lens', lens.label]] as const) : []),
    ...(body ? ([['camera', body.label]] as const) : []),
  ];
}
