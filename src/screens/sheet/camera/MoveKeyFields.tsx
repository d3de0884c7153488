import { glassOf, stateAt } from '../../../core/optics/camera';
import { trackOf } from '../../../core/optics/cameraKey';
import { roomOn, setAlong } from '../../../core/optics/onTrack';
import { setKey } from '../../../core/plan/edits/changeKeys';
import type { Plan } from '../../../core/plan/schema/plan';
import type { CameraKey, Setup } from '../../../core/plan/schema/setup';
import { keyAlong } from '../../../core/plan/trackLine';
import type { DepartmentFault } from '../../../core/report/cameraNotices';
import { formatLength } from '../../../core/units/lengths';
import { NBSP } from '../../../core/units/numbers';
import { formatSeconds } from '../../../core/units/seconds';
import { useSession } from '../../../desk/hooks';
import { LengthField } from '../../parts/LengthField';
import { edit } from './editing';
import { LegalField } from './LegalField';
import { MoveFaults } from './MoveFaults';
import { MomentFields } from './MoveMoment';

const ANGLES = [
  ['pan', 'headingDegrees', [-720, 720]],
  ['tilt', 'tiltDegrees', [-90, 90]],
  ['roll', 'rollDegrees', [-180, 180]],
] as const;

interface KeyProps {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly cameraKey: CameraKey;
  readonly keyIndex: number;
  /** On the action's clock. */
  readonly seconds: number;
  readonly faults: readonly DepartmentFault[];
}

/** All that one key of a move says: when it is, where the camera is then, and how it looks. */
export function MoveKeyFields({ plan, setup, cameraKey, keyIndex, seconds, faults }: KeyProps) {
  const lengths = useSession((state) => state.lengths);
  const setupId = setup.id;
  const track = trackOf(plan, setup);
  const { lens } = glassOf(plan, setup);
  const [x, y, z] = cameraKey.position;
  const set = (name: string, patch: Partial<CameraKey>): string | null =>
    edit(name, (before) => setKey(before, { setupId, keyIndex, patch }));
  const place = (position: CameraKey['position']): string | null => set('move a key', { position });
  const slide = (alongMetres: number): string | null =>
    edit('slide a key along the track', (before) => setAlong(before, { setupId, keyIndex, alongMetres }));
  const along = track ? keyAlong(track, cameraKey) : 0;
  const [low, high] = track ? roomOn(track) : [0, 0];
  const about = { faults, keyIndex };
  return (
    <>
      <div className="fields">
        <MomentFields
          plan={plan}
          moment={cameraKey}
          seconds={seconds}
          take={({ atSeconds, beat }) =>
            edit('retime a key', (before) =>
              setKey(before, { setupId, keyIndex, patch: { atSeconds, beat } }),
            )
          }
        />
        {track ? (
          <LengthField
            label="along the track"
            metres={along}
            commit={(metres) => {
              const sentence = slide(metres);
              return sentence ?? null;
            }}
          />
        ) : (
          <>
            <LengthField label="x, right" metres={x} commit={(to) => place([to, y, z])} />
            <LengthField label="z, down" metres={z} commit={(to) => place([x, y, to])} />
          </>
        )}
        <LengthField label="height" metres={y} commit={(to) => place([x, to, z])} />
        {ANGLES.map(([label, field, limits]) => (
          <LegalField
            key={field}
            label={label}
            value={cameraKey[field]}
            legal={{ what: `A ${label} may`, limits, unit: '°', decimals: 1 }}
            take={(value) => (value === undefined ? null : set(`${label} a key`, { [field]: value }))}
          />
        ))}
        {lens.longestMm === undefined ? null : (
          <LegalField
            label="focal length"
            value={cameraKey.focalMm ?? stateAt(plan, setup, seconds).focalMm}
            legal={{
              what: 'This zoom’s focal lengths',
              limits: [lens.focalMm, lens.longestMm],
              unit: 'mm',
              decimals: 1,
            }}
            take={(focalMm) => (focalMm === undefined ? null : set('zoom a key', { focalMm }))}
          />
        )}
      </div>
      {setup.operator ? <p className="advice">Pan and tilt give way to whom the operator holds.</p> : null}
      {track ? (
        <p className="advice">
          The dolly runs from {formatLength(low, lengths)} to {formatLength(high, lengths)} of {track.label},{' '}
          {formatLength(track.lengthMetres, lengths)} long.
        </p>
      ) : null}
      <MoveFaults
        {...about}
        about="along"
        word={(nearest) => `Take ${formatLength(nearest, lengths)}`}
        take={(nearest) => void slide(nearest)}
      />
      <MoveFaults
        {...about}
        about="key"
        word={(nearest) => `Take ${formatSeconds(nearest)}`}
        take={(nearest) =>
          void edit('retime a key', (before) =>
            setKey(before, { setupId, keyIndex, patch: { atSeconds: nearest, beat: undefined } }),
          )
        }
      />
      <MoveFaults
        {...about}
        about="zoom"
        word={(nearest) => `Take ${nearest}${NBSP}mm`}
        take={(nearest) => void set('zoom a key', { focalMm: nearest })}
      />
    </>
  );
}
