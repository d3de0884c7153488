import type { Performer } from '../../../core/plan/schema/cast';
import { choice, named, reshaped } from './build';
import type { FieldGroup, FieldSpec } from './types';

function clothesFields({ id, clothes }: Performer): FieldSpec[] {
  const colour = (
    key: 'upperColour' | 'lowerColour' | 'headColour' | 'skinColour',
    label: string,
  ): FieldSpec => ({
    form: 'colour',
    label,
    colour: clothes[key],
    change: (plan, value) => reshaped(plan, id, { clothes: { ...clothes, [key]: value } }),
  });
  return [
    choice('wears', clothes.upper, named(['coat', 'jacket', 'jersey', 'shirt']), (plan, upper) =>
      reshaped(plan, id, { clothes: { ...clothes, upper } }),
    ),
    choice('on the head', clothes.head, named(['bare', 'cap', 'hood', 'bun', 'long hair']), (plan, head) =>
      reshaped(plan, id, { clothes: { ...clothes, head } }),
    ),
    colour('upperColour', 'upper'),
    colour('lowerColour', 'lower'),
    colour('headColour', 'head and hair'),
    colour('skinColour', 'skin'),
  ];
}

/** Somebody's body, clothes and what they carry. Their marks are a list of their own. */
export function castFields(performer: Performer): FieldGroup[] {
  const { id } = performer;
  return [
    {
      heading: 'Body',
      fields: [
        {
          form: 'length',
          label: 'stature',
          metres: performer.statureMetres,
          change: (plan, statureMetres) => reshaped(plan, id, { statureMetres }),
        },
        choice('figure', performer.figure, named(['male', 'female']), (plan, figure) =>
          reshaped(plan, id, { figure }),
        ),
        choice('build', performer.build, named(['slight', 'medium', 'heavy']), (plan, build) =>
          reshaped(plan, id, { build }),
        ),
        choice(
          'carries',
          performer.prop ?? 'nothing',
          named(['nothing', 'bird', 'box', 'ball', 'case']),
          (plan, to) => reshaped(plan, id, { prop: to === 'nothing' ? undefined : to }),
        ),
      ],
    },
    { heading: 'Clothes', fields: clothesFields(performer) },
  ];
}
