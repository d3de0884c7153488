import type { Caution, CautionKind, CautionStanding, Figure } from '../../../../core/cautions/types';
import type { HoldingBags } from '../../../../core/cautions/wind/ballast';
import { beaufortOf } from '../../../../core/cautions/wind/beaufort';
import { bagsOf } from '../../../../core/cautions/words';
import { formatLength, type LengthSystem } from '../../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../../core/units/numbers';

/** How the list is headed, by weight. */
export const HEADINGS: Readonly<Record<CautionStanding, string>> = {
  breaks: 'Breaks a stated figure',
  said: 'To be minded, or not known',
  holds: 'Holds, and is kept so',
};

/** What a caution is about, at the beginning of its sentence. */
export const KIND_WORDS: Readonly<Record<CautionKind, string>> = {
  edge: 'Edge',
  wind: 'Wind',
  wet: 'Water',
  exhaust: 'Exhaust',
  'way out': 'Way out',
  load: 'Load',
  ladder: 'Ladder',
  heat: 'Heat',
};

const DECIMALS: Readonly<Record<Figure['unit'], number>> = {
  m: 2,
  'm/s': 1,
  mph: 0,
  Beaufort: 0,
  kg: 1,
  bags: 0,
  N: 0,
  kN: 2,
  'kN/m²': 2,
};

function amount(value: number, unit: Figure['unit'], lengths: LengthSystem): string {
  if (unit === 'm') return formatLength(value, lengths);
  const number = formatNumber(value, DECIMALS[unit]);
  return unit === 'Beaufort' ? `Beaufort${NBSP}${number}` : `${number}${NBSP}${unit}`;
}

/** `from an open edge 0.80 m, held against 1.80 m`; figures of one name, in several units, are one line. */
export function figureLines(figures: readonly Figure[], lengths: LengthSystem): readonly string[] {
  const names = [...new Set(figures.map(({ name }) => name))];
  return names.map((name) => {
    const own = figures.filter((figure) => figure.name === name);
    const values = own.map(({ value, unit }) => amount(value, unit, lengths)).join(', ');
    const wind = own.find(({ unit }) => unit === 'm/s');
    const called = wind && own.length > 1 ? `, ${beaufortOf(wind.value).name}` : '';
    const held = own.find(({ expected }) => expected !== undefined);
    const against =
      held?.expected === undefined ? '' : `, held against ${amount(held.expected, held.unit, lengths)}`;
    return `${name} ${values}${called}${against}`;
  });
}

/** The figure that a row tells: the first that is held against another, else the first of all; null for none. */
export function keyFigure({ figures }: Caution, lengths: LengthSystem): string | null {
  const found = figures.find(({ expected }) => expected !== undefined) ?? figures[0];
  return found ? (figureLines([found], lengths)[0] ?? null) : null;
}

/** A count with the word for it: `1 holds`, `2 hold`. */
export const several = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** How many there are of each weight, and how many are noted. */
export function countSentence(cautions: readonly Caution[], noted: ReadonlySet<string>): string {
  if (cautions.length === 0) return 'Nothing on this roof asks for a caution that the plan can tell of.';
  const count = (standing: CautionStanding): number =>
    cautions.filter((caution) => caution.standing === standing).length;
  const parts = [
    several(count('breaks'), 'breaks a stated figure', 'break a stated figure'),
    `${count('said')} to be minded`,
    several(count('holds'), 'holds', 'hold'),
  ];
  const kept = cautions.filter(({ id }) => noted.has(id)).length;
  return `${parts.join(', ')}. ${kept === 0 ? 'None is noted.' : `${kept} noted.`}`;
}

/** The act that holds a stand: `Add 5 bags of 10 kg`, or the bags that replace those that lie there. */
export function bagsWords({ count, kilograms, added }: HoldingBags, has: boolean): string {
  return has && added === count
    ? `Lay ${bagsOf(count, kilograms)} in place of those`
    : `Add ${bagsOf(added, kilograms)}`;
}
