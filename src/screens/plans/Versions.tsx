import { useEffect, useState } from 'react';
import { closePlans } from '../../desk/plans/managing';
import { plansStore } from '../../desk/plans/plansStore';
import { goBackTo, listVersions, openVersion, type VersionCard } from '../../desk/plans/versions';
import { doing } from './doing';
import { whenWords } from './words';

const toList = (): void => plansStore.setState({ versionsOf: null });

function VersionEntry({ planId, version }: { readonly planId: string; readonly version: VersionCard }) {
  const { at, reason, sentence, plan } = version;
  const when = whenWords(at, Date.now());
  const leaveFor = (act: () => Promise<void>): void =>
    doing(async () => {
      await closePlans();
      await act();
    });
  return (
    <li>
      <p>
        <b>{`${when.charAt(0).toUpperCase()}${when.slice(1)}`}</b>
      </p>
      <p className="q">
        Before this: {reason}. {plan ? `Since then: ${sentence}` : `It cannot be read here. ${sentence}`}
      </p>
      {plan ? (
        <p className="acts">
          <button type="button" onClick={() => leaveFor(() => goBackTo(planId, version))}>
            Go back to it
          </button>
          <button type="button" onClick={() => leaveFor(() => openVersion(version))}>
            Open as a copy
          </button>
        </p>
      ) : null}
    </li>
  );
}

/** What was kept of a plan before each drastic step, the newest first. */
export function Versions({ planId, title }: { readonly planId: string; readonly title: string }) {
  const [versions, setVersions] = useState<readonly VersionCard[] | null>(null);
  useEffect(() => {
    let isWanted = true;
    doing(async () => {
      const found = await listVersions(planId);
      if (isWanted) setVersions(found);
    });
    return () => {
      isWanted = false;
    };
  }, [planId]);
  return (
    <section className="versions" aria-labelledby="versions-title">
      <div className="line">
        <h3 id="versions-title">Earlier versions of {title}</h3>
        <button type="button" ref={(button) => button?.focus()} onClick={toList}>
          All plans
        </button>
      </div>
      {versions?.length === 0 ? (
        <p className="q">
          None yet. Before a setup or several things are taken out, the plan as it was is kept here.
        </p>
      ) : null}
      <ol>
        {(versions ?? []).map((version) => (
          <VersionEntry key={version.at} planId={planId} version={version} />
        ))}
      </ol>
    </section>
  );
}
