import { changeArea } from '../../core/plan/edits/changeArea';
import { removeArea } from '../../core/plan/edits/removeArea';
import { setGround } from '../../core/plan/edits/setGround';
import type { WetArea, Wetness } from '../../core/plan/schema/ground';
import type { Spot } from '../../core/plan/schema/numbers';
import { areaAt, nameOfArea, WETNESSES, wetnessAt } from '../../core/plan/wetness';
import { chooseArea, chosenAreaIn } from '../../desk/chosenArea';
import { pickTool, pointAt, press } from '../../desk/tools/drawing';
import { nameInText } from '../overhead/words';
import { change, tell } from './doing';
import { plain } from './keys';
import { openPage } from './pages';
import type { Action, ActionContext } from './types';

/** The area that an action is meant for: the uppermost one where the roof was pressed, else the chosen one. */
export function areaMeant({ plan, ids, at }: ActionContext): WetArea | null {
  if (ids.length > 0) return null;
  if (at) return areaAt(plan.ground, [at[0], at[1]]);
  const id = chosenAreaIn(plan);
  return plan.ground.areas?.find((area) => area.id === id) ?? null;
}

const VERBS: Readonly<Record<Wetness, string>> = {
  dry: 'Dry it',
  damp: 'Leave it damp',
  'wet down': 'Wet it down',
  puddled: 'Let it stand in puddles',
};

/** The area or, beside all areas, the whole ground made so wet. */
function wet(context: ActionContext, wetness: Wetness): void {
  const area = areaMeant(context);
  if (area) {
    const name = nameInText(nameOfArea(context.plan.ground, area.id));
    change(`make ${name} ${wetness}`, (plan) => changeArea(plan, { id: area.id, patch: { wetness } }));
  } else change('wet the ground', (plan) => setGround(plan, { patch: { wetness } }));
}

/** How wet the pressed place can be made; not how it is. */
const wetChoices = (context: ActionContext): readonly Action[] =>
  WETNESSES.map((wetness) => ({
    id: `wet-${wetness.replaceAll(' ', '-')}`,
    word: VERBS[wetness],
    group: 'shape',
    can: () => true,
    act: () => wet(context, wetness),
  }));

const startAt = (at: Spot, entryId: string): void => {
  pickTool({ type: 'draw', entryId });
  pointAt(at, { reachMetres: 0, free: true, straight: false });
  press();
};

/** A patch that is drawn from the pressed place on: dry where it is wet there, wet where it is dry. */
function drawPatch({ plan, at }: ActionContext): void {
  if (!at) return;
  const spot: Spot = [at[0], at[1]];
  const isDry = wetnessAt(plan, spot) === 'dry' || wetnessAt(plan, spot) === 'damp';
  startAt(spot, isDry ? 'wet-area' : 'dry-area');
}

function takeOut(context: ActionContext): void {
  const area = areaMeant(context);
  if (!area) return;
  const name = nameOfArea(context.plan.ground, area.id);
  if (!change(`take out ${nameInText(name)}`, (plan) => removeArea(plan, { id: area.id }))) return;
  chooseArea(null);
  tell(`${name} is out of the plan.`);
}

/** What can be done to how wet the ground is. */
export const WET_ACTIONS: readonly Action[] = [
  {
    id: 'wet-here',
    word: (context) => (areaMeant(context) ? 'How wet this area is' : 'How wet the ground is'),
    group: 'shape',
    over: 'ground',
    can: ({ at, plan }) => at !== null || chosenAreaIn(plan) !== null,
    act: (context) => openPage(context, 'wet-here'),
    more: wetChoices,
  },
  {
    id: 'patch-here',
    word: ({ plan, at }) =>
      at && ['dry', 'damp'].includes(wetnessAt(plan, [at[0], at[1]]))
        ? 'Wet a patch from here'
        : 'Dry a patch from here',
    group: 'shape',
    over: 'ground',
    can: ({ at }) => at !== null,
    act: drawPatch,
  },
  {
    id: 'remove-area',
    word: 'Take this area out',
    keys: ['Delete'],
    matches: (event) => plain(event) && (event.key === 'Delete' || event.key === 'Backspace'),
    group: 'shape',
    over: 'ground',
    can: (context) => areaMeant(context) !== null,
    act: takeOut,
  },
];
