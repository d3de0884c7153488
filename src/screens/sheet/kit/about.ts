import { removeKitBody } from '../../../core/plan/edits/removeKitBody';
import { removeKitLens } from '../../../core/plan/edits/removeKitLens';
import { setKitBody } from '../../../core/plan/edits/setKitBody';
import { setKitLens } from '../../../core/plan/edits/setKitLens';
import type { Body, Lens } from '../../../core/plan/schema/kit';
import { giveBody, giveLens } from '../../../desk/kit/glassChoices';
import { newKitId } from '../../../desk/kit/newKitId';
import {
  bodyRefusal,
  forgetBody,
  forgetLens,
  keepBody,
  keepLens,
  lensRefusal,
} from '../../../desk/kit/ownKitStore';
import { edit } from '../camera/editing';

/** What can be done with a body as with a lens. */
export interface Doings<Entry> {
  readonly word: string;
  readonly put: (entry: Entry) => string | null;
  readonly takeOut: (id: string) => void;
  readonly keep: (entry: Entry) => string | null;
  readonly forget: (id: string) => void;
  readonly give: (setupId: string, entry: Entry) => void;
  /** A copy under an id of its own. */
  readonly copy: (entry: Entry) => Entry;
  /** What somebody begins with who enters their own. */
  readonly fresh: () => Entry;
}

/** A copy is somebody's own: its source spoke of the numbers as they were. */
const copiedLens = ({ source: _, ...lens }: Lens): Lens => ({
  ...lens,
  id: newKitId('lens'),
  label: copyLabel(lens.label),
});
const copiedBody = ({ source: _, ...body }: Body): Body => ({
  ...body,
  id: newKitId('body'),
  label: copyLabel(body.label),
});
const copyLabel = (label: string): string => `${label.slice(0, 75)} copy`;

export const LENS_DOINGS: Doings<Lens> = {
  word: 'lens',
  put: (lens) => lensRefusal(lens) ?? edit('put a lens in the plan', (plan) => setKitLens(plan, { lens })),
  takeOut: (id) => edit('take a lens out of the plan', (plan) => removeKitLens(plan, { id })),
  keep: keepLens,
  forget: forgetLens,
  give: (setupId, lens) => edit('change the lens', (plan) => giveLens(plan, setupId, lens)),
  copy: copiedLens,
  fresh: () => ({
    id: newKitId('lens'),
    label: 'Own lens',
    focalMm: 40,
    squeeze: 1,
    widestStop: 2,
    narrowestStop: 22,
    closeFocusMetres: 0.45,
  }),
};

export const BODY_DOINGS: Doings<Body> = {
  word: 'body',
  put: (body) => bodyRefusal(body) ?? edit('put a body in the plan', (plan) => setKitBody(plan, { body })),
  takeOut: (id) => edit('take a body out of the plan', (plan) => removeKitBody(plan, { id })),
  keep: keepBody,
  forget: forgetBody,
  give: (setupId, body) => edit('change the body', (plan) => giveBody(plan, setupId, body)),
  copy: copiedBody,
  fresh: () => ({
    id: newKitId('body'),
    label: 'Own body',
    modes: [{ id: 'mode-1', label: 'Open gate', gateMm: [36, 24] }],
  }),
};
