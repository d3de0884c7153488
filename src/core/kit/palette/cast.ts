import { tidyCoordinate } from '../../plan/edits/tidy';
import type { Performer } from '../../plan/schema/cast';
import { surfaceUnder } from '../../plan/surfaces';
import type { MakingEntry } from './entry';

type Clothes = Performer['clothes'];

const MAN: Clothes = {
  upper: 'jacket',
  upperColour: '#3b4048',
  lowerColour: '#22262e',
  head: 'bare',
  headColour: '#2a211b',
  skinColour: '#b98a6b',
};
const WOMAN: Clothes = {
  upper: 'coat',
  upperColour: '#6b4a3a',
  lowerColour: '#22262e',
  head: 'long hair',
  headColour: '#1f1712',
  skinColour: '#c49a7a',
};
const CHILD: Clothes = { ...MAN, upper: 'jersey', upperColour: '#7a2f2a' };

interface Person {
  readonly id: string;
  readonly word: string;
  readonly also: readonly string[];
  readonly figure: Performer['figure'];
  readonly statureMetres: number;
  readonly build: Performer['build'];
  readonly clothes: Clothes;
}

/** Somebody on one mark, at the first beat. */
const person = ({ id, word, also, ...body }: Person): MakingEntry => ({
  section: 'cast',
  group: 'Cast',
  kind: 'performer',
  how: 'spot',
  icon: 'performer',
  id,
  word,
  also: ['performer', 'actor', 'stand-in', ...also],
  make: ({ plan, spots, headingDegrees }) => {
    const first = plan.beats.toSorted((a, b) => a.atSeconds - b.atSeconds)[0];
    if (!first) return null;
    const floorMetres = tidyCoordinate(surfaceUnder(plan, spots[0]).metres);
    return [
      {
        section: 'cast',
        stem: word,
        record: {
          ...body,
          marks: [
            {
              id: 'mark-1',
              beat: first.id,
              at: spots[0],
              ...(floorMetres !== 0 && { floorMetres }),
              headingDegrees,
              stance: 'stand',
              holdSeconds: 0,
            },
          ],
        },
      },
    ];
  },
});

/** People by figure and stature. Source: common practice, no source */
export const CAST_ENTRIES: readonly MakingEntry[] = [
  person({
    id: 'man',
    word: 'Man',
    also: ['male'],
    figure: 'male',
    statureMetres: 1.77,
    build: 'medium',
    clothes: MAN,
  }),
  person({
    id: 'woman',
    word: 'Woman',
    also: ['female', 'actress'],
    figure: 'female',
    statureMetres: 1.64,
    build: 'medium',
    clothes: WOMAN,
  }),
  person({
    id: 'tall-man',
    word: 'Tall man',
    also: ['male'],
    figure: 'male',
    statureMetres: 1.92,
    build: 'medium',
    clothes: MAN,
  }),
  person({
    id: 'short-man',
    word: 'Short man',
    also: ['male'],
    figure: 'male',
    statureMetres: 1.65,
    build: 'medium',
    clothes: MAN,
  }),
  person({
    id: 'tall-woman',
    word: 'Tall woman',
    also: ['female', 'actress'],
    figure: 'female',
    statureMetres: 1.78,
    build: 'slight',
    clothes: WOMAN,
  }),
  person({
    id: 'short-woman',
    word: 'Short woman',
    also: ['female', 'actress'],
    figure: 'female',
    statureMetres: 1.52,
    build: 'slight',
    clothes: WOMAN,
  }),
  person({
    id: 'heavy-man',
    word: 'Heavy man',
    also: ['male', 'big', 'large'],
    figure: 'male',
    statureMetres: 1.8,
    build: 'heavy',
    clothes: { ...MAN, upper: 'coat', head: 'cap' },
  }),
  person({
    id: 'child',
    word: 'Child',
    also: ['boy', 'girl', 'kid'],
    figure: 'male',
    statureMetres: 1.3,
    build: 'slight',
    clothes: CHILD,
  }),
];
