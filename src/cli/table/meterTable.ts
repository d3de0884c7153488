import type { Plan } from '../../core/plan/schema/plan';
import type { Report } from '../../core/report/types';
import { formatLight } from '../../core/units/illuminance';
import { formatSigned } from '../../core/units/numbers';
import { formatSeconds } from '../../core/units/seconds';
import { plainText } from '../plainText';
import { type ColumnRule, setInColumns } from './columns';
import type { Ink } from './ink';

const COLUMNS: readonly ColumnRule[] = [{ leastWidth: 6 }, {}, { side: 'right' }, { side: 'right' }];
const NAMES = ['meter', 'at', 'lux', 'stops'];

/**
 * What the plan's meters read through each setup, beat by beat, against what its stop asks for, in lines of one table.
 * The names of the columns come first of each setup that has any.
 */
export function meterTable(report: Report, plan: Plan, width: number, ink: Ink): readonly string[][] {
  const labels = new Map((plan.probes ?? []).map(({ id, label }) => [id, label]));
  const rows = report.setups.map(({ light }) =>
    light.levels.flatMap(({ seconds, probes }) =>
      probes.map(({ id, lux, stops }) => [
        plainText(labels.get(id) ?? id),
        formatSeconds(seconds),
        formatLight(lux, 'lx'),
        stops === null ? '' : formatSigned(stops, 1),
      ]),
    ),
  );
  const [names, ...set] = setInColumns(COLUMNS, [NAMES, ...rows.flat()], width);
  let next = 0;
  return rows.map(({ length }) => {
    const own = set.slice(next, next + length);
    next += length;
    return length > 0 ? [ink.faint(names), ...own] : [];
  });
}
