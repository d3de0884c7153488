import { standingRefusal } from '../../continuity/standing';
import { directionOf, length, subtract } from '../../form/build/vector';
import { stateAt } from '../../optics/camera';
import { trackOf } from '../../optics/cameraKey';
import { wheelsBeyond } from '../../optics/onTrack';
import type { ReposeArgs } from '../../plan/edits/reposeCamera';
import { tidyMetres } from '../../plan/edits/tidy';
import type { Plan } from '../../plan/schema/plan';
import type { CameraKey } from '../../plan/schema/setup';
import { surfaceUnder } from '../../plan/surfaces';
import { keyAlong, trackPointAt } from '../../plan/trackLine';
import { lensTries } from '../../report/lensTries';
import { type CameraSearch, cameraSearchOf } from './cameraSearch';
import type { Case, Finding } from './case';
import { leastChange } from './nearestSpot';
import { type RemedyEdit, withRemedy } from './remedyEdits';
import type { Remedy } from './types';
import { degreesWords, lengthWords, letterOf } from './words';

/** A camera is nudged and panned no farther than this; more is another setup. Source: common practice, no source */
const FARTHEST_NUDGE_METRES = 1;
const WIDEST_PAN_DEGREES = 8;
/** A camera that goes less far than this makes no move, metres. */
const LEAST_MOVE_METRES = 0.05;
/** A camera is put no lower and no higher over what it stands on than this, metres. Source: common practice, no source */
const LOWEST_METRES = 0.15;
const HIGHEST_METRES = 3;

const letter = ({ known: { plan }, one }: Case): string => letterOf(plan, one.setup.id);

/** A pan of all keys, where nobody is held by the operator. */
function* pans(of: Case, search: CameraSearch): Finding {
  const { setup } = of.one;
  if (setup.operator) return [];
  const edits = (byDegrees: number): readonly RemedyEdit[] => [
    { edit: 'turnSetup', args: { setupId: setup.id, byDegrees: tidyMetres(byDegrees) } },
  ];
  const by = leastChange((degrees) => search.mayHold(withRemedy(of.known.plan, { edits: edits(degrees) })), {
    lowest: -WIDEST_PAN_DEGREES,
    highest: WIDEST_PAN_DEGREES,
    step: 0.5,
    fine: 0.05,
  });
  yield 0.5;
  if (by === null) return [];
  const remedy = yield* search.prove({
    kind: 'pan',
    edits: edits(by),
    what: `A pan of ${degreesWords(Math.abs(by))} to the ${by > 0 ? 'right' : 'left'}`,
    cost: { degrees: Math.abs(by) },
  });
  return remedy ? [remedy] : [];
}

/** What all keys of a setup change by alike. */
const nudgeOf = (of: Case, by: readonly [number, number, number], alongBy: number | null): ReposeArgs => {
  const { known, one } = of;
  const track = trackOf(known.plan, one.setup);
  return {
    setupId: one.setup.id,
    lens: one.setup.lens,
    by: [by[0], by[1], by[2]],
    alongMetres:
      track && alongBy !== null ? one.setup.move.keys.map((key) => keyAlong(track, key) + alongBy) : null,
    panDegrees: 0,
    tiltDegrees: 0,
    rollDegrees: 0,
    focalMm: null,
    operator: null,
  };
};

/** The camera along its track, or to its sides, forwards and back where it is on none; and up and down. */
function* nudges(of: Case, search: CameraSearch): Finding {
  const { known, one, report } = of;
  const { setup } = one;
  const { plan } = known;
  const track = trackOf(plan, setup);
  const { headingDegrees, position } = stateAt(plan, setup, report.worstAtSeconds);
  const floor = surfaceUnder(plan, [position[0], position[2]], { belowMetres: position[1] });
  const right = directionOf(headingDegrees + 90);
  const forward = directionOf(headingDegrees);
  const ways: readonly (readonly [
    words: (by: number) => string,
    argsOf: (by: number) => ReposeArgs | null,
  ])[] = [
    ...(track
      ? [
          [
            (by: number) => `along its track ${by > 0 ? 'forwards' : 'back'}`,
            (by: number) => {
              const alongs = setup.move.keys.map((key) => keyAlong(track, key));
              if (alongs.some((along) => wheelsBeyond(track, along, along + by) > 0)) return null;
              const from = trackPointAt(track, alongs[0]).at;
              const to = trackPointAt(track, alongs[0] + by).at;
              return nudgeOf(of, [to[0] - from[0], 0, to[2] - from[2]], by);
            },
          ] as const,
        ]
      : [
          [
            (by: number) => `to its ${by > 0 ? 'right' : 'left'}`,
            (by: number) => nudgeOf(of, [right[0] * by, 0, right[2] * by], null),
          ] as const,
          [
            (by: number) => (by > 0 ? 'forwards' : 'back'),
            (by: number) => nudgeOf(of, [forward[0] * by, 0, forward[2] * by], null),
          ] as const,
        ]),
    [
      (by: number) => (by > 0 ? 'higher' : 'lower'),
      (by: number) => {
        const over = position[1] + by - floor.metres;
        return over >= LOWEST_METRES && over <= HIGHEST_METRES ? nudgeOf(of, [0, by, 0], null) : null;
      },
    ] as const,
  ];
  const found: Remedy[] = [];
  for (const [wordsOf, argsOf] of ways) {
    const edits = (by: number): readonly RemedyEdit[] => {
      const args = argsOf(by);
      return args ? [{ edit: 'reposeCamera', args }] : [];
    };
    const stands = (after: Plan): boolean => {
      const then = after.setups.find(({ id }) => id === setup.id);
      return then !== undefined && standingRefusal(after, then, report.worstAtSeconds) === null;
    };
    const by = leastChange((metres) => search.mayHold(withRemedy(plan, { edits: edits(metres) })), {
      lowest: -FARTHEST_NUDGE_METRES,
      highest: FARTHEST_NUDGE_METRES,
      step: 0.1,
      fine: 0.01,
    });
    yield 0.5;
    if (by === null || !stands(withRemedy(plan, { edits: edits(by) }))) continue;
    const remedy = yield* search.prove({
      kind: 'nudge the camera',
      edits: edits(by),
      what: `The camera of ${letter(of)} ${lengthWords(Math.abs(by))} ${wordsOf(by)}`,
      cost: { metres: Math.abs(by) },
    });
    if (remedy) found.push(remedy);
  }
  return found;
}

