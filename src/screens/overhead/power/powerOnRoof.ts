import { plugSpot } from '../../../core/plan/edits/plugCable';
import { legsOf, metresBetween } from '../../../core/plan/runs';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Spot } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { isDark } from '../../../core/power/types';
import { ampWords, voltAmpereWords } from '../../../core/report/power/powerWords';
import { formatShare } from '../../../core/units/shares';
import type { PowerAnswer } from '../../../desk/power/powerApi';

/** A cable as the roof shows it. */
interface ShownCord {
  readonly id: string;
  readonly path: readonly Spot[];
  readonly amps: number;
  /** Of what it may carry. */
  readonly share: number;
  /** Whether it hangs on the source that is asked about. */
  readonly stops: boolean;
}

/** Something beside which a word stands. */
interface ShownSpot {
  readonly id: string;
  readonly at: Spot;
  readonly text: string;
}

/** What the overhead draws of the power, metres. */
export interface PowerOnRoof {
  readonly cords: readonly ShownCord[];
  readonly amps: readonly ShownSpot[];
  readonly sources: readonly (ShownSpot & { readonly radiusMetres: number; readonly stops: boolean })[];
  /** Loads without power, and those that lose it when the source that is asked about stops. */
  readonly dark: readonly ShownSpot[];
  /** Where loads that go dark would find room: from there to the load. */
  readonly moves: readonly { readonly id: string; readonly from: Spot; readonly to: Spot }[];
}

/** A ring goes so far round the case, metres. */
const RING_METRES = 0.18;

type Case = Extract<Gear, { readonly kind: 'generator' | 'battery' | 'outlet' }>;
const isCase = (gear: Gear): gear is Case =>
  gear.kind === 'generator' || gear.kind === 'battery' || gear.kind === 'outlet';

/** The middle of the longest straight piece of a cable: where there is most room for its amps. */
function middleOfLongest(path: readonly Spot[]): Spot {
  const [a, b] = legsOf(path, false).reduce((longest, leg) =>
    metresBetween(leg[0], leg[1]) > metresBetween(longest[0], longest[1]) ? leg : longest,
  );
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

/** The power of a plan as it lies on the roof. @param stopId the source of which is asked what happens when it stops */
export function powerOnRoof(plan: Plan, { report }: PowerAnswer, stopId: string | null): PowerOnRoof {
  const spotOf = (id: string): Spot | null => plugSpot(plan, id);
  const carried = new Map(report.cables.map((cable) => [cable.id, cable]));
  const cords = plan.gear.flatMap((gear): ShownCord[] => {
    const cable = gear.kind === 'cable' && !gear.hidden ? carried.get(gear.id) : undefined;
    if (gear.kind !== 'cable' || !cable || cable.amps <= 0) return [];
    const { id, amps, share, sourceId } = cable;
    return [{ id, path: gear.path, amps, share, stops: stopId !== null && sourceId === stopId }];
  });
  const stopped = report.sources.find(({ id }) => id === stopId)?.ifItStops ?? null;
  const goesDark = new Set(stopped?.goesDark);
  return {
    cords,
    amps: cords.map(({ id, path, amps }) => ({ id, at: middleOfLongest(path), text: ampWords(amps) })),
    sources: report.sources.flatMap(({ id, voltAmperes, share, legAmps }) => {
      const record = plan.gear.find((gear) => gear.id === id);
      const at = spotOf(id);
      if (!record || record.hidden || !at || !isCase(record)) return [];
      const [width, , depth] = record.size;
      const radiusMetres = Math.hypot(width, depth) / 2 + RING_METRES;
      const load =
        voltAmperes <= 0
          ? 'gives nothing'
          : share === null
            ? legAmps.map(ampWords).join(', ')
            : `${voltAmpereWords(voltAmperes)}, ${formatShare(share)}`;
      return [{ id, at, text: id === stopId ? 'stops' : load, radiusMetres, stops: id === stopId }];
    }),
    dark: report.loads.flatMap((load) => {
      const { id } = load;
      const isOpen = isDark(load);
      const at = isOpen || goesDark.has(id) ? spotOf(id) : null;
      const isShown = plan.gear.some((gear) => gear.id === id && !gear.hidden);
      return at && isShown ? [{ id, at, text: isOpen ? 'no power' : 'goes dark' }] : [];
    }),
    moves: (stopped?.moves ?? []).flatMap(({ loadId, ownerId }) => {
      const [from, to] = [spotOf(ownerId), spotOf(loadId)];
      return from && to ? [{ id: loadId, from, to }] : [];
    }),
  };
}
