import { ampWords } from '../../../core/report/power/powerWords';
import type { PowerReport } from '../../../core/report/power/types';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { nameInText } from '../../overhead/words';

/** What a thing draws and from where: `4.6 A from generator 2, circuit 1, 9 m of cable`; null for what draws nothing. */
export function powerWords(power: PowerReport, id: string, system: LengthSystem): string | null {
  const load = power.loads.find((each) => each.id === id);
  if (load) {
    const source = power.sources.find(({ id: own }) => own === load.sourceId);
    if (load.feeding === 'own') return 'a battery or socket of its own';
    if (load.feeding !== 'fed') return `not fed: ${load.feeding}`;
    if (!source || load.amps === null) return 'fed, with no current worked out';
    const cables = power.cables.filter((cable) => load.cableIds.includes(cable.id));
    const metres = cables.reduce((sum, cable) => sum + cable.lengthMetres, 0);
    const circuit = cables.find(({ circuit: number }) => number !== null)?.circuit;
    return [
      `${ampWords(load.amps)} from ${nameInText(source.label)}`,
      circuit === undefined || circuit === null ? '' : `circuit${NBSP}${circuit}`,
      metres > 0 ? `${formatLength(metres, system, { decimals: 0 })} of cable` : '',
    ]
      .filter((part) => part !== '')
      .join(', ');
  }
  const source = power.sources.find((each) => each.id === id);
  if (source) {
    const most = Math.max(0, ...source.legAmps);
    const share =
      source.share === null ? '' : `, ${formatNumber(source.share * 100, 0)}${NBSP}% of what it gives`;
    return `gives ${ampWords(most)}${share}`;
  }
  const distro = power.distros.find((each) => each.id === id);
  if (distro) return `carries ${ampWords(Math.max(0, ...distro.legAmps))} of ${ampWords(distro.inputAmps)}`;
  const cable = power.cables.find((each) => each.id === id);
  return cable
    ? `${ampWords(cable.amps)}, ${formatLength(cable.lengthMetres, system, { decimals: 0 })} with slack`
    : null;
}
