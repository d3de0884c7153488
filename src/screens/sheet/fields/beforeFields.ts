import * as v from 'valibot';
import { conversionShare } from '../../../core/form/photometry/conversion';
import { CONVERSION_GELS, DIFFUSION_SHEETS } from '../../../core/kit/gels';
import { headOf } from '../../../core/kit/inKit';
import type { Lamp } from '../../../core/plan/cues';
import { setBefore } from '../../../core/plan/edits/setBefore';
import { type Before, before as beforeSchema } from '../../../core/plan/schema/before';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatShare } from '../../../core/units/shares';
import { gelOf, leftOnAxis, sheetOf, takenText } from './beforeWords';
import { choice, reshaped } from './build';
import type { FieldGroup, FieldSpec } from './types';

const NONE = ['none', 'none'] as const;
const OWN = ['own', 'of its own'] as const;

/** Changes what is before a lamp; what the schema refuses is put in all the same, so that somebody hears what would work. */
function put(plan: Plan, { id, before: had }: Lamp, before: Before): Plan {
  return v.safeParse(beforeSchema, before).success
    ? setBefore(plan, { id, before })
    : reshaped(plan, id, { before: { ...had, ...before } });
}

/** A choice over the whole row, since its words say what each takes. */
const wide = (...args: Parameters<typeof choice>): FieldSpec => ({ ...choice(...args), wide: true });

function gelFields(lamp: Lamp, kelvin: number): FieldSpec[] {
  const { mired = 0, density = 0 } = lamp.before ?? {};
  const known = gelOf(mired)?.label;
  return [
    wide(
      'gel',
      mired === 0 ? NONE[0] : (known ?? OWN[0]),
      [
        NONE,
        ...CONVERSION_GELS.map(
          (gel) => [gel.label, `${gel.label}, ${takenText(conversionShare(kelvin, gel.mired))}`] as const,
        ),
        ...(mired === 0 || known ? [] : [OWN]),
      ],
      (plan, to) => {
        const gel = CONVERSION_GELS.find(({ label }) => label === to);
        return to === OWN[0] ? plan : put(plan, lamp, { mired: gel?.mired ?? 0 });
      },
    ),
    {
      form: 'number',
      label: 'shift',
      value: mired,
      unit: 'mired',
      change: (plan, value) => put(plan, lamp, { mired: value }),
    },
    {
      form: 'number',
      label: 'neutral gel',
      value: density,
      decimals: 2,
      change: (plan, value) => put(plan, lamp, { density: value }),
    },
  ];
}

function diffusionFields(lamp: Extract<Lamp, { kind: 'head' }>): FieldSpec[] {
  const diffusion = lamp.before?.diffusion;
  const known = diffusion && sheetOf(diffusion)?.label;
  const kinds = wide(
    'diffusion',
    diffusion ? (known ?? OWN[0]) : NONE[0],
    [
      NONE,
      ...DIFFUSION_SHEETS.map(
        ({ label, transmission }) => [label, `${label}, passes ${formatShare(transmission)}`] as const,
      ),
      ...(diffusion && !known ? [OWN] : []),
    ],
    (plan, to) => {
      if (to === OWN[0]) return plan;
      const sheet = DIFFUSION_SHEETS.find(({ label }) => label === to);
      if (!sheet) return setBefore(plan, { id: lamp.id, before: { diffusion: undefined } });
      const { transmission, spreadDegrees } = sheet;
      return put(plan, lamp, { diffusion: { transmission, spreadDegrees } });
    },
  );
  if (!diffusion) return [kinds];
  return [
    kinds,
    {
      form: 'share',
      label: 'passes',
      share: diffusion.transmission,
      change: (plan, transmission) => put(plan, lamp, { diffusion: { ...diffusion, transmission } }),
    },
    {
      form: 'number',
      label: 'spreads by',
      value: diffusion.spreadDegrees,
      unit: '°',
      change: (plan, spreadDegrees) => put(plan, lamp, { diffusion: { ...diffusion, spreadDegrees } }),
    },
  ];
}

const scrimFields = (lamp: Extract<Lamp, { kind: 'head' }>): FieldSpec[] =>
  (['doubles', 'singles'] as const).map((label) => ({
    form: 'number',
    label,
    value: lamp.before?.[label] ?? 0,
    change: (plan, value) => put(plan, lamp, { [label]: value }),
  }));

/** What is put before a lamp, and what all of it takes along its axis. */
export function beforeFields(plan: Plan, lamp: Lamp): FieldGroup {
  const own = headOf(plan.kit, lamp.head);
  const heading = lamp.kind === 'bulb string' ? 'Before the bulbs' : 'Before the lamp';
  if (!own) return { heading, fields: [] };
  return {
    heading,
    fields: [
      ...gelFields(lamp, own.kelvin),
      ...(lamp.kind === 'head' ? [...diffusionFields(lamp), ...scrimFields(lamp)] : []),
      ...(lamp.before
        ? [{ form: 'shown', label: 'takes on axis', text: takenText(leftOnAxis(own, lamp)) } as const]
        : []),
    ],
  };
}
