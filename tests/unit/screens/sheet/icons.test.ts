import { expect, test } from 'vitest';
import { gear } from '../../../../src/core/plan/schema/gear';
import { piece } from '../../../../src/core/plan/schema/pieces';
import { ICONS, iconNamed } from '../../../../src/screens/parts/icons/icons';
import { iconOfKind } from '../../../../src/screens/parts/icons/ofItem';

const KINDS = [
  'performer',
  ...[...piece.options, ...gear.options].map((option) => option.entries.kind.literal),
];

test('no two kinds share an icon', () => {
  const byIcon = new Map<string, string>();
  for (const kind of KINDS) {
    const icon = iconOfKind(kind);
    expect(byIcon.get(icon), `${kind} looks like this kind`).toBeUndefined();
    byIcon.set(icon, kind);
  }
  expect(byIcon.size).toBeGreaterThan(25);
});

test('no two icons are drawn alike, and every ink point lies within the field', () => {
  const drawn = Object.values(ICONS).map(({ lines }) => lines);
  expect(new Set(drawn).size).toBe(drawn.length);
  for (const [name, { point }] of Object.entries(ICONS)) {
    const [x, y, radius] = point;
    for (const middle of [x, y]) {
      expect(middle - radius, name).toBeGreaterThanOrEqual(0);
      expect(middle + radius, name).toBeLessThanOrEqual(24);
    }
  }
});

test('a word that is no icon shows as the box that things come in', () => {
  expect(iconNamed('fence')).toBe('fence');
  expect(iconNamed('toString')).toBe('box');
});
