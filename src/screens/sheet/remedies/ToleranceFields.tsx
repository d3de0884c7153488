import { useStore } from 'zustand';
import { NBSP } from '../../../core/units/numbers';
import { MOST_TOLERANCE, setTolerance, toleranceStore } from '../../../desk/remedies/toleranceStore';
import { NumberField } from '../../parts/NumberField';

/** How far a lamp may be changed to be rid of a finding: its level and the angle of its light on its subject. */
export function ToleranceFields() {
  const tolerance = useStore(toleranceStore);
  const { levelStops, angleDegrees } = MOST_TOLERANCE;
  return (
    <fieldset className="tolerance">
      <legend>A lamp may change on its subject by</legend>
      <NumberField
        label="level"
        value={tolerance.levelStops}
        unit="stops"
        decimals={2}
        commit={(value) => {
          if (!(value >= 0 && value <= levelStops)) return `Up to ${levelStops}${NBSP}stops either way.`;
          setTolerance({ ...tolerance, levelStops: value });
          return null;
        }}
      />
      <NumberField
        label="angle"
        value={tolerance.angleDegrees}
        unit="°"
        commit={(value) => {
          if (!(value >= 0 && value <= angleDegrees)) return `Up to ${angleDegrees}° either way.`;
          setTolerance({ ...tolerance, angleDegrees: value });
          return null;
        }}
      />
    </fieldset>
  );
}
