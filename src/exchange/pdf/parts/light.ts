import { itemOf } from '../../../core/plan/items';
import { setupLetter } from '../../../core/plan/setupLetter';
import { formatLight, lightUnitOf } from '../../../core/units/illuminance';
import { formatNumber, formatSigned, NBSP } from '../../../core/units/numbers';
import { formatSeconds } from '../../../core/units/seconds';
import type { PartWriter } from '../partWriter';
import type { PartInput } from '../types';

const stops = (value: number | null | undefined): string => (value == null ? '' : formatSigned(value, 1));

/** The levels on every face that a setup shows, and at every meter, beat by beat. */
export function lightPart(writer: PartWriter, { plan, report, lengths }: PartInput, part: string): void {
  writer.newPage(part);
  writer.heading(part);
  writer.text(
    'Light on each face that a setup shows, at its beats, with the stops over what the setup’s stop asks for. Estimates: meter on the night.',
    { grey: 0.3 },
  );
  const unit = lightUnitOf(lengths);
  const nameOf = (id: string): string => itemOf(plan, id)?.record.label ?? id;
  const beatOf = (id: string): string => plan.beats.find((beat) => beat.id === id)?.label ?? '';
  report.setups.forEach(({ id, label, light }) => {
    const letter = setupLetter(plan.setups.findIndex((setup) => setup.id === id));
    writer.subheading(`${letter}  ${label}`);
    writer.text(`The stop asks for ${formatLight(light.askedLux, unit)} on a face.`);
    const rows = light.levels.flatMap(({ beatId, seconds, faces }) =>
      faces
        .filter(({ isShown }) => isShown)
        .map(({ performerId, key, fill, ratio, back }) => [
          `${beatOf(beatId)} ${formatSeconds(seconds)}`.trim(),
          nameOf(performerId),
          key ? nameOf(key.itemId) : 'none',
          key ? formatLight(key.lux, unit) : '',
          stops(key?.stops),
          formatLight(fill.lux, unit),
          fill.lux > 0 ? `${formatNumber(ratio, ratio >= 9.95 ? 0 : 1)}${NBSP}:${NBSP}1` : '',
          back ? nameOf(back.itemId) : 'none',
          back ? formatLight(back.lux, unit) : '',
        ]),
    );
    if (rows.length === 0) writer.text('It shows no face at a beat.');
    writer.table(
      [
        { name: 'beat', share: 20 },
        { name: 'face', share: 12 },
        { name: 'key', share: 18 },
        { name: 'key', share: 10, align: 'right' },
        { name: 'stops', share: 7, align: 'right' },
        { name: 'fill', share: 10, align: 'right' },
        { name: 'ratio', share: 9, align: 'right' },
        { name: 'back', share: 18 },
        { name: 'back', share: 10, align: 'right' },
      ],
      rows,
    );
    const meters = light.levels.flatMap(({ beatId, seconds, probes }) =>
      probes.map((probe) => [
        `${beatOf(beatId)} ${formatSeconds(seconds)}`.trim(),
        plan.probes?.find((each) => each.id === probe.id)?.label ?? probe.id,
        formatLight(probe.lux, unit),
        stops(probe.stops),
      ]),
    );
    writer.table(
      [
        { name: 'beat', share: 40 },
        { name: 'meter', share: 40 },
        { name: 'light', share: 20, align: 'right' },
        { name: 'stops', share: 14, align: 'right' },
      ],
      meters,
    );
  });
}
