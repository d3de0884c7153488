import { glassOf } from '../../../core/optics/camera';
import { changeSetup } from '../../../core/plan/edits/changeSetup';
import { setStop } from '../../../core/plan/edits/setStop';
import type { Plan } from '../../../core/plan/schema/plan';
import { SETUP_LIMITS, type Setup } from '../../../core/plan/schema/setup';
import type { DepartmentFault } from '../../../core/report/cameraNotices';
import { NBSP } from '../../../core/units/numbers';
import { OfferField } from '../../parts/OfferField';
import { readStop } from '../readStop';
import { edit } from './editing';
import { LegalField } from './LegalField';
import { type Legal, numberWord } from './legal';
import { MoveFaults } from './MoveFaults';

type Numbered =
  | 'iso'
  | 'shutterDegrees'
  | 'framesPerSecond'
  | 'ndStops'
  | 'filterLossStops'
  | 'balanceKelvin';

const FIELDS: readonly { readonly name: Numbered; readonly label: string; readonly legal: Legal }[] = [
  { name: 'iso', label: 'ISO', legal: { what: 'ISO numbers', limits: SETUP_LIMITS.iso, inOneGo: true } },
  {
    name: 'shutterDegrees',
    label: 'shutter',
    legal: { what: 'Shutter angles', limits: SETUP_LIMITS.shutterDegrees, unit: '°' },
  },
  {
    name: 'framesPerSecond',
    label: 'frame rate',
    legal: { what: 'Frame rates', limits: SETUP_LIMITS.framesPerSecond, unit: 'fps' },
  },
  {
    name: 'ndStops',
    label: 'ND',
    legal: { what: 'Neutral densities', limits: SETUP_LIMITS.ndStops, unit: 'stops' },
  },
  {
    name: 'filterLossStops',
    label: 'filter loss',
    legal: { what: 'Losses of other filters', limits: SETUP_LIMITS.filterLossStops, unit: 'stops' },
  },
  {
    name: 'balanceKelvin',
    label: 'balance',
    legal: { what: 'Balances', limits: SETUP_LIMITS.balanceKelvin, unit: 'K', inOneGo: true },
  },
];

/** `1/48 s`: how long a frame is exposed, shutter and frame rate together. */
const exposureTime = ({ shutterDegrees, framesPerSecond }: Setup): string =>
  `1/${numberWord((360 * framesPerSecond) / shutterDegrees, 1)}${NBSP}s`;

/** How much light a camera takes. */
export function ExposureSection(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly faults: readonly DepartmentFault[];
}) {
  const { plan, setup, faults } = props;
  const { lens } = glassOf(plan, setup);
  const setupId = setup.id;
  const stopDown = (stop: number): string | null =>
    edit('set the stop', (before) => setStop(before, { setupId, stop }));
  return (
    <section className="group">
      <h4>Exposure, {exposureTime(setup)} a frame</h4>
      <div className="fields">
        <OfferField
          label="stop"
          text={`T${setup.stop}`}
          commit={(text) => {
            const read = readStop(text, lens);
            if (read.ok) {
              const sentence = stopDown(read.stop);
              return sentence === null ? null : { sentence, offer: null };
            }
            const { nearest, sentence } = read;
            return {
              sentence,
              offer:
                nearest === null ? null : { word: `Take T${nearest}`, take: () => void stopDown(nearest) },
            };
          }}
        />
        {FIELDS.map(({ name, label, legal }) => (
          <LegalField
            key={name}
            label={label}
            value={setup[name] ?? 0}
            legal={legal}
            take={(value) =>
              edit(`change the ${label}`, (before) =>
                value === undefined
                  ? before
                  : changeSetup(before, {
                      setupId,
                      // No loss is what a setup without the field has.
                      patch: { [name]: name === 'filterLossStops' && value === 0 ? undefined : value },
                    }),
              )
            }
          />
        ))}
      </div>
      <MoveFaults
        faults={faults}
        about="stop"
        word={(nearest) => `Take T${nearest}`}
        take={(nearest) => void stopDown(nearest)}
      />
    </section>
  );
}
