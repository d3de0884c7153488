import { frameShapeOf } from '../optics/camera';
import type { Lens } from '../plan/schema/kit';
import type { Plan } from '../plan/schema/plan';
import type { CameraKey, Setup } from '../plan/schema/setup';
import { formatNumber, NBSP } from '../units/numbers';

/** How a zoom is tried: held at one of its ends, or from key to key as the setup's move has it. */
export type ZoomUse = 'wide end' | 'long end' | 'as it zooms';

/** One way to try a lens of the kit on a setup. */
export interface LensTry {
  /** Its own among those of a setup: the lens's id, and of a zoom how it is used. */
  readonly id: string;
  readonly lens: Lens;
  /** Null for a lens of one focal length. */
  readonly use: ZoomUse | null;
  /** The lens's name, of a zoom with how it is used: `24 to 70 mm at its long end, 70 mm`. */
  readonly label: string;
  /** The setup with that lens on it. */
  readonly setup: Setup;
  /** Whether the setup has that lens on it already, used so. */
  readonly isPresent: boolean;
  /** Half the width of the delivered frame as a tangent, where it is tightest: the smaller, the tighter. */
  readonly tanHalfWidth: number;
}

const millimetres = (mm: number): string => formatNumber(mm, Number.isInteger(mm) ? 0 : 1);

/** The setup with another lens: its stop is kept where that lens has it, and its keys zoom as far as that lens goes. */
export function withLens(setup: Setup, lens: Lens): Setup {
  const stop = Math.min(lens.narrowestStop, Math.max(lens.widestStop, setup.stop));
  return { ...setup, lens: lens.id, stop };
}

/** The keys of a move with a zoom at one focal length, millimetres; the same keys where it is there. */
export function heldAt(keys: readonly CameraKey[], focalMm: number): readonly CameraKey[] {
  return keys.every((key) => key.focalMm === focalMm) ? keys : keys.map((key) => ({ ...key, focalMm }));
}

/** How far in a zoom is at each key of a setup, millimetres. */
const focalsOf = ({ focalMm, longestMm = focalMm }: Lens, setup: Setup): readonly number[] =>
  setup.move.keys.map((key) => Math.min(longestMm, Math.max(focalMm, key.focalMm ?? focalMm)));

/**
 * The ways to try one lens of the kit on a setup: one for a lens of one focal length; for a zoom held at its wide end,
 * held at its long end, and as the setup's keys have it, where they have it anywhere else.
 */
export function lensTries(plan: Plan, setup: Setup, lens: Lens): readonly LensTry[] {
  const plain = withLens(setup, lens);
  const { focalMm, longestMm } = lens;
  const tryOf = (
    [use, how]: readonly [ZoomUse | null, string],
    on: Setup,
    tightestMm: number,
    isSo = true,
  ): LensTry => ({
    id: use === null ? lens.id : `${lens.id}, ${use}`,
    lens,
    use,
    label: use === null ? lens.label : `${lens.label} ${how}`,
    setup: on,
    isPresent: isSo && setup.lens === lens.id,
    tanHalfWidth: frameShapeOf(plan, on, tightestMm).tanHalfWidth,
  });
  if (longestMm === undefined) return [tryOf([null, ''], plain, focalMm)];
  const focals = focalsOf(lens, setup);
  const [least, most] = [Math.min(...focals), Math.max(...focals)];
  const held = (use: ZoomUse, mm: number): LensTry => {
    const keys = [...heldAt(plain.move.keys, mm)];
    const how = `at its ${use}, ${millimetres(mm)}${NBSP}mm`;
    return tryOf([use, how], { ...plain, move: { ...plain.move, keys } }, mm, least === mm && most === mm);
  };
  const ends = [held('wide end', focalMm), held('long end', longestMm)];
  if (least === most && (least === focalMm || least === longestMm)) return ends;
  const [from, to] = [focals[0], focals[focals.length - 1]];
  const range = from === to ? [least, most] : [from, to];
  const used =
    least === most
      ? `as it is set, ${millimetres(least)}${NBSP}mm`
      : `as it zooms here, ${range.map(millimetres).join(' to ')}${NBSP}mm`;
  return [ends[0], tryOf(['as it zooms', used], plain, most), ends[1]];
}

/** Every way to try the lenses of the plan's kit on a setup. */
export const allLensTries = (plan: Plan, setup: Setup): readonly LensTry[] =>
  plan.kit.lenses.flatMap((lens) => lensTries(plan, setup, lens));

/** The way that a setup has its own lens; null where the kit lacks it. */
export const presentTry = (plan: Plan, setup: Setup): LensTry | null =>
  allLensTries(plan, setup).find(({ isPresent }) => isPresent) ?? null;
