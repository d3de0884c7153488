import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatSeconds } from '../../../core/units/seconds';
import { countOf } from '../../../desk/contactPictures';
import {
  type ContactWhat,
  contactSavingStore,
  saveContactPictures,
  stopContactPictures,
} from '../../../desk/contactSaving';
import { useSession, useViews } from '../../../desk/hooks';
import { SelectField } from '../../parts/Field';

/** Widths that pictures go out in, pixels. */
const WIDTHS = [1920, 2560, 3840] as const;

/** How far the pictures are, and for how long they have been drawn. */
function Progress() {
  const { saving } = useStore(contactSavingStore);
  const [, tick] = useState(0);
  useEffect(() => {
    const ticking = setInterval(() => tick((count) => count + 1), 1000);
    return () => clearInterval(ticking);
  }, []);
  if (!saving) return null;
  const seconds = (performance.now() - saving.sinceMs) / 1000;
  return (
    <p className="trying drawing">
      <span>
        <b>Drawing</b> picture {Math.min(saving.done + 1, saving.of)} of {saving.of},{' '}
        {formatSeconds(seconds, 0)} so far
      </span>
      <progress max={saving.of} value={saving.done} aria-label="Drawing the pictures" />
      <button type="button" className="bare" onClick={stopContactPictures}>
        Stop
      </button>
    </p>
  );
}

/** What saves the pictures: how wide, with the frame line or without, all on one sheet or each by itself. */
export function SavePanel({ plan }: { readonly plan: Plan }) {
  const [width, setWidth] = useState<number>(WIDTHS[0]);
  const [line, setLine] = useState(false);
  const lengths = useSession((state) => state.lengths);
  const refused = useViews((state) => state.pictureRefused !== null);
  const isSaving = useStore(contactSavingStore, ({ saving }) => saving !== null);
  const count = countOf(plan);
  const save = (what: ContactWhat) => () => void saveContactPictures(what, { width, line, lengths });
  const cannot = refused || isSaving || count === 0;
  return (
    <section className="save-pictures" aria-label="Save the pictures">
      <h3>Save the pictures</h3>
      <div className="fields">
        <SelectField wide label="wide" value={String(width)} onChange={(value) => setWidth(Number(value))}>
          {WIDTHS.map((pixels) => (
            <option key={pixels} value={pixels}>
              {pixels} pixels
            </option>
          ))}
        </SelectField>
      </div>
      <label className="with-line">
        <input type="checkbox" checked={line} onChange={(event) => setLine(event.currentTarget.checked)} />
        with the frame line and the look-around
      </label>
      <p className="q">
        {refused
          ? 'This browser draws no pictures, so there are none to be saved.'
          : `${plan.setups.length} ${plan.setups.length === 1 ? 'setup' : 'setups'}, ${count} ${count === 1 ? 'picture' : 'pictures'}. Each has its slate under it, and in its file.`}
      </p>
      <p className="acts">
        <button type="button" className="do" disabled={cannot} onClick={save('one sheet')}>
          Save one sheet
        </button>
        <button type="button" disabled={cannot} onClick={save('single pictures')}>
          Save each picture
        </button>
      </p>
      {isSaving ? <Progress /> : null}
    </section>
  );
}