/** The next longer lens and the next wider one of the kit that do it, among those of one focal length. */
function* lenses(of: Case, search: CameraSearch): Finding {
  const { known, one } = of;
  const { plan } = known;
  const tries = plan.kit.lenses
    .filter(({ longestMm }) => longestMm === undefined)
    .flatMap((lens) => lensTries(plan, one.setup, lens));
  const now = one.watches[0].camera.frame.tanHalfWidth;
  const longer = tries
    .filter(({ tanHalfWidth }) => tanHalfWidth < now * 0.999)
    .sort((a, b) => b.tanHalfWidth - a.tanHalfWidth);
  const wider = tries
    .filter(({ tanHalfWidth }) => tanHalfWidth > now * 1.001)
    .sort((a, b) => a.tanHalfWidth - b.tanHalfWidth);
  const found: Remedy[] = [];
  for (const [way, order] of [
    ['longer', longer],
    ['wider', wider],
  ] as const) {
    for (const { lens } of order) {
      const edits: readonly RemedyEdit[] = [
        { edit: 'setLens', args: { setupId: one.setup.id, lens: lens.id } },
      ];
      yield 0.5;
      if (!search.mayHold(withRemedy(plan, { edits }))) continue;
      const remedy = yield* search.prove({
        kind: 'another lens',
        edits,
        what: `A ${way} lens that holds its cast, ${lens.label},`,
        cost: {},
      });
      if (!remedy) continue;
      found.push(remedy);
      break;
    }
  }
  return found;
}

/** How long the way through some keys is, straight from each to the next, metres. */
const wayLength = (keys: readonly CameraKey[]): number =>
  keys.slice(1).reduce((sum, { position }, k) => sum + length(subtract(position, keys[k].position)), 0);

/** The move of a camera ended before it comes to where the item is seen, or begun after it. */
function* shorterMoves(of: Case, search: CameraSearch): Finding {
  const { known, one } = of;
  const { keys } = one.setup.move;
  const [first, last] = [keys[0], keys[keys.length - 1]];
  if (keys.length < 2 || first.alongMetres !== undefined || last.alongMetres !== undefined) return [];
  if (length(subtract(last.position, first.position)) < LEAST_MOVE_METRES) return [];
  const found: Remedy[] = [];
  for (const end of ['end', 'start'] as const) {
    const [keyIndex, from, to] = end === 'end' ? [keys.length - 1, last, first] : [0, first, last];
    const edits = (share: number): readonly RemedyEdit[] => {
      const mixed = (a: number, b: number): number => tidyMetres(a + (b - a) * share);
      return [
        {
          edit: 'setKey',
          args: {
            setupId: one.setup.id,
            keyIndex,
            patch: {
              position: [
                mixed(from.position[0], to.position[0]),
                mixed(from.position[1], to.position[1]),
                mixed(from.position[2], to.position[2]),
              ],
              headingDegrees: mixed(from.headingDegrees, to.headingDegrees),
              tiltDegrees: mixed(from.tiltDegrees, to.tiltDegrees),
            },
          },
        },
      ];
    };
    const share = leastChange(
      (by) => by > 0 && search.mayHold(withRemedy(known.plan, { edits: edits(by) })),
      {
        lowest: 0,
        highest: 1,
        step: 0.1,
        fine: 0.01,
      },
    );
    yield 0.5;
    if (share === null) continue;
    const after = withRemedy(known.plan, { edits: edits(share) }).setups.find(
      ({ id }) => id === one.setup.id,
    );
    const metres = after ? wayLength(keys) - wayLength(after.move.keys) : 0;
    // Of more than two keys the way to a drawn-in end may be the longer one.
    if (metres <= 0) continue;
    const remedy = yield* search.prove({
      kind: 'shorten the move',
      edits: edits(share),
      what: `The move of ${letter(of)} ${lengthWords(metres)} shorter at its ${end}`,
      cost: { metres },
    });
    if (remedy) found.push(remedy);
  }
  return found;
}

const withSearch =
  (way: (of: Case, search: CameraSearch) => Finding) =>
  (of: Case): Finding =>
    way(of, cameraSearchOf(of));

/** What the camera itself can do about a finding, each keeping whom it holds throughout. */
export const cameraWays = {
  pans: withSearch(pans),
  lenses: withSearch(lenses),
  nudges: withSearch(nudges),
  'shorter moves': withSearch(shorterMoves),
} as const;
