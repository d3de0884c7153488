import { memo } from 'react';
import { lampsAt } from '../../../core/form/lamps';
import type { LampForm } from '../../../core/form/types';
import type { Plan } from '../../../core/plan/schema/plan';
import { fanPath, spreadOf } from '../geometry/fans';
import { headingOf, type Spot } from '../geometry/spots';

/** A throw is drawn as far as the axis of its lamp gives this much: about a face two stops under, at T2.8 and ISO 800; lux. */
export const DRAWN_TO_LUX = 100;
/** More fades than this would be a wash; the lamps themselves are drawn all the same. */
const MOST_LAMPS = 80;

/** The lamps whose throws are drawn: those that are lit as the action begins, and not hidden. */
export function throwingLamps(plan: Plan): readonly { readonly lamp: LampForm; readonly id: string }[] {
  const hidden = new Set(plan.gear.filter((gear) => gear.hidden).map(({ id }) => id));
  return lampsAt(plan, 0)
    .filter(({ itemId }) => !hidden.has(itemId))
    .map((lamp, place) => ({ lamp, id: `throw-${lamp.itemId}-${place}` }))
    .filter(({ lamp }) => lamp.peakCandela > 0);
}

/** What the lamps give, as radial fades over the deck: field and beam of each head, a glow around what shines all round. */
export function Throws({ plan, clip }: { readonly plan: Plan; readonly clip: string }) {
  const lamps = throwingLamps(plan);
  return (
    <g className="throws" clipPath={clip}>
      {lamps.slice(0, MOST_LAMPS).map(({ id, lamp }) => (
        <Throw key={id} id={id} lamp={lamp} />
      ))}
    </g>
  );
}

interface ThrowProps {
  readonly id: string;
  readonly lamp: LampForm;
}

const Throw = memo(
  function Throw({ id, lamp }: ThrowProps) {
    const at: Spot = [lamp.position[0], lamp.position[2]];
    const [x, y, z] = lamp.direction;
    const tilt = (Math.asin(Math.max(-1, Math.min(1, y))) * 180) / Math.PI;
    const heading = headingOf([x, z]);
    const far = Math.sqrt(lamp.peakCandela / DRAWN_TO_LUX);
    const [field, beam] = [spreadOf(lamp.fieldDegrees, tilt), spreadOf(lamp.beamDegrees, tilt)];
    const reach = field.round ? far : far * Math.max(0.2, Math.cos((tilt * Math.PI) / 180));
    return (
      <>
        <radialGradient
          id={id}
          href={field.round ? '#light-glow' : '#light-throw'}
          gradientUnits="userSpaceOnUse"
          cx={at[0]}
          cy={at[1]}
          r={reach}
        />
        {field.round ? (
          <circle className="throw glow" fill={`url(#${id})`} cx={at[0]} cy={at[1]} r={reach} />
        ) : (
          <>
            <path className="throw" fill={`url(#${id})`} d={fanPath(at, heading, field.halfDegrees, reach)} />
            {!beam.round && (
              <path
                className="throw beam"
                fill={`url(#${id})`}
                d={fanPath(at, heading, beam.halfDegrees, reach)}
              />
            )}
          </>
        )}
      </>
    );
  },
  (before, after) => before.id === after.id && sameLamp(before.lamp, after.lamp),
);

/** Lamps are made anew for every plan; most are as they were. */
function sameLamp(a: LampForm, b: LampForm): boolean {
  return (
    a.position.every((value, axis) => value === b.position[axis]) &&
    a.direction.every((value, axis) => value === b.direction[axis]) &&
    a.peakCandela === b.peakCandela &&
    a.beamDegrees === b.beamDegrees &&
    a.fieldDegrees === b.fieldDegrees
  );
}

/** The fades that every throw takes its own middle and reach on: the square of the distance, eased to nothing at its end. */
export const LightFades = memo(function LightFades() {
  return (
    <>
      <radialGradient id="light-throw">
        <stop className="light" offset="0" stopOpacity="1" />
        <stop className="light" offset=".12" stopOpacity=".72" />
        <stop className="light" offset=".4" stopOpacity=".26" />
        <stop className="light" offset=".75" stopOpacity=".08" />
        <stop className="light" offset="1" stopOpacity="0" />
      </radialGradient>
      <radialGradient id="light-glow">
        <stop className="light" offset="0" stopOpacity=".9" />
        <stop className="light" offset=".35" stopOpacity=".3" />
        <stop className="light" offset="1" stopOpacity="0" />
      </radialGradient>
    </>
  );
});
