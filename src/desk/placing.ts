import { BUILT_IN_KIT } from '../core/kit/builtInKit';
import { bodyOf, lensOf } from '../core/kit/inKit';
import { freeId } from '../core/plan/edits/freeId';
import { placeCamera } from '../core/plan/edits/placeCamera';
import type { Plan } from '../core/plan/schema/plan';
import { chooseSetup } from './choose';
import { planStore } from './planStore';
import { toastStore } from './toastStore';

const EYE_METRES = 1.5;
/** How far inside the edge of the deck the first camera goes, metres. */
const INSIDE_METRES = 1.5;

/** The middle of the deck's near edge [x, z], from where the first camera looks across the roof. */
function nearEdge(plan: Plan): readonly [number, number] {
  const corners = plan.pieces.flatMap((piece) => (piece.kind === 'deck' ? piece.outline : []));
  if (corners.length === 0) return [0, 6];
  const across = corners.map(([x]) => x);
  return [
    (Math.min(...across) + Math.max(...across)) / 2,
    Math.max(...corners.map(([, z]) => z)) - INSIDE_METRES,
  ];
}

/** Puts a camera on the roof that looks across it, and looks through it. */
export function placeFirstCamera(): void {
  const { plan, edit, undo } = planStore.getState();
  const body = plan.kit.bodies[0] ?? bodyOf(BUILT_IN_KIT, 'film-35');
  const lens = plan.kit.lenses[0] ?? lensOf(BUILT_IN_KIT, 'anamorphic-50');
  if (!body || !lens) throw new Error('placeFirstCamera: the built-in kit has lost its first body or lens');
  const [x, z] = nearEdge(plan);
  const setupId = freeId(plan.setups, 'setup');
  const faults = edit('place a camera', (before) =>
    placeCamera(before, {
      label: `Setup ${plan.setups.length + 1}`,
      body,
      lens,
      position: [x, EYE_METRES, z],
      headingDegrees: 0,
    }),
  );
  const { say } = toastStore.getState();
  if (faults[0]) {
    say(faults[0].sentence, { tone: 'warn' });
    return;
  }
  chooseSetup(setupId);
  say('A camera stands at the near edge of the roof.', { action: { word: 'Undo', act: undo } });
}
