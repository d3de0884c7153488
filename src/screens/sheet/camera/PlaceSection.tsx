import { stateAt } from '../../../core/optics/camera';
import { keysOf } from '../../../core/optics/cameraKey';
import { moveCamera } from '../../../core/optics/onTrack';
import { renameSetup } from '../../../core/plan/edits/renameSetup';
import { setKeyPosition } from '../../../core/plan/edits/setKeyPosition';
import { turnSetup } from '../../../core/plan/edits/turnSetup';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { Field } from '../../parts/Field';
import { HeadingField } from '../../parts/HeadingField';
import { LengthField } from '../../parts/LengthField';
import { edit } from './editing';

/** Where a camera's first key stands, and what it is called. */
export function PlaceSection({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const setupId = setup.id;
  const [key] = setup.move.keys;
  if (!key) return null;
  // On a track its place follows from how far along it is.
  const [x, y, z] = stateAt(plan, setup, keysOf(plan, setup)[0].atSeconds).position;
  return (
    <section className="group">
      <h4>Place</h4>
      <div className="fields">
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
        <HeadingField
          label="pan"
          degrees={key.headingDegrees}
          commit={(degrees) => {
            // The shorter way round, so that a typed 10 from 350 turns 20° on.
            const by = ((((degrees - key.headingDegrees + 180) % 360) + 360) % 360) - 180;
            return edit('pan the camera', (before) => turnSetup(before, { setupId, byDegrees: by }));
          }}
        />
        <LengthField
          label="x, right"
          metres={x}
          commit={(to) => edit('move the camera', (before) => moveCamera(before, { setupId, to: [to, z] }))}
        />
        <LengthField
          label="z, down"
          metres={z}
          commit={(to) => edit('move the camera', (before) => moveCamera(before, { setupId, to: [x, to] }))}
        />
        <Field
          wide
          label="name"
          text={setup.label}
          commit={(text) => edit('rename', (before) => renameSetup(before, { setupId, label: text.trim() }))}
        />
      </div>
    </section>
  );
}
