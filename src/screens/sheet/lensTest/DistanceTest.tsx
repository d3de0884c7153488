import { useEffect, useMemo, useState } from 'react';
import { reframing, towardsWhat } from '../../../core/continuity/reframing';
import { stateAt } from '../../../core/optics/camera';
import { reframe } from '../../../core/plan/edits/reframe';
import { named } from '../../../core/plan/named';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { withNames } from '../../../core/plan/withNames';
import type { SetupReport } from '../../../core/report/types';
import { letterOf } from '../../../desk/choose';
import { useLive, useSession } from '../../../desk/hooks';
import { tryMoved } from '../../../desk/lensTest';
import { proposalStore } from '../../../desk/lensTestProposal';
import { liveStore } from '../../../desk/liveStore';
import { sentenceOf } from '../../../desk/reasonOf';
import { SelectField } from '../../parts/Field';
import { LengthField } from '../../parts/LengthField';
import { useReportOverSpan } from '../../report/useSetupReports';
import { endPreview, make, preview } from '../previewing';
import { findingsWords, reframingWords } from './words';

/** Farther than this the background is the sky, metres. */
const FARTHEST_BEHIND = 5000;

/** What a setup would see, or why that could not be read. */
interface Seen {
  readonly setup: Setup;
  readonly report: SetupReport | null;
  readonly trouble: string | null;
}

/** What the setup would see from the other place over its move; null until it is known. */
function useMovedReport(plan: Plan, setup: Setup | null): Seen | null {
  const [known, setKnown] = useState<Seen | null>(null);
  useEffect(() => {
    if (!setup) return;
    const waiting = new AbortController();
    const tell = (seen: Omit<Seen, 'setup'>): void => {
      if (!waiting.signal.aborted) setKnown({ setup, ...seen });
    };
    tryMoved(plan, setup, waiting.signal).then(
      (trial) => {
        if (trial) tell({ report: trial.report, trouble: null });
      },
      (error: unknown) =>
        tell({ report: null, trouble: sentenceOf('What shows from there could not be read', error) }),
    );
    return () => waiting.abort();
  }, [plan, setup]);
  return known && known.setup === setup ? known : null;
}

/** What more or less shows from there, as far as it is known. */
function FromThere({ before, after }: { readonly before: SetupReport | null; readonly after: Seen | null }) {
  if (after && after.trouble !== null)
    return (
      <p className="err" role="alert">
        {after.trouble}
      </p>
    );
  return (
    <p className="q" aria-live="polite">
      {before && after?.report ? findingsWords(before, after.report) : 'What shows from there is being read.'}
    </p>
  );
}

/** The same framing on another lens: where the camera stands for it, and what that does. */
export function DistanceTest(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly seconds: number;
  /** Who is framed, until somebody else is chosen. */
  readonly first: string | null;
}) {
  const { plan, setup, seconds, first } = props;
  const lengths = useSession((state) => state.lengths);
  const [asked, setAsked] = useState<{ readonly lensId: string; readonly performerId: string }>({
    lensId: '',
    performerId: '',
  });
  const [behindMetres, setBehind] = useState(10);
  const shown = useLive((state) => state.gesture?.itemId === 'distance test');
  const others = plan.kit.lenses.filter(({ id }) => id !== setup.lens);
  const lens = others.find(({ id }) => id === asked.lensId) ?? others[0];
  const who =
    plan.cast.find(({ id }) => id === asked.performerId) ??
    plan.cast.find(({ id }) => id === first) ??
    plan.cast[0];
  const lensId = lens?.id;
  const performerId = who?.id;
  const found = useMemo(
    () =>
      lensId === undefined || performerId === undefined
        ? null
        : reframing(plan, setup, { lensId, performerId, seconds, behindMetres, lengths }),
    [plan, setup, lensId, performerId, seconds, behindMetres, lengths],
  );
  const moved = useMemo(() => {
    if (!found || found.why !== null) return null;
    return reframe(plan, found.change).setups.find(({ id }) => id === setup.id) ?? null;
  }, [plan, setup, found]);
  const before = useReportOverSpan(setup.id);
  const after = useMovedReport(plan, moved);
  const way = useMemo(() => {
    if (!found) return null;
    const { position, headingDegrees } = stateAt(plan, setup, seconds);
    const to = found.same.position;
    return {
      from: [position[0], position[2]] as const,
      to: [to[0], to[2]] as const,
      headingDegrees,
      letter: letterOf(plan, setup.id),
    };
  }, [plan, setup, seconds, found]);
  // What is previewed follows what is asked.
  useEffect(() => {
    if (liveStore.getState().gesture?.itemId !== 'distance test') return;
    if (found?.why === null) preview('distance test', (from) => reframe(from, found.change));
    else endPreview('distance test');
  }, [found]);
  useEffect(() => {
    proposalStore.setState({ place: way });
    return () => proposalStore.setState({ place: null });
  }, [way]);

  if (!lens || !who)
    return (
      <p className="q">
        {who ? 'The kit has one lens only.' : 'Nobody plays yet, so there is no framing to keep.'}
      </p>
    );
  const change = (from: Plan): Plan => (found ? reframe(from, found.change) : from);
  return (
    <section className="distance" aria-label="Distance test">
      <h3>The same framing on another lens</h3>
      <div className="fields">
        <SelectField
          wide
          label="lens"
          value={lens.id}
          onChange={(value) => setAsked({ ...asked, lensId: value })}
        >
          {others.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </SelectField>
        <SelectField
          wide
          label="framed alike"
          value={who.id}
          onChange={(value) => setAsked({ ...asked, performerId: value })}
        >
          {withNames(plan).cast.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </SelectField>
        <div className="wide">
          <LengthField
            label="background behind"
            metres={behindMetres}
            commit={(metres) => {
              if (!(metres >= 0 && metres <= FARTHEST_BEHIND))
                return `The background lies from 0 m to ${FARTHEST_BEHIND} m behind. Did you mean 10 m?`;
              setBehind(metres);
              return null;
            }}
          />
        </div>
      </div>
      {found && way ? (
        <>
          <p className="distance-answer">
            {reframingWords(found, who.label, towardsWhat(plan, way.from, way.to), lengths)}
          </p>
          {found.why === null ? (
            <FromThere before={before} after={after} />
          ) : (
            <p className="err" role="alert">
              {found.why}
            </p>
          )}
          <p className="acts">
            <button
              type="button"
              className="do"
              disabled={found.why !== null}
              onClick={() =>
                make(
                  'frame alike on another lens',
                  change,
                  `${named(lens.label)} is on setup ${way.letter}, and its move has shifted.`,
                )
              }
            >
              Move it there
            </button>
            <button
              type="button"
              className="try"
              disabled={found.why !== null}
              onClick={() => (shown ? endPreview('distance test') : preview('distance test', change))}
            >
              {shown && found.why === null ? 'Put it back' : 'Preview'}
            </button>
          </p>
        </>
      ) : (
        <p className="q">{who.label} is nowhere in front of this camera now.</p>
      )}
    </section>
  );
}
