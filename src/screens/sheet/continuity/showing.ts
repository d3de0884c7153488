import type { ContinuityFinding } from '../../../core/continuity/continuity';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { chooseSetup, goToSeconds } from '../../../desk/choose';
import { seeBeside } from '../../../desk/compare/compareStore';
import { liveStore } from '../../../desk/liveStore';
import { sessionStore } from '../../../desk/sessionStore';
import { blockingViewStore } from '../blocking/coverage/view';

/** Looks at a finding: through its setup, beside the one that it is held against, at the moment when it is seen best. */
export function showFinding({ setupId, againstId, atSeconds }: ContinuityFinding): void {
  liveStore.getState().setPlaying(false);
  chooseSetup(setupId);
  if (againstId !== null) seeBeside(againstId);
  if (atSeconds !== null) goToSeconds(atSeconds);
}

/** Shows on the roof the line that a finding is about; it is drawn there while the blocking is looked at. */
export function showLine(finding: Extract<ContinuityFinding, { readonly kind: 'line' }>): void {
  const { setRoofView, setSheet } = sessionStore.getState();
  setRoofView('overhead');
  blockingViewStore.setState({ view: 'timeline' });
  if (finding.lineId !== null) blockingStore.setState({ chosen: { type: 'line', lineId: finding.lineId } });
  setSheet('blocking');
  showFinding(finding);
}
