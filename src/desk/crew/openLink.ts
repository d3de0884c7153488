import { withNames } from '../../core/plan/withNames';
import { EMPTY_PLAN } from '../emptyPlan';
import { type LinkBeingRead, type LinkEnding, readLink } from '../linkReader/linkReader';
import { endCrewReading, startCrewReading } from './crewReading';
import { crewStore } from './crewStore';
import { keepLink } from './kept/keptLinks';
import { takeUpTicks } from './kept/ticks';
import { NOT_MOVED, overheadStore } from './overhead/overheadStore';
import { FIRST_PLACE, placeFrom } from './place';
import { themeNow } from './themeOfHour';

let reading: LinkBeingRead | null = null;

function take(fragment: string, ending: LinkEnding): void {
  if (!ending.ok) {
    const shows = ending.kind === 'stopped' ? 'stopped' : 'broken';
    crewStore.setState({ ...FIRST_PLACE, shows, trouble: ending.sentence });
    return;
  }
  const { plan: asWritten, leftOut } = ending;
  const plan = withNames(asWritten);
  // The place stays: a tab may have been chosen while the link was read.
  crewStore.setState({ shows: 'plan', plan, asWritten, leftOut, theme: themeNow(plan.place) });
  keepLink({ fragment, title: plan.title, date: plan.place.date });
  takeUpTicks(plan);
  startCrewReading(plan);
}

/**
 * Opens what a link holds, at the place that the browser's history has for it. The sheet says that it reads the link
 * until it is read; a link that was being read is given up.
 */
export async function openLink(fragment: string): Promise<void> {
  reading?.stop();
  endCrewReading();
  overheadStore.setState(NOT_MOVED, true);
  crewStore.setState({
    ...(placeFrom(history.state) ?? FIRST_PLACE),
    shows: 'reading',
    plan: EMPTY_PLAN,
    asWritten: EMPTY_PLAN,
    fragment,
    leftOut: [],
    trouble: '',
  });
  const own = readLink(fragment);
  reading = own;
  const ending = await own.ending;
  if (reading === own) take(fragment, ending);
}

/** Ends the reading of a link, which then says so. */
export function stopReading(): void {
  reading?.stop();
}
