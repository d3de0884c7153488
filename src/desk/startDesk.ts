import { startAssets } from './assets/holding';
import { startCautions } from './cautions/asking';
import { keepChoicesInPlan } from './choose';
import { keepCompared } from './compare/compareStore';
import { DEMO_FILE, fetchDemo } from './demo';
import { EMPTY_PLAN } from './emptyPlan';
import { startKeeping } from './keeping';
import { keepingStore } from './keepingStore';
import { offerNewerBuild } from './newerBuild';
import { planStore } from './planStore';
import { restoreKept } from './plans/opening';
import { startPlayback } from './playback';
import { startReports } from './reports';

/** Opens what this device kept, else the demonstration night, else an empty plan; then keeps, plays and reads. */
export async function startDesk(): Promise<void> {
  startKeeping();
  startPlayback();
  keepChoicesInPlan();
  keepCompared();
  startReports();
  startCautions();
  startAssets();
  offerNewerBuild();
  const { startWith } = planStore.getState();
  const kept = await restoreKept();
  if (keepingStore.getState().state === 'starting') keepingStore.setState({ state: 'kept' });
  if (kept) {
    startWith(kept.plan, kept.fileName, kept.planId);
    return;
  }
  const demo = await fetchDemo();
  if (demo) startWith(demo, DEMO_FILE);
  else startWith(EMPTY_PLAN, 'new.plan.json');
}
