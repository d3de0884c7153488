import type { GearOf } from '../../../core/form/gear/references';
import { NETS } from '../../../core/kit/nets';
import { choice, named, reshaped, tiltField } from './build';
import { CLOTH_SIZES, clothSizeWord } from './clothSizes';
import type { Change, FieldSpec } from './types';

/** What a cloth lets through as a share and in stops. */
function throughFields(id: string, share: number): FieldSpec[] {
  const change: Change<number> = (plan, transmission) => reshaped(plan, id, { transmission });
  return [
    { form: 'share', label: 'lets through', share, change },
    { form: 'stops', label: 'in stops', share, change },
  ];
}

/** Whether a flag is solid or a net, and what the net lets through. */
function flagFields({ id, transmission }: GearOf<'flag'>): FieldSpec[] {
  const isNet = transmission !== undefined && transmission > 0;
  const known =
    transmission === NETS.single ? 'single net' : transmission === NETS.double ? 'double net' : 'other net';
  return [
    choice(
      'black cloth',
      isNet ? known : 'solid',
      named(['solid', 'single net', 'double net', ...(isNet && known === 'other net' ? [known] : [])]),
      (plan, to) =>
        to === 'other net'
          ? plan
          : reshaped(plan, id, {
              transmission: to === 'solid' ? undefined : to === 'single net' ? NETS.single : NETS.double,
            }),
    ),
    ...(isNet ? throughFields(id, transmission) : []),
  ];
}

function lightFields(cloth: GearOf<'flag' | 'frame' | 'bounce'>): FieldSpec[] {
  const { id } = cloth;
  if (cloth.kind === 'flag') return flagFields(cloth);
  if (cloth.kind === 'frame') return throughFields(id, cloth.transmission);
  return [
    {
      form: 'share',
      label: 'gives back',
      share: cloth.reflectance,
      change: (plan, reflectance) => reshaped(plan, id, { reflectance }),
    },
  ];
}

/** The fields of a flag, a net, a frame or a bounce: its size, its tilt, and what it does to the light. */
export function clothFields(cloth: GearOf<'flag' | 'frame' | 'bounce'>): FieldSpec[] {
  const { id, size } = cloth;
  const sides = (['width', 'height'] as const).map(
    (label, axis): FieldSpec => ({
      form: 'length',
      label,
      metres: size[axis] ?? 0,
      change: (plan, metres) => reshaped(plan, id, { size: size.with(axis, metres) }),
    }),
  );
  return [
    {
      ...choice(
        'made size',
        clothSizeWord(size),
        named([...CLOTH_SIZES.map(({ word }) => word), 'free']),
        (plan, word) => {
          const made = CLOTH_SIZES.find((each) => each.word === word);
          return made ? reshaped(plan, id, { size: [...made.size] }) : plan;
        },
      ),
      wide: true,
    },
    ...sides,
    tiltField(id, cloth.tiltDegrees),
    ...lightFields(cloth),
  ];
}
