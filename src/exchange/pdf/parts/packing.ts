import { DEPARTMENTS, type PackingLine } from '../../../core/night/packing/types';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import type { PartWriter } from '../partWriter';
import type { PartInput } from '../types';

const UNITS = { pieces: '', metres: `${NBSP}m`, litres: `${NBSP}L` } as const;

const amountText = (value: number, unit: PackingLine['unit']): string =>
  `${formatNumber(value, Number.isInteger(value) ? 0 : 1)}${UNITS[unit]}`;

/** What is to be carried up, by department, with spares in it. */
export function packingPart(writer: PartWriter, { packing }: PartInput, part: string): void {
  writer.newPage(part);
  writer.heading(part);
  if (packing.length === 0) writer.text('There is nothing to pack.');
  for (const department of DEPARTMENTS) {
    const lines = packing.filter((line) => line.department === department);
    if (lines.length === 0) continue;
    writer.subheading(department.charAt(0).toUpperCase() + department.slice(1));
    writer.table(
      [
        { name: 'amount', share: 10, align: 'right' },
        { name: 'what', share: 38 },
        { name: 'spare in it', share: 12 },
        { name: 'for', share: 40 },
      ],
      lines.map(({ count, spare, unit, label, detail }) => [
        amountText(count + spare, unit),
        label,
        spare > 0 ? amountText(spare, unit) : '',
        detail,
      ]),
    );
  }
}
