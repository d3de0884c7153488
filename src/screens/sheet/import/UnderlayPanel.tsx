import { useId } from 'react';
import { changeUnderlay } from '../../../core/plan/edits/changeUnderlay';
import { setUnderlay } from '../../../core/plan/edits/setUnderlay';
import type { Underlay } from '../../../core/plan/schema/drawing';
import { formatLength } from '../../../core/units/lengths';
import { givePictureFile } from '../../../desk/assets/giveFile';
import { choosePhotoFile } from '../../../desk/assets/importPhoto';
import { useAsset } from '../../../desk/assets/useAsset';
import { useLivePlan, useSession } from '../../../desk/hooks';
import { liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { HeadingField } from '../../parts/HeadingField';
import { LengthField } from '../../parts/LengthField';
import { editPlan } from '../fields/edit';
import { TwoPoints } from './TwoPoints';
import './underlay.css';

/** The photo or drawing under the roof: how it lies and how strongly it shows; or, without one, the way to lay one. */
export function UnderlayPanel() {
  const { underlay } = useLivePlan();
  return (
    <section className="group">
      <h4>A picture under the roof</h4>
      {underlay ? (
        <Laid underlay={underlay} />
      ) : (
        <>
          <p className="advice">A photo from above or a drawing of the roof, scaled by two points.</p>
          <p className="acts">
            <button type="button" onClick={() => void choosePhotoFile()}>
              Lay a picture
            </button>
          </p>
        </>
      )}
    </section>
  );
}

const change = (name: string, patch: Partial<Underlay>): string | null =>
  editPlan(name, (plan) => changeUnderlay(plan, patch));

function Laid({ underlay }: { readonly underlay: Underlay }) {
  const lengths = useSession((state) => state.lengths);
  const state = useAsset(underlay.asset.sha256);
  const [width, height] = underlay.pixels.map((pixels) =>
    formatLength(pixels * underlay.metresPerPixel, lengths),
  );
  const isAway = state.status === 'missing' || state.status === 'unreadable';
  const { at, asset } = underlay;
  return (
    <>
      <p className="advice" role={isAway ? 'alert' : undefined}>
        {asset.name}, {width} by {height} on the roof.
        {state.status === 'missing' ? ' Its file is not on this device: only its edge is drawn.' : ''}
        {state.status === 'unreadable' ? ` ${state.sentence}` : ''}
      </p>
      {isAway ? (
        <p className="acts">
          <button type="button" className="do" onClick={() => void givePictureFile()}>
            Give it the file
          </button>
        </p>
      ) : null}
      <TwoPoints purpose={{ type: 'underlay' }} model={null} />
      <div className="fields">
        <LengthField
          label="right"
          metres={at[0]}
          commit={(metres) => change('move the picture', { at: [metres, at[1]] })}
        />
        <LengthField
          label="down the sheet"
          metres={at[1]}
          commit={(metres) => change('move the picture', { at: [at[0], metres] })}
        />
        <HeadingField
          label="turned"
          degrees={underlay.headingDegrees}
          commit={(headingDegrees) => change('turn the picture', { headingDegrees })}
        />
        <Strength strength={underlay.strength} />
      </div>
      <p className="acts">
        <button
          type="button"
          className="bare"
          onClick={() => editPlan('take the picture away', (plan) => setUnderlay(plan, { underlay: null }))}
        >
          Take it away
        </button>
      </p>
    </>
  );
}

const GESTURE = 'underlay';

/** How strongly the picture shows: one step of the history for one slide, however long. */
function Strength({ strength }: { readonly strength: number }) {
  const id = useId();
  const slide = (value: number): void => {
    const { gesture, beginGesture, moveGesture } = liveStore.getState();
    if (!gesture) beginGesture(GESTURE);
    moveGesture(changeUnderlay(planStore.getState().plan, { strength: value }));
  };
  const settle = (): void => {
    const { gesture, commitGesture } = liveStore.getState();
    if (gesture?.itemId === GESTURE) commitGesture('change how strongly the picture shows');
  };
  return (
    <div className="field strength">
      <label htmlFor={id}>strength</label>
      <span className="value">
        <input
          id={id}
          type="range"
          min={0}
          max={100}
          step={5}
          value={Math.round(strength * 100)}
          aria-valuetext={`${Math.round(strength * 100)} %`}
          onChange={(event) => slide(Number(event.currentTarget.value) / 100)}
          onPointerUp={settle}
          onKeyUp={settle}
          onBlur={settle}
        />
      </span>
    </div>
  );
}
