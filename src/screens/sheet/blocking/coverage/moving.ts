import type { KeyboardEvent } from 'react';

const ORDER: Readonly<Record<string, 'along' | 'across'>> = {
  ArrowLeft: 'along',
  ArrowRight: 'along',
  ArrowUp: 'across',
  ArrowDown: 'across',
};

const middleOf = (element: HTMLElement): number => {
  const { left, right } = element.getBoundingClientRect();
  return (left + right) / 2;
};

/** Left and right go through the bars of a row, up and down to what lies nearest in the row above and below. */
export function goAmongBars(event: KeyboardEvent<HTMLElement>): void {
  const way = ORDER[event.key];
  const bar = event.target instanceof HTMLElement ? event.target.closest<HTMLElement>('[data-bar]') : null;
  const row = bar?.closest<HTMLElement>('[data-row]');
  if (!way || !bar || !row) return;
  event.preventDefault();
  event.stopPropagation();
  const step = event.key === 'ArrowLeft' || event.key === 'ArrowUp' ? -1 : 1;
  const barsIn = (each: HTMLElement): readonly HTMLElement[] => [
    ...each.querySelectorAll<HTMLElement>('[data-bar]'),
  ];
  if (way === 'along') {
    const all = barsIn(row).toSorted((a, b) => middleOf(a) - middleOf(b));
    all[all.indexOf(bar) + step]?.focus();
    return;
  }
  const rows = [...event.currentTarget.querySelectorAll<HTMLElement>('[data-row]')];
  for (let k = rows.indexOf(row) + step; rows[k]; k += step) {
    const at = middleOf(bar);
    const [nearest] = barsIn(rows[k]).toSorted(
      (a, b) => Math.abs(middleOf(a) - at) - Math.abs(middleOf(b) - at),
    );
    if (!nearest) continue;
    nearest.focus();
    return;
  }
}
