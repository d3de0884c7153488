import { BUILT_IN_KIT } from '../../core/kit/builtInKit';
import { bodyOf, lensOf } from '../../core/kit/inKit';
import { makeItem, paletteEntryOf } from '../../core/kit/palette';
import { freeId } from '../../core/plan/edits/freeId';
import { placeCamera } from '../../core/plan/edits/placeCamera';
import { surfaceUnder } from '../../core/plan/surfaces';
import { chooseSetup } from '../../desk/choose';
import { pickTool, pointAt, press } from '../../desk/tools/drawing';
import { fitRoof } from '../overhead/fitting';
import { roofBounds } from '../overhead/geometry/roof';
import { headingOf, middleOf, minus } from '../overhead/geometry/spots';
import { bring, change } from './doing';
import { letter } from './keys';
import { openPage } from './pages';
import { recentEntries } from './recent';
import type { Action, ActionContext } from './types';

const EYE_METRES = 1.5;

/** What was put down lately, to be put here as well. */
const putChoices = (_context: ActionContext): readonly Action[] =>
  recentEntries().flatMap((entryId): Action[] => {
    const entry = paletteEntryOf(entryId);
    if (entry?.how !== 'spot') return [];
    return [
      {
        id: `put-${entryId}`,
        word: entry.word,
        group: 'shape',
        can: ({ at }) => at !== null,
        act: ({ at }) => {
          if (!at) return;
          bring(`put ${entry.word}`, (plan) => {
            const made = makeItem(plan, entryId, { spots: [[at[0], at[1]]] });
            return made ? { plan: made.plan, ids: [made.id] } : { plan, ids: [] };
          });
        },
      },
    ];
  });

/** A camera at eye height that looks to the middle of the roof. */
function placeHere({ plan, at }: ActionContext): void {
  if (!at) return;
  const body = plan.kit.bodies[0] ?? bodyOf(BUILT_IN_KIT, 'film-35');
  const lens = plan.kit.lenses[0] ?? lensOf(BUILT_IN_KIT, 'anamorphic-50');
  if (!body || !lens) return;
  const setupId = freeId(plan.setups, 'setup');
  const towards = minus(middleOf(roofBounds(plan)), at);
  const done = change('place a camera', (before) =>
    placeCamera(before, {
      label: `Setup ${before.setups.length + 1}`,
      body,
      lens,
      position: [at[0], surfaceUnder(before, [at[0], at[1]]).metres + EYE_METRES, at[1]],
      headingDegrees: Math.round(headingOf(towards)),
    }),
  );
  if (done) chooseSetup(setupId);
}

/** What can be begun at a place on the empty ground. */
export const GROUND_ACTIONS: readonly Action[] = [
  {
    id: 'put-here',
    word: 'Put here',
    group: 'shape',
    over: 'ground',
    can: (context) => context.at !== null && putChoices(context).length > 0,
    act: (context) => openPage(context, 'put-here'),
    more: putChoices,
  },
  {
    id: 'tape-here',
    word: 'Measure from here',
    group: 'view',
    over: 'ground',
    can: ({ at }) => at !== null,
    act: ({ at }) => {
      if (!at) return;
      pickTool({ type: 'tape' });
      pointAt([at[0], at[1]], { reachMetres: 0, free: true, straight: false });
      press();
    },
  },
  {
    id: 'tape',
    word: 'Lay a tape',
    keys: ['T'],
    matches: letter('t', false),
    group: 'view',
    can: () => true,
    act: () => pickTool({ type: 'tape' }),
  },
  {
    id: 'camera-here',
    word: 'Place a camera here',
    group: 'gear',
    over: 'ground',
    can: ({ at }) => at !== null,
    act: placeHere,
  },
  {
    id: 'fit',
    word: 'See the whole roof',
    keys: ['0'],
    group: 'view',
    over: 'ground',
    can: () => true,
    act: fitRoof,
  },
];
