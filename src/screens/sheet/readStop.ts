import type { Lens } from '../../core/plan/schema/kit';

type ReadStop =
  | { readonly ok: true; readonly stop: number }
  | {
      readonly ok: false;
      readonly sentence: string;
      /** The nearest stop that the lens has; null where no stop was typed. */
      readonly nearest: number | null;
    };

/** Reads a typed stop: `2.8`, `2,8`, `T2.8`. What the lens does not have is refused with what it has. */
export function readStop(text: string, lens: Lens): ReadStop {
  const stop = Number(
    text
      .trim()
      .replace(/^[tTfF]\/?\s*/, '')
      .replace(',', '.'),
  );
  const range = `This lens opens from T${lens.widestStop} to T${lens.narrowestStop}.`;
  if (!(stop > 0)) return { ok: false, sentence: `${range} Type a stop such as T2.8.`, nearest: null };
  const has = (value: number): boolean => value >= lens.widestStop && value <= lens.narrowestStop;
  if (has(stop)) return { ok: true, stop };
  // A stop typed without its point: 28 for 2.8.
  if (has(stop / 10))
    return { ok: false, sentence: `${range} Did you mean T${stop / 10}?`, nearest: stop / 10 };
  const nearest = Math.min(lens.narrowestStop, Math.max(lens.widestStop, stop));
  return { ok: false, sentence: range, nearest };
}
