import { expect, it } from 'vitest';
import { withRemedy } from '../../../../src/core/clearance/remedies/remedyEdits';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { reportOf } from '../../../../src/core/report/report';
import { ofKind, remediesOf, standAt, stillRoof } from './remedied';

/** A box of a distro that hangs before a dark sky, lit from behind and above by a lamp out of frame. */
function night(dim: number): Plan {
  const { dark: _, ...plan } = stillRoof([
    {
      id: 'distro',
      label: 'Distro',
      kind: 'distro',
      at: [0, 1.7, -4],
      headingDegrees: 0,
      size: [0.3, 0.3, 0.3],
      locked: true,
    },
    {
      id: 'lamp',
      label: 'Lamp',
      kind: 'head',
      head: 'spot',
      place: { at: [0, 6, -7.5] },
      aim: [0, 1.8, -4],
      dim,
    },
  ]);
  return { ...plan, sky: { glow: 'clear in the country' } };
}

/** A small box that hangs somewhere. */
const boxAt = (id: string, at: [number, number, number]): Gear => ({
  id,
  label: 'Small box',
  kind: 'distro',
  at,
  headingDegrees: 0,
  size: [0.12, 0.12, 0.12],
});

const verdictOf = (plan: Plan, id: string) =>
  reportOf(plan).setups[0].items.find((item) => item.id === id)?.verdict;

it('tape and a flag are offered where they are lost in the dark, after all that rests on geometry', () => {
  const plan = night(0.03);
  expect(verdictOf(plan, 'distro')).toBe('showing');
  const remedies = remediesOf(plan, 'distro');
  const black = ofKind(remedies, 'black');
  expect(black).toMatchObject({ relies: 'dark', after: 'lost in the dark' });
  expect(black.words).toBe('Black tape loses it in the dark in A, as long as the light stays as it is.');
  expect(verdictOf(withRemedy(plan, black), 'distro')).toBe('lost in the dark');
  const flag = ofKind(remedies, 'flag');
  expect(flag).toMatchObject({ relies: 'dark', after: 'covered' });
  expect(verdictOf(withRemedy(plan, flag), 'distro')).toBe('covered');
  const ranks = remedies.map(({ relies }) => ['geometry', 'dark', 'likeness'].indexOf(relies));
  expect(ranks).toEqual(ranks.toSorted());
});

it('what rests on geometry is first even where it makes a new finding elsewhere', () => {
  const lit = night(0.03);
  const gear = lit.gear.map((each) => (each.id === 'distro' ? { ...each, locked: false } : each));
  const behind = boxAt('behind', [0, 1.76, -4.6]);
  const plan = { ...lit, gear: [...gear, behind] };
  expect(verdictOf(plan, 'behind')).toBe('covered');
  const remedies = remediesOf(plan, 'distro');
  const news = remedies.filter(({ cost }) => cost.otherSetups.some(({ itemId }) => itemId === 'behind'));
  expect(news.map(({ kind }) => kind)).toContain('move');
  const groups = remedies.map(({ relies }) => relies);
  expect(groups).toContain('dark');
  expect(groups.lastIndexOf('geometry')).toBeLessThan(groups.indexOf('dark'));
  expect(groups.lastIndexOf('dark')).toBeLessThan(groups.indexOf('likeness'));
});

it('neither is offered for what is lost already', () => {
  const plan = night(0.002);
  expect(verdictOf(plan, 'distro')).toBe('lost in the dark');
  const kinds = remediesOf(plan, 'distro').map(({ kind }) => kind);
  expect(kinds).not.toContain('black');
  expect(kinds).not.toContain('flag');
});

it('a night that was told with its light gives the same remedies as one that was not', () => {
  const lamp = night(0.03);
  const stand = standAt({ at: [1, 0, -4], heightMetres: 2.2 });
  const plan = { ...lamp, gear: [...lamp.gear, stand] };
  const told = reportOf(plan).setups;
  const verdicts = told[0].items.map(({ verdict }) => verdict);
  expect(verdicts).toContain('lost in the dark');
  expect(remediesOf(plan, 'stand', { seen: told })).toEqual(remediesOf(plan, 'stand'));
});
