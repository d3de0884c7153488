import { shortestYokeMetres, yokeMetres } from '../../../core/form/gear/headPlace';
import { lampFace } from '../../../core/form/gear/lampFace';
import { throughBefore } from '../../../core/form/photometry/throughBefore';
import { BUILT_IN_KIT } from '../../../core/kit/builtInKit';
import { headOf } from '../../../core/kit/inKit';
import type { Lamp } from '../../../core/plan/cues';
import { setClass } from '../../../core/plan/edits/setClass';
import { setModifier } from '../../../core/plan/edits/setModifier';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatDegrees } from '../../../core/units/angles';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { beforeFields } from './beforeFields';
import { whiteText } from './beforeWords';
import { choice, reshaped } from './build';
import { offered } from './standFields';
import type { FieldGroup, FieldSpec } from './types';

type Head = Extract<Gear, { kind: 'head' }>;
type Modifier = NonNullable<Head['modifier']>;

const MODIFIERS: readonly (readonly [Modifier | 'bare', string])[] = [
  ['bare', 'bare'],
  ['softbox', 'softbox'],
  ['lantern', 'lantern'],
  ['grid', 'grid'],
  ['barn doors', 'barn doors'],
  ['snoot', 'snoot'],
];

/** The longest yoke that a plan takes. */
const LONGEST_YOKE_METRES = 3;

/** How far a lamp is dimmed, as a share and in stops. */
export function dimFields(id: string, dim: number): FieldSpec[] {
  const change = (plan: Plan, share: number): Plan => reshaped(plan, id, { dim: share });
  return [
    { form: 'share', label: 'dim', share: dim, change },
    { form: 'stops', label: 'in stops', share: dim, change },
  ];
}

/** What is published of a lamp's class and follows from what is on it and before it: nothing of it can be typed. */
export function lampFacts(plan: Plan, lamp: Lamp, lamps = 1): FieldSpec[] {
  const own = headOf(plan.kit, lamp.head);
  if (!own) return [];
  const modifier = lamp.kind === 'head' ? (lamp.modifier ?? null) : null;
  const { beam } = throughBefore(lampFace(own, modifier).beam, own.kelvin, lamp.before);
  const angle = (degrees: number): string => (degrees >= 360 ? 'all round' : formatDegrees(degrees, 0));
  return [
    { form: 'shown', label: 'draws', text: `${formatNumber(own.watts * lamps, 0)}${NBSP}W` },
    { form: 'shown', label: 'white', text: whiteText(own.kelvin, lamp.before) },
    { form: 'shown', label: 'beam', text: angle(beam.beamDegrees) },
    { form: 'shown', label: 'field', text: angle(beam.fieldDegrees) },
  ];
}

/** A lamp: its class, what is on it, how far it is dimmed, and what follows from that. */
export function lampFields(plan: Plan, head: Head): FieldGroup[] {
  const { id } = head;
  const own = headOf(plan.kit, head.head);
  const classes = offered(plan.kit.heads, BUILT_IN_KIT.heads);
  return [
    {
      heading: 'The lamp',
      fields: [
        {
          ...choice(
            'class',
            head.head,
            classes.map((each) => [each.id, each.label] as const),
            (before, to) => {
              const found = classes.find((each) => each.id === to);
              return found ? setClass(before, { id, head: found }) : before;
            },
          ),
          wide: true,
        },
        ...dimFields(id, head.dim),
        choice('modifier', head.modifier ?? 'bare', MODIFIERS, (before, to) =>
          setModifier(before, { id, modifier: to === 'bare' ? null : to }),
        ),
        {
          form: 'length',
          label: 'yoke',
          metres: own ? yokeMetres(head, own) : (head.yokeMetres ?? 0),
          ...(own
            ? {
                reach: {
                  lowestMetres: shortestYokeMetres(own),
                  highestMetres: LONGEST_YOKE_METRES,
                  sentence: 'The yoke of this lamp goes',
                },
              }
            : {}),
          change: (before, metres) => reshaped(before, id, { yokeMetres: metres }),
        },
        ...lampFacts(plan, head),
      ],
    },
    beforeFields(plan, head),
  ];
}
