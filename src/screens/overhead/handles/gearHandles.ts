import { headPlace } from '../../../core/form/gear/headPlace';
import { reshapeItem } from '../../../core/plan/edits/reshapeItem';
import { setAim } from '../../../core/plan/edits/setAim';
import { setArm } from '../../../core/plan/edits/setArm';
import { itemOf } from '../../../core/plan/items';
import { bearingOf } from '../../../core/plan/runs';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { standEnd } from '../../../core/plan/standEnd';
import { trackMiddleLine } from '../../../core/plan/trackLine';
import { formatLength } from '../../../core/units/lengths';
import { distance, type Spot } from '../geometry/spots';
import { readMetres, stepped } from './reading';
import { snapCorner } from './snapCorner';
import { type Handle, type HandleInput, STEP_METRES } from './types';

type Of<Kind extends Gear['kind']> = Extract<Gear, { readonly kind: Kind }>;

/** What only some gear has: where a lamp is aimed, the arm of a stand, the length of a track. */
export function gearHandles(input: HandleInput, called: string): readonly Handle[] {
  const [id] = input.ids;
  const item = input.ids.length === 1 && id !== undefined ? itemOf(input.plan, id) : null;
  if (item?.section !== 'gear') return [];
  const { record } = item;
  if (record.kind === 'head') return aimHandle(record, input, called);
  if (record.kind === 'stand' && record.arm) return [armHandle(record, record.arm, input, called)];
  return record.kind === 'track' ? trackHandles(record, input, called) : [];
}

function aimHandle(head: Of<'head'>, { plan, lengths }: HandleInput, called: string): readonly Handle[] {
  const { id, aim } = head;
  const headClass = plan.kit.heads.find((entry) => entry.id === head.head);
  if (!headClass) return [];
  const [x, , z] = headPlace(head, headClass, plan).pivot;
  const aimAt = (before: Plan, to: Spot): Plan => setAim(before, { id, aim: [to[0], aim[1], to[1]] });
  return [
    {
      key: 'aim',
      kind: 'aim',
      name: `Aim of ${called}`,
      at: [aim[0], aim[2]],
      lead: [x, z],
      figure: formatLength(distance([x, z], [aim[0], aim[2]]), lengths),
      pull: (before, pull) => aimAt(before, snapCorner(before, id, pull, { before: [x, z], after: null })),
      step: (before, way) => aimAt(before, [aim[0] + way[0] * STEP_METRES, aim[2] + way[1] * STEP_METRES]),
    },
  ];
}

function armHandle(
  stand: Of<'stand'>,
  arm: NonNullable<Of<'stand'>['arm']>,
  { lengths }: HandleInput,
  called: string,
): Handle {
  const { id } = stand;
  const [endX, , endZ] = standEnd(stand);
  const foot: Spot = [stand.at[0], stand.at[2]];
  const level = Math.max(0.05, Math.cos((arm.tiltDegrees * Math.PI) / 180));
  const lengthMetres = (metres: number): number => Math.max(0.1, metres);
  const armTo = (before: Plan, to: Spot, step: number | null): Plan => {
    const out = distance(foot, to) / level;
    const heading = bearingOf([foot[0], foot[1]], [to[0], to[1]]);
    return setArm(before, {
      id,
      arm: {
        ...arm,
        lengthMetres: lengthMetres(step === null ? out : stepped(out, STEP_METRES)),
        headingDegrees: step === null ? heading : stepped(heading, step),
      },
    });
  };
  return {
    key: 'arm',
    kind: 'arm',
    name: `End of the arm of ${called}`,
    at: [endX, endZ],
    lead: foot,
    figure: formatLength(arm.lengthMetres, lengths),
    pull: (before, { to, straight, free }) => armTo(before, to, free ? null : straight ? 15 : 1),
    step: (before, [right, down]) =>
      setArm(before, {
        id,
        arm: {
          ...arm,
          headingDegrees: arm.headingDegrees + right,
          lengthMetres: lengthMetres(arm.lengthMetres - down * STEP_METRES),
        },
      }),
    typed: (before, text, system) => {
      const metres = readMetres(text, system, 0.1, 20);
      return typeof metres === 'string'
        ? metres
        : setArm(before, { id, arm: { ...arm, lengthMetres: metres } });
    },
  };
}

/** Both ends of a track: either changes its length, and the middle stays. */
function trackHandles(track: Of<'track'>, { lengths }: HandleInput, called: string): readonly Handle[] {
  const { id } = track;
  const line = trackMiddleLine(track);
  const lengthen = (before: Plan, metres: number): Plan =>
    reshapeItem(before, { id, patch: { lengthMetres: Math.max(0.3, metres) } });
  const middle: Spot = [track.at[0], track.at[2]];
  return [line[0], line.at(-1)].flatMap((end, index): readonly Handle[] => {
    if (!end) return [];
    const at: Spot = [end.at[0], end.at[2]];
    return [
      {
        key: `length ${index}`,
        kind: 'length',
        name: `${index === 0 ? 'Beginning' : 'End'} of ${called}`,
        at,
        figure: formatLength(track.lengthMetres, lengths),
        pull: (before, { to, free }) => {
          const longer = distance(middle, to) / Math.max(0.05, distance(middle, at));
          const metres = track.lengthMetres * longer;
          return lengthen(before, free ? metres : stepped(metres, STEP_METRES));
        },
        step: (before, [right, down]) => lengthen(before, track.lengthMetres + (right - down) * STEP_METRES),
        typed: (before, text, system) => {
          const metres = readMetres(text, system, 0.3, 500);
          return typeof metres === 'string' ? metres : lengthen(before, metres);
        },
      },
    ];
  });
}
