import { useEffect } from 'react';
import { useStore } from 'zustand';
import { askedLux, stopsBetween } from '../../../core/light/exposure';
import type { PlaceReading } from '../../../core/light/placeReading';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLight, type LightUnit, lightUnitOf } from '../../../core/units/illuminance';
import type { LengthSystem } from '../../../core/units/lengths';
import { formatStops } from '../../../core/units/stops';
import { pointPlace, readPlace } from '../../../desk/levelMap/askLevels';
import { levelMapStore } from '../../../desk/levelMap/levelMapStore';
import { roofBounds } from '../geometry/roof';
import type { Spot } from '../geometry/spots';
import type { SheetView } from '../useSheetView';
import { ReadingCross, useHovering } from './ReadingCross';
import { exposureOf } from './useLevels';

/** The lamps that give most are named, so many. */
const NAMED = 2;

/** `84 lx, +1.1 stops` and where it comes from. */
export function placeWords(
  reading: PlaceReading | null | undefined,
  asked: number,
  unit: LightUnit,
): { readonly figure: string; readonly words: string } {
  if (reading === undefined) return { figure: 'metering', words: 'the light there' };
  if (reading === null) return { figure: 'no deck', words: 'nothing is metered beside the roof' };
  const stops = formatStops(stopsBetween(asked, Math.max(1e-4, reading.lux)));
  const named = reading.shares.slice(0, NAMED).map(({ label, lux }) => `${label} ${formatLight(lux, unit)}`);
  const rest = reading.lux - reading.shares.slice(0, NAMED).reduce((sum, { lux }) => sum + lux, 0);
  return {
    figure: `${formatLight(reading.lux, unit)}, ${stops}`,
    words: [...named, ...(rest > 0.05 ? [`all else ${formatLight(rest, unit)}`] : [])].join(', '),
  };
}

/** The meter on the roof, while levels are shown: under the pointer, or where it was left. */
export function RoofReading(props: {
  readonly plan: Plan;
  readonly setupId: string | null;
  readonly seconds: number;
  readonly sheet: SheetView;
  readonly lengths: LengthSystem;
  readonly board: HTMLElement | null;
}) {
  const { plan, setupId, seconds, sheet, lengths, board } = props;
  const place = useStore(levelMapStore, (state) => state.place);
  const of = useStore(levelMapStore, (state) => state.of);
  const [left, top, right, bottom] = roofBounds(plan);
  const [x, z]: Spot = place?.at ?? [(left + right) / 2, (top + bottom) / 2];
  const point = (pixels: readonly [number, number]): void => pointPlace(sheet.roofAt(pixels));
  useHovering(board, point);
  useEffect(() => readPlace({ plan, setupId, seconds, of, at: [x, z] }), [plan, setupId, seconds, of, x, z]);
  const { figure, words } = placeWords(
    place?.reading,
    askedLux(exposureOf(plan, setupId)),
    lightUnitOf(lengths),
  );
  return (
    <ReadingCross
      name="Meter on the roof"
      at={sheet.at([x, z])}
      room={[sheet.pane.width, sheet.pane.height]}
      figure={figure}
      words={words}
      onMove={point}
    />
  );
}
