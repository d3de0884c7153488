import { glassOf } from '../../../core/optics/camera';
import { setStop } from '../../../core/plan/edits/setStop';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { Field } from '../../parts/Field';
import { readStop } from '../readStop';
import { edit } from './editing';

/** How much light a camera takes. */
export function ExposureSection({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const { lens } = glassOf(plan, setup);
  return (
    <div className="fields">
      <Field
        label="stop"
        text={`T${setup.stop}`}
        commit={(text) => {
          const read = readStop(text, lens);
          return read.ok
            ? edit('set the stop', (before) => setStop(before, { setupId: setup.id, stop: read.stop }))
            : read.sentence;
        }}
      />
    </div>
  );
}
