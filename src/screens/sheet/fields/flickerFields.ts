import type { Flicker, Gear } from '../../../core/plan/schema/gear';
import { choice, reshaped } from './build';
import type { FieldSpec } from './types';

/** The flicker that a lamp begins with: often, and never quite out. By eye, no source. */
export const FIRST_FLICKER: Flicker = { seed: 1, perSecond: 6, depth: 0.6 };

const WHEN = [
  ['no', 'no'],
  ['yes', 'yes'],
  ['waits', 'once a cue says so'],
] as const;

/** Whether a lamp of the place flickers, from when on, and how. */
export function flickerFields({ id, flicker }: Extract<Gear, { kind: 'practical' }>): FieldSpec[] {
  const field = (key: 'perSecond' | 'seed', label: string, decimals: number): FieldSpec[] =>
    flicker
      ? [
          {
            form: 'number',
            label,
            decimals,
            value: flicker[key],
            change: (plan, value) => reshaped(plan, id, { flicker: { ...flicker, [key]: value } }),
          },
        ]
      : [];
  const now = flicker ? (flicker.waits ? 'waits' : 'yes') : 'no';
  return [
    choice('flickers', now, WHEN, (plan, to) => {
      if (to === 'no') return reshaped(plan, id, { flicker: undefined });
      const { waits: _, ...rest } = flicker ?? FIRST_FLICKER;
      const without = reshaped(plan, id, { flicker: undefined });
      return reshaped(without, id, { flicker: to === 'waits' ? { ...rest, waits: true } : rest });
    }),
    ...(flicker
      ? [
          {
            form: 'share',
            label: 'how deep',
            share: flicker.depth,
            change: (plan, depth) => reshaped(plan, id, { flicker: { ...flicker, depth } }),
          } satisfies FieldSpec,
        ]
      : []),
    ...field('perSecond', 'times a second', 1),
    ...field('seed', 'which pattern', 0),
  ];
}
