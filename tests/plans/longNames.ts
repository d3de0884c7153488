import type { Plan } from '../../src/core/plan/schema/plan';

/** The longest that a name may be. */
const MOST = 80;

/** So often over and over as it has room, and no letter cut in two. */
function filled(text: string): string {
  let all = '';
  for (const { segment } of new Intl.Segmenter().segment(text.repeat(MOST))) {
    if (all.length + segment.length > MOST) break;
    all += segment;
  }
  return all.trim();
}

/**
 * Names as hard on a page as any: as long as may be, in words and in one, from right to left, and both ways at once; of
 * pictures that are several characters each, of letters under a heap of marks, and of what only looks empty.
 */
export const HARD_NAMES: readonly string[] = [
  filled('The grandmother of all lamp stands '),
  filled('Donaudampfschifffahrtsgesellschaftslaternenstativ'),
  filled('منصة الإضاءة الكبيرة فوق السطح '),
  filled('מעמד התאורה הגדול שעל הגג '),
  'מנורה 2, back light 300 W',
  'مصباح 3',
  filled('👩🏽‍🚒🏳️‍🌈👨‍👩‍👧‍👦'),
  filled('Wi\u0308\u0332\u0303\u0331d\u0301\u0323\u030ae\u0330\u0306 '),
  '\u2800\u2800',
  '\u200b',
];

/** The plan with hard names for all that is on the roof, for its beats and setups, and for itself. */
export function hardNamed(plan: Plan): Plan {
  let next = 0;
  const named = <Named extends { readonly label: string }>(record: Named): Named => {
    const label = HARD_NAMES[next % HARD_NAMES.length] ?? record.label;
    next += 1;
    return { ...record, label };
  };
  return {
    ...plan,
    title: HARD_NAMES[0] ?? plan.title,
    place: { ...plan.place, label: HARD_NAMES[2] ?? plan.place.label },
    pieces: plan.pieces.map(named),
    gear: plan.gear.map(named),
    cast: plan.cast.map(named),
    beats: plan.beats.map(named),
    setups: plan.setups.map(named),
  };
}
