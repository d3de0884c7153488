import { useEffect } from 'react';
import { useStore } from 'zustand';
import type { SpotReading } from '../../../core/light/spotReading';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLight, lightUnitOf } from '../../../core/units/illuminance';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { formatStops } from '../../../core/units/stops';
import { pointSpot, readSpot } from '../../../desk/levelMap/askLevels';
import { levelMapStore } from '../../../desk/levelMap/levelMapStore';
import { ReadingCross, useHovering } from '../../overhead/levels/ReadingCross';
import { useSettledSeconds } from '../../overhead/useSettledSeconds';
import type { Box } from '../pictureBox';

/** `+0.6 stops, 3.4 cd/m²` and what is hit. */
export function spotWords(
  reading: SpotReading | null | undefined,
  lengths: LengthSystem,
): { readonly figure: string; readonly words: string } {
  if (reading === undefined) return { figure: 'metering', words: 'the light there' };
  if (reading === null) return { figure: 'no picture', words: 'the lens shows nothing there' };
  const { luminance, stops, hit } = reading;
  const decimals = luminance >= 10 ? 0 : luminance >= 1 ? 1 : 3;
  const figure = `${formatStops(stops)}, ${formatNumber(luminance, decimals)}${NBSP}cd/m²`;
  if (!hit) return { figure, words: 'the sky' };
  const lit = hit.lux > 0 ? `, in ${formatLight(hit.lux, lightUnitOf(lengths))}` : ', which shines itself';
  return { figure, words: `${hit.label}, ${hit.part}, ${formatLength(hit.metres, lengths)} off${lit}` };
}

/** The spot meter in the frame, while the Light sheet is open: under the pointer, or where it was left. */
export function FrameReading(props: {
  readonly plan: Plan;
  readonly setupId: string;
  readonly box: Box;
  readonly figure: HTMLElement | null;
  readonly lengths: LengthSystem;
}) {
  const { plan, setupId, box, figure: host, lengths } = props;
  const seconds = useSettledSeconds();
  const spot = useStore(levelMapStore, (state) => state.spot);
  const [x, y] = spot?.at ?? [0.5, 0.5];
  const within = (share: number): number => Math.min(1, Math.max(0, share));
  const point = ([left, top]: readonly [number, number]): void =>
    pointSpot([within((left - box.left) / box.width), within((top - box.top) / box.height)]);
  useHovering(host, point);
  useEffect(() => readSpot({ plan, setupId, seconds, at: [x, y] }), [plan, setupId, seconds, x, y]);
  const { figure, words } = spotWords(spot?.reading, lengths);
  return (
    <ReadingCross
      name="Spot meter"
      at={[box.left + x * box.width, box.top + y * box.height]}
      room={[box.left + box.width, box.top + box.height]}
      figure={figure}
      words={words}
      onMove={point}
    />
  );
}
