import type { Setup } from '../../../core/plan/schema/setup';
import { setupLetter } from '../../../core/plan/setupLetter';
import { formatLength } from '../../../core/units/lengths';
import { askedFor } from '../../../desk/crew/kept/askedFor';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { turnOf } from '../parts/nightWords';
import { SetTick } from '../parts/SetTick';
import { VerdictLine } from '../parts/VerdictLine';
import { CardPicture } from './CardPicture';
import { cardSaying, distanceWords, lensWords } from './cardWords';

/** One setup of the night: when, as the lens sees it, with what, from where, and what may show. `on`: it is worked on now. */
export function SetupCard({
  setup,
  chosen,
  on,
}: {
  readonly setup: Setup;
  readonly chosen: boolean;
  readonly on: boolean;
}) {
  const plan = useCrew((state) => state.plan);
  const lengths = useCrew((state) => state.lengths);
  const openSetup = useCrew((state) => state.openSetup);
  const sheet = useCrewReading((state) => state.sheets.get(setup.id));
  const report = useCrewReading((state) => state.setups.get(setup.id));
  const night = useCrewReading((state) => state.night?.night ?? null);
  const turn = night && turnOf(night, setup.id);
  return (
    <li className={chosen ? 'crew-card chosen' : 'crew-card'}>
      <div className="crew-letter" aria-hidden="true">
        {setupLetter(plan.setups.indexOf(setup))}
        <small>{turn?.shoot ?? ''}</small>
        {on ? <small className="crew-on">now</small> : null}
      </div>
      <div className="crew-card-body">
        <CardPicture setup={setup} />
        <h2>
          <button
            type="button"
            aria-current={chosen ? 'true' : undefined}
            data-setup={setup.id}
            onClick={() => openSetup(setup.id)}
          >
            <span className="vh">
              {setupLetter(plan.setups.indexOf(setup))}
              {turn ? `, shoots at ${turn.shoot}` : ''}
              {on ? ', on now' : ''},{' '}
            </span>
            {setup.label}
          </button>
          <span>{lensWords(plan, setup, sheet)}</span>
        </h2>
        <p className="crew-from">
          {sheet ? (
            <>
              <b>{formatLength(sheet.start.heightMetres, lengths)} high</b>,{' '}
              {distanceWords(setup, sheet, lengths)}
            </>
          ) : (
            setup.support
          )}
        </p>
        <div className="crew-card-foot">
          <VerdictLine saying={report ? cardSaying(report, lengths) : null} />
          <SetTick
            id={setup.id}
            of={askedFor(plan, setup.id)}
            label={`Setup ${setupLetter(plan.setups.indexOf(setup))}`}
          />
        </div>
      </div>
    </li>
  );
}
