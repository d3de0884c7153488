import { askedLux, filterStops, greyLuminance } from '../../../../core/light/exposure';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { formatLight, lightUnitOf } from '../../../../core/units/illuminance';
import { NBSP } from '../../../../core/units/numbers';
import { formatStopCount } from '../../../../core/units/stops';
import { useSession } from '../../../../desk/hooks';
import { ExposureSection } from '../../camera/ExposureSection';
import { numberWord } from '../../camera/legal';
import { useDepartmentFaults } from '../../camera/MoveFaults';
import { FlickerSection } from './FlickerSection';
import { KeySection } from './KeySection';
import '../../camera/camera.css';

/** How the chosen setup is exposed, what that asks for, how a key gets there, and whether the mains are seen to beat. */
export function ExposureView({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const lengths = useSession((state) => state.lengths);
  const faults = useDepartmentFaults(plan, setup);
  const lux = formatLight(askedLux(setup), lightUnitOf(lengths));
  const grey = `${numberWord(greyLuminance(setup), 2)}${NBSP}cd/m²`;
  const taken = filterStops(setup);
  const filter = taken > 0 ? `Filters take ${formatStopCount(taken)} of it. ` : '';
  return (
    <div className="sections" key={setup.id}>
      <KeySection setup={setup} />
      <ExposureSection plan={plan} setup={setup} faults={faults} />
      <p className="advice">
        {filter}It asks for {lux} on a face, and renders {grey} as middle grey.
      </p>
      <FlickerSection plan={plan} setup={setup} />
    </div>
  );
}
