import { CONTINUOUS_SHARE } from '../../../core/power/ratings';
import {
  ampWords,
  hourWords,
  litreWords,
  nameIn,
  voltWords,
  wattWords,
  wireWords,
} from '../../../core/report/power/powerWords';
import { formatLength } from '../../../core/units/lengths';
import { NBSP } from '../../../core/units/numbers';
import { formatShare } from '../../../core/units/shares';
import type { PartWriter } from '../partWriter';
import type { PartInput } from '../types';

/** Supplies, circuits in use, cables, loads, and what is said of them. */
export function powerPart(
  writer: PartWriter,
  { plan, lengths, report: { power } }: PartInput,
  part: string,
): void {
  const name = (id: string | null): string => (id === null ? 'nothing' : nameIn(plan, id));
  writer.newPage(part);
  writer.heading(part);
  writer.text(
    `${power.mainsVolts}${NBSP}V, ${power.mainsHertz}${NBSP}Hz; everything on for ${hourWords(power.hours.hours)}.`,
  );
  if (power.sources.length > 0) writer.subheading('Supplies');
  writer.table(
    [
      { name: 'supply', share: 30 },
      { name: 'gives', share: 16, align: 'right' },
      { name: 'asked', share: 16, align: 'right' },
      { name: 'of it', share: 12, align: 'right' },
      { name: 'on legs', share: 26, align: 'right' },
      { name: 'fuel in all', share: 16, align: 'right' },
      { name: 'lasts', share: 14, align: 'right' },
    ],
    power.sources.map((source) => {
      const hours = source.fuel?.tankHours ?? source.batteryHours;
      return [
        source.label,
        source.continuousWatts === null ? voltWords(source.volts) : wattWords(source.continuousWatts),
        wattWords(source.watts),
        source.share === null ? '' : formatShare(source.share),
        source.legAmps.map(ampWords).join(' + '),
        source.fuel ? litreWords(source.fuel.litres) : '',
        hours === null ? '' : hourWords(hours),
      ];
    }),
  );
  const used = power.circuits.filter(({ cableIds }) => cableIds.length > 0);
  writer.subheading('Circuits');
  if (used.length === 0) writer.text('No circuit is in use: nothing is plugged in at both ends.');
  writer.table(
    [
      { name: 'at', share: 26 },
      { name: 'no.', share: 6, align: 'right' },
      { name: 'breaker', share: 12, align: 'right' },
      { name: 'leg', share: 8 },
      { name: 'carries', share: 18, align: 'right' },
      { name: `of ${formatShare(CONTINUOUS_SHARE)}`, share: 12, align: 'right' },
      { name: 'feeds', share: 48 },
    ],
    used.map((circuit) => [
      name(circuit.ownerId),
      String(circuit.number),
      ampWords(circuit.ratedAmps),
      circuit.legs.join('+'),
      circuit.legAmps.map(ampWords).join(' + '),
      formatShare(circuit.continuousShare),
      circuit.loadIds.map(name).join('; '),
    ]),
  );
  const carrying = power.cables.filter(({ sourceId }) => sourceId !== null);
  if (carrying.length > 0) writer.subheading('Cables');
  writer.table(
    [
      { name: 'cable', share: 30 },
      { name: 'from', share: 26 },
      { name: 'to', share: 26 },
      { name: 'size', share: 14 },
      { name: 'length', share: 12, align: 'right' },
      { name: 'carries', share: 12, align: 'right' },
      { name: 'loses', share: 12, align: 'right' },
    ],
    carrying.map((cable) => [
      cable.label,
      name(cable.fromId),
      name(cable.toId),
      wireWords(cable.wire),
      formatLength(cable.lengthMetres, lengths, { decimals: 1 }),
      ampWords(cable.amps),
      voltWords(cable.dropVolts),
    ]),
  );
  if (power.sentences.length > 0) writer.subheading('What is said of it', 'text');
  for (const { standing, sentence, about } of power.sentences) {
    writer.gap(2);
    writer.text(
      `${about === 'caution' ? 'Caution' : standing === 'breaks' ? 'Breaks' : 'Said'}: ${sentence}`,
      {
        weight: standing === 'breaks' ? 'strong' : 'regular',
      },
    );
  }
}
