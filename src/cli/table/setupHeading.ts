import { glassOf } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import { setupLetter } from '../../core/plan/setupLetter';
import type { SetupReport } from '../../core/report/types';
import { formatDegrees } from '../../core/units/angles';
import { NBSP } from '../../core/units/numbers';
import { formatSeconds } from '../../core/units/seconds';
import { plainText } from '../plainText';
import type { Ink } from './ink';
import { cutTo, textWidth } from './textWidth';

const GAP = '  ';

/** Letter and name of a setup, its lens, angles of view and span: on one line, or on two where that is too long. */
export function setupHeading(setup: SetupReport, plan: Plan, width: number, ink: Ink): string[] {
  const place = plan.setups.findIndex((each) => each.id === setup.id);
  const name = plainText(`${setupLetter(place)}${GAP}${setup.label}`);
  const { lens } = glassOf(plan, plan.setups[place]);
  const squeeze = lens.squeeze === 1 ? '' : `, ${lens.squeeze}x squeeze`;
  const angles = `${formatDegrees(setup.angles.horizontal)} by ${formatDegrees(setup.angles.vertical)}`;
  const glass = `${lens.focalMm}${NBSP}mm${squeeze}, ${angles}, ${spanWords(setup)}`;
  return textWidth(name + GAP + glass) <= width
    ? [ink.strong(name) + GAP + glass]
    : [ink.strong(cutTo(name, width)), cutTo(GAP + glass, width)];
}

function spanWords({ seconds: [from, to] }: SetupReport): string {
  return from === to ? `at ${formatSeconds(from)}` : `${formatSeconds(from)} to ${formatSeconds(to)}`;
}
