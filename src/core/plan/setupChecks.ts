import { fault, type PlanFault, quoteFound } from './faults';
import type { Plan } from './schema/plan';
import type { FocusOn, Setup } from './schema/setup';

/** What a setup may name: ids and moments of the rest of the plan. */
interface Known {
  readonly beats: ReadonlyMap<string, number>;
  readonly performers: ReadonlySet<string>;
  readonly tracks: ReadonlySet<string>;
}

const unknown = (where: string, id: string, isKnown: boolean, what: string): PlanFault[] =>
  isKnown ? [] : [fault(where, quoteFound(id), `the id of ${what}`)];

function focusFaults(where: string, on: FocusOn, { performers }: Known): PlanFault[] {
  if (!('follow' in on)) return [];
  return unknown(`${where}.follow`, on.follow, performers.has(on.follow), 'a performer');
}

/** The body, the mode and the lens, out of the plan's kit. */
function glassFaults(where: string, setup: Setup, { kit }: Plan): PlanFault[] {
  const body = kit.bodies.find(({ id }) => id === setup.body);
  const mode = body?.modes.some(({ id }) => id === setup.mode) ?? true;
  return [
    ...unknown(`${where}, body`, setup.body, body !== undefined, 'a body in the plan’s kit'),
    ...unknown(`${where}, mode`, setup.mode, mode, `a gate mode of ${quoteFound(body?.label ?? '')}`),
    ...unknown(
      `${where}, lens`,
      setup.lens,
      kit.lenses.some(({ id }) => id === setup.lens),
      'a lens in the plan’s kit',
    ),
  ];
}

function spanFaults(where: string, { span }: Setup, { beats }: Known): PlanFault[] {
  const [from, to] = [beats.get(span.from), beats.get(span.to)];
  const named = [
    ...unknown(`${where}, span.from`, span.from, from !== undefined, 'a beat'),
    ...unknown(`${where}, span.to`, span.to, to !== undefined, 'a beat'),
  ];
  if (from === undefined || to === undefined || to >= from) return named;
  return [
    fault(
      `${where}, span`,
      `an end at ${to} s, before its start at ${from} s`,
      'a span that ends after it starts',
    ),
  ];
}

/** Keys that hang on beats that there are, in the order of their moments. */
function moveFaults(where: string, { move }: Setup, { beats }: Known): PlanFault[] {
  const faults: PlanFault[] = [];
  let before: number | null = null;
  move.keys.forEach((key, index) => {
    const place = `${where}, move.keys[${index}]`;
    const base = key.beat === undefined ? 0 : beats.get(key.beat);
    if (base === undefined) {
      faults.push(...unknown(`${place}.beat`, key.beat ?? '', false, 'a beat'));
      return;
    }
    const at = base + key.atSeconds;
    if (before !== null && at <= before) {
      faults.push(fault(`${place}.atSeconds`, `${at}`, `a moment after the key before it, at ${before} s`));
    }
    before = at;
  });
  return faults;
}

function aimFaults(where: string, setup: Setup, known: Known): PlanFault[] {
  const { focus, operator, track } = setup;
  const faults: PlanFault[] = [];
  if ('racks' in focus) {
    focus.racks.forEach(({ beat, on }, index) => {
      const place = `${where}, focus.racks[${index}]`;
      if (beat !== undefined) faults.push(...unknown(`${place}.beat`, beat, known.beats.has(beat), 'a beat'));
      faults.push(...focusFaults(`${place}.on`, on, known));
    });
  } else faults.push(...focusFaults(`${where}, focus`, focus, known));
  if (operator) {
    faults.push(
      ...unknown(
        `${where}, operator.hold`,
        operator.hold,
        known.performers.has(operator.hold),
        'a performer',
      ),
    );
  }
  if (track !== undefined)
    faults.push(...unknown(`${where}, track`, track, known.tracks.has(track), 'a track in the gear'));
  return faults;
}

/** What the schema cannot see of the setups: references that lead nowhere, and moments out of their order. */
export function setupFaults(plan: Plan): PlanFault[] {
  const known: Known = {
    beats: new Map(plan.beats.map(({ id, atSeconds }) => [id, atSeconds])),
    performers: new Set(plan.cast.map(({ id }) => id)),
    tracks: new Set(plan.gear.filter(({ kind }) => kind === 'track').map(({ id }) => id)),
  };
  return plan.setups.flatMap((setup) => {
    const where = `Setup ${quoteFound(setup.label)}`;
    return [
      ...glassFaults(where, setup, plan),
      ...aimFaults(where, setup, known),
      ...spanFaults(where, setup, known),
      ...moveFaults(where, setup, known),
    ];
  });
}
