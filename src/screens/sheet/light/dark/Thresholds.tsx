import { DARK, darkOf } from '../../../../core/light/readsInTheDark';
import { setDark } from '../../../../core/plan/edits/setDark';
import { DARK_LIMITS, type Plan } from '../../../../core/plan/schema/plan';
import { edit } from '../../camera/editing';
import { LegalField } from '../../camera/LegalField';
import { contrastText, thresholdWords } from './darkWords';
import { isUsual, ownDark } from './ownDark';

const CONTRAST = {
  what: 'Contrasts',
  limits: DARK_LIMITS.contrastStops,
  unit: 'stops',
  decimals: 2,
} as const;
const UNDER = {
  what: 'Stops under grey',
  limits: DARK_LIMITS.stopsUnder,
  unit: 'stops',
  decimals: 1,
} as const;

/** From when on something counts as lost, for the whole plan. */
export function Thresholds({ plan }: { readonly plan: Plan }) {
  const dark = darkOf(plan);
  const own = { contrastStops: dark.contrastStops, stopsUnder: dark.stopsUnder };
  const take = (patch: Partial<typeof own>): string | null =>
    edit('say what is lost in the dark', (before) =>
      setDark(before, { dark: { ...before.dark, ...own, ...patch } }),
    );
  return (
    <section className="group">
      <h4>Lost in the dark is</h4>
      <div className="fields">
        <LegalField
          label="contrast under"
          value={dark.contrastStops}
          legal={CONTRAST}
          take={(contrastStops) => (contrastStops === undefined ? null : take({ contrastStops }))}
        />
        <LegalField
          label="or under grey by"
          value={dark.stopsUnder}
          legal={UNDER}
          take={(stopsUnder) => (stopsUnder === undefined ? null : take({ stopsUnder }))}
        />
      </div>
      <p className="advice">
        {thresholdWords(dark)} Both are of the picture as it is shot: who lifts the shadows later brings it
        back.
      </p>
      {plan.dark && !isUsual(own) ? (
        <button
          type="button"
          onClick={() =>
            void edit('say what is lost in the dark', (before) => {
              const { contrastStops, stopsUnder } = DARK;
              return setDark(before, { dark: ownDark({ ...before.dark, contrastStops, stopsUnder }) });
            })
          }
        >
          Back to {DARK.stopsUnder} stops and {contrastText(DARK.contrastStops)}
        </button>
      ) : null}
    </section>
  );
}
