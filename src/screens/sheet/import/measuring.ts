import { modelHeightAt } from '../../../core/form/models/modelHeight';
import { putModelOnDeck } from '../../../core/plan/edits/putModelOnDeck';
import { factorOf, scaleModel } from '../../../core/plan/edits/scaleModel';
import { scaleUnderlay } from '../../../core/plan/edits/scaleUnderlay';
import { turnModelToNorth, turnUnderlayToNorth } from '../../../core/plan/edits/turnModelToNorth';
import { named } from '../../../core/plan/named';
import { metresBetween, spotFrom } from '../../../core/plan/runs';
import type { Spot } from '../../../core/plan/schema/numbers';
import type { Piece } from '../../../core/plan/schema/pieces';
import { surfaceUnder } from '../../../core/plan/surfaces';
import { planStore } from '../../../desk/planStore';
import { toastStore } from '../../../desk/toastStore';
import { type AskedDistance, toolStore } from '../../../desk/tools/toolStore';
import { editPlan } from '../fields/edit';

type Model = Extract<Piece, { kind: 'model' }>;

/** Both points stay pressed where the thing has gone, so that the next number is about the same two places. */
const follow = (asked: AskedDistance, to: Spot): void =>
  toolStore.setState({ asksDistance: { ...asked, to }, entry: null });

const TOO_NEAR = 'The two points lie on one another. Press two places that are farther apart.';

/** Makes two pressed points lie so many metres apart. A sentence that says what would work, or null. */
export function scaleTo(asked: AskedDistance, metres: number): string | null {
  const { purpose, from, to } = asked;
  const factor = factorOf(from, to, metres);
  if (factor === null) return metres > 0 ? TOO_NEAR : 'This takes a length above nothing.';
  const refusal =
    purpose.type === 'model'
      ? editPlan('scale a model', (plan) => scaleModel(plan, { id: purpose.id, from, to, metres }))
      : editPlan('scale the picture', (plan) => scaleUnderlay(plan, { from, to, metres }));
  if (refusal === null) {
    follow(asked, [from[0] + (to[0] - from[0]) * factor, from[1] + (to[1] - from[1]) * factor]);
  }
  return refusal;
}

/** Makes the way from the first point to the second run on a bearing, degrees clockwise from the top of the sheet. */
export function turnTo(asked: AskedDistance, bearingDegrees: number): string | null {
  const { purpose, from, to } = asked;
  const metres = metresBetween(from, to);
  if (metres === 0) return TOO_NEAR;
  const refusal =
    purpose.type === 'model'
      ? editPlan('turn a model', (plan) =>
          turnModelToNorth(plan, { id: purpose.id, from, to, bearingDegrees }),
        )
      : editPlan('turn the picture', (plan) => turnUnderlayToNorth(plan, { from, to, bearingDegrees }));
  if (refusal === null) follow(asked, spotFrom(from, bearingDegrees, metres));
  return refusal;
}

/** What one stands on beneath a model: the model itself is looked through. */
const deckUnder = (model: Model, spot: Spot): number =>
  surfaceUnder(planStore.getState().plan, spot, { except: new Set([model.id]) }).metres;

/** Puts the lowest of a model on the deck. */
export function putFootOnDeck(model: Model): void {
  const deckMetres = deckUnder(model, [model.at[0], model.at[2]]);
  editPlan('put a model on the deck', (plan) =>
    putModelOnDeck(plan, { id: model.id, foundMetres: model.at[1], deckMetres }),
  );
}

/** Puts what a model has at a place, seen from above, on the deck: the scanned floor of a roof and not the street. */
export function putPlaceOnDeck(model: Model, spot: Spot): void {
  const foundMetres = modelHeightAt(model, spot);
  if (foundMetres === null) {
    toastStore
      .getState()
      .say(`${named(model.label)} has no surface at the first point. Press a place on its floor.`, {
        tone: 'warn',
        about: 'measuring',
      });
    return;
  }
  editPlan('put a model on the deck', (plan) =>
    putModelOnDeck(plan, { id: model.id, foundMetres, deckMetres: deckUnder(model, spot) }),
  );
}
