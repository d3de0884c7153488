import { darkOf } from '../../../../core/light/readsInTheDark';
import { UPRIGHTS } from '../../../../core/light/uprights';
import { setDark } from '../../../../core/plan/edits/setDark';
import { type Plan, UPRIGHT_LIMITS, type UprightLimits } from '../../../../core/plan/schema/plan';
import { NBSP } from '../../../../core/units/numbers';
import { edit } from '../../camera/editing';
import { LegalField } from '../../camera/LegalField';
import type { Legal } from '../../camera/legal';
import { uprightWords } from './darkWords';
import { ownDark } from './ownDark';

const PERCENT = 100;
const [SHORTEST, TALLEST] = UPRIGHT_LIMITS.leastHeight;
const PERCENTS = [SHORTEST * PERCENT, TALLEST * PERCENT] as const;

/** The fields, each with what it takes; shares of the frame are typed in per cent. */
const FIELDS: readonly (readonly [key: keyof UprightLimits, label: string, per: number, legal: Legal])[] = [
  [
    'leanDegrees',
    'leans at most',
    1,
    { what: 'Leans', limits: UPRIGHT_LIMITS.leanDegrees, unit: '°', decimals: 1 },
  ],
  [
    'leastHeight',
    'stands in frame at least',
    PERCENT,
    { what: 'Shares of the frame’s height', limits: PERCENTS, unit: '%', decimals: 1 },
  ],
  [
    'likeWidth',
    'is like in width up to',
    1,
    { what: 'Ratios of widths', limits: UPRIGHT_LIMITS.likeWidth, unit: 'to 1', decimals: 2 },
  ],
  [
    'likeStops',
    'brightness within',
    1,
    { what: 'Differences', limits: UPRIGHT_LIMITS.likeStops, unit: 'stops', decimals: 2 },
  ],
  [
    'among',
    'beside others, at least',
    1,
    { what: 'Others', limits: UPRIGHT_LIMITS.among, decimals: 0, whole: true },
  ],
];

/** What passes for one of the set's own posts and masts, for the whole plan. */
export function UprightFields({ plan }: { readonly plan: Plan }) {
  const { uprights, contrastStops, stopsUnder } = darkOf(plan);
  const say = (change: (now: UprightLimits) => UprightLimits | null): string | null =>
    edit('say what passes for an upright', (before) => {
      const next = change(darkOf(before).uprights);
      if (next) return setDark(before, { dark: { contrastStops, stopsUnder, uprights: next } });
      const { uprights: _, ...rest } = before.dark ?? { contrastStops, stopsUnder };
      return setDark(before, { dark: ownDark(rest) });
    });
  return (
    <section className="group">
      <h4>Passes for an upright what</h4>
      <div className="fields">
        {FIELDS.map(([key, label, per, legal]) => (
          <LegalField
            key={key}
            label={label}
            value={uprights[key] * per}
            legal={legal}
            take={(value) => (value === undefined ? null : say((now) => ({ ...now, [key]: value / per })))}
          />
        ))}
      </div>
      <p className="advice">{uprightWords(uprights)}</p>
      {plan.dark?.uprights ? (
        <button type="button" onClick={() => void say(() => null)}>
          Back to {UPRIGHTS.leanDegrees}°, {UPRIGHTS.likeWidth} to 1 and {UPRIGHTS.likeStops}
          {NBSP}stop
        </button>
      ) : null}
    </section>
  );
}
