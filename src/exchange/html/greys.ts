/** Steps from ink to paper that drawings of a file know. */
const GREY_STEPS = 20;

type Colour = readonly [number, number, number];

/** Ink and paper of the two themes, as the page has them. */
const THEMES: Readonly<Record<'day' | 'night', { readonly ink: Colour; readonly paper: Colour }>> = {
  day: { ink: [0x15, 0x20, 0x35], paper: [0xf8, 0xf2, 0xe4] },
  night: { ink: [0xf1, 0xe8, 0xd6], paper: [0x14, 0x23, 0x3b] },
};

/** Which step comes nearest to a grey from 0, ink, to 1, paper. */
export const stepOf = (grey: number): number => Math.round(Math.min(1, Math.max(0, grey)) * GREY_STEPS);

/** The steps of a theme as custom properties. */
export function greysOf(theme: keyof typeof THEMES): string {
  const { ink, paper } = THEMES[theme];
  return Array.from({ length: GREY_STEPS + 1 }, (_, step) => {
    const mixed = ink.map((from, k) => Math.round(from + ((paper[k] - from) * step) / GREY_STEPS));
    return `--g${step}:rgb(${mixed.join(' ')})`;
  }).join(';');
}

/** What draws in each step: areas, lines, letters. */
export const greyClasses = (): string =>
  Array.from(
    { length: GREY_STEPS + 1 },
    (_, step) => `.f${step}{fill:var(--g${step})}.l${step}{stroke:var(--g${step})}`,
  ).join('');
