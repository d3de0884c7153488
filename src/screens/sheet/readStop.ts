import type { Lens } from '../../core/plan/schema/kit';

type ReadStop =
  | { readonly ok: true; readonly stop: number }
  | { readonly ok: false; readonly sentence: string };

/** Reads a typed stop: `2.8`, `2,8`, `T2.8`. What the lens does not have is refused with what it has. */
export function readStop(text: string, lens: Lens): ReadStop {
  const stop = Number(
    text
      .trim()
      .replace(/^[tTfF]\/?\s*/, '')
      .replace(',', '.'),
  );
  const range = `This lens opens from T${lens.widestStop} to T${lens.narrowestStop}.`;
  if (!(stop > 0)) return { ok: false, sentence: `${range} Type a stop such as T2.8.` };
  const has = (value: number): boolean => value >= lens.widestStop && value <= lens.narrowestStop;
  if (has(stop)) return { ok: true, stop };
  // A stop typed without its point: 28 for 2.8.
  return { ok: false, sentence: has(stop / 10) ? `${range} Did you mean T${stop / 10}?` : range };
}
