import { glassOf } from '../../core/optics/camera';
import { moveSetup } from '../../core/plan/edits/moveSetup';
import { removeSetup } from '../../core/plan/edits/removeSetup';
import { renameSetup } from '../../core/plan/edits/renameSetup';
import { setKeyPosition } from '../../core/plan/edits/setKeyPosition';
import { setLens } from '../../core/plan/edits/setLens';
import { setStop } from '../../core/plan/edits/setStop';
import { turnSetup } from '../../core/plan/edits/turnSetup';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { letterOf } from '../../desk/choose';
import { useLivePlan } from '../../desk/hooks';
import { planStore } from '../../desk/planStore';
import { toastStore } from '../../desk/toastStore';
import { Field, SelectField } from '../parts/Field';
import { expectedSentence } from '../parts/faultSentence';
import { HeadingField } from '../parts/HeadingField';
import { Icon } from '../parts/Icon';
import { LengthField } from '../parts/LengthField';
import { readStop } from './readStop';

const edit = (name: string, change: (plan: Plan) => Plan): string | null =>
  expectedSentence(planStore.getState().edit(name, change));

function takeOut(setup: Setup): void {
  const { edit: make, undo } = planStore.getState();
  make(`take out ${setup.label}`, (plan) => removeSetup(plan, { setupId: setup.id }));
  toastStore.getState().say(`${setup.label} is out of the plan.`, { action: { word: 'Undo', act: undo } });
}

/** The chosen camera: its glass, and where its first key stands. */
export function SetupPanel({ setup }: { readonly setup: Setup }) {
  const plan = useLivePlan();
  const setupId = setup.id;
  const key = setup.move.keys[0];
  const { lens } = glassOf(plan, setup);
  if (!key) return null;
  const [x, y, z] = key.position;
  return (
    <>
      <h3 className="of-item">
        <Icon name="camera" />
        Setup {letterOf(plan, setupId)}, {setup.support}
        {setup.move.keys.length > 1 ? `, a move of ${setup.move.keys.length} keys` : ''}
      </h3>
      <div className="fields" key={setupId}>
        <SelectField
          wide
          label="lens"
          value={setup.lens}
          onChange={(value) => edit('change the lens', (before) => setLens(before, { setupId, lens: value }))}
        >
          {plan.kit.lenses.map((each) => (
            <option key={each.id} value={each.id}>
              {each.label}
            </option>
          ))}
        </SelectField>
        <Field
          label="stop"
          text={`T${setup.stop}`}
          commit={(text) => {
            const read = readStop(text, lens);
            return read.ok
              ? edit('set the stop', (before) => setStop(before, { setupId, stop: read.stop }))
              : read.sentence;
          }}
        />
        <LengthField
          label="lens height"
          metres={y}
          commit={(height) =>
            edit('raise the camera', (before) =>
              setup.move.keys.reduce(
                (after, { position }, keyIndex) =>
                  setKeyPosition(after, {
                    setupId,
                    keyIndex,
                    position: [position[0], position[1] + height - y, position[2]],
                  }),
                before,
              ),
            )
          }
        />
        <LengthField
          label="x, right"
          metres={x}
          commit={(to) => edit('move the camera', (before) => moveSetup(before, { setupId, to: [to, z] }))}
        />
        <LengthField
          label="z, down"
          metres={z}
          commit={(to) => edit('move the camera', (before) => moveSetup(before, { setupId, to: [x, to] }))}
        />
        <HeadingField
          label="pan"
          degrees={key.headingDegrees}
          commit={(degrees) => {
            // The shorter way round, so that a typed 10 from 350 turns 20° on.
            const by = ((((degrees - key.headingDegrees + 180) % 360) + 360) % 360) - 180;
            return edit('pan the camera', (before) => turnSetup(before, { setupId, byDegrees: by }));
          }}
        />
        <Field
          wide
          label="name"
          text={setup.label}
          commit={(text) => edit('rename', (before) => renameSetup(before, { setupId, label: text.trim() }))}
        />
      </div>
      <p className="acts">
        <button type="button" className="bare" onClick={() => takeOut(setup)}>
          Take it out
        </button>
      </p>
    </>
  );
}
