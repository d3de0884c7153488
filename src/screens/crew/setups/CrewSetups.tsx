import { setupsInOrder } from '../../../core/plan/nightOrder';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { coming } from '../parts/coming/coming';
import { setupAt } from '../parts/now/nightMinutes';
import { useNow } from '../parts/now/useNow';
import { SetupCard } from './SetupCard';

const PictureNotice = coming(async () => (await import('../picture/PictureNotice')).PictureNotice);

/** Cards of the setups in the night's order; the one that is worked on by the device's clock says so. */
export function CrewSetups({ chosenId }: { readonly chosenId: string | null }) {
  const plan = useCrew((state) => state.plan);
  const night = useCrewReading((state) => state.night?.night ?? null);
  const now = useNow(night);
  const setups = setupsInOrder(plan);
  const onId = night && now !== null ? setupAt(night, now) : null;
  return (
    <section aria-label="Setups in tonight’s order">
      <PictureNotice />
      {setups.length === 0 ? (
        <p className="crew-none">This night has no setups yet.</p>
      ) : (
        <ol>
          {setups.map((setup) => (
            <SetupCard key={setup.id} setup={setup} chosen={setup.id === chosenId} on={setup.id === onId} />
          ))}
        </ol>
      )}
    </section>
  );
}
