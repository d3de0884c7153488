import { LENS_LIMITS, type Lens } from '../../../core/plan/schema/kit';
import { formatLength, parseLength } from '../../../core/units/lengths';
import { useSession } from '../../../desk/hooks';
import { Field } from '../../parts/Field';
import { firstSentence } from '../../parts/faultSentence';
import { OfferField } from '../../parts/OfferField';
import { LegalField } from '../camera/LegalField';
import type { Legal } from '../camera/legal';

type Change = (lens: Lens) => string | null;
type Numbered =
  | 'focalMm'
  | 'longestMm'
  | 'squeeze'
  | 'widestStop'
  | 'narrowestStop'
  | 'imageCircleMm'
  | 'frontDiameterMm'
  | 'pupilToImageMm'
  | 'kilograms';

const BENDS = ['k1', 'k2', 'k3', 'p1', 'p2'] as const;
const STRAIGHT = { k1: 0, k2: 0, k3: 0, p1: 0, p2: 0 };

/** The fields of a lens, the stops and the zoom held against each other. */
function fieldsOf({ focalMm, widestStop, narrowestStop }: Lens): readonly {
  readonly name: Numbered;
  readonly label: string;
  readonly legal: Legal;
  readonly optional?: boolean;
  readonly empty?: string;
}[] {
  const limits = LENS_LIMITS;
  return [
    { name: 'focalMm', label: 'focal', legal: { what: 'Focal lengths', limits: limits.focalMm, unit: 'mm' } },
    {
      name: 'longestMm',
      label: 'zooms to',
      legal: { what: 'Here the longest', limits: [focalMm, limits.longestMm[1]], unit: 'mm' },
      optional: true,
      empty: 'a prime',
    },
    { name: 'squeeze', label: 'squeeze', legal: { what: 'Squeezes', limits: limits.squeeze, unit: '×' } },
    {
      name: 'widestStop',
      label: 'widest, T',
      legal: {
        what: 'Here the widest stops',
        limits: [limits.widestStop[0], Math.min(limits.widestStop[1], narrowestStop)],
      },
    },
    {
      name: 'narrowestStop',
      label: 'narrowest, T',
      legal: {
        what: 'Here the narrowest stops',
        limits: [Math.max(limits.narrowestStop[0], widestStop), limits.narrowestStop[1]],
      },
    },
    {
      name: 'imageCircleMm',
      label: 'image circle',
      legal: { what: 'Image circles', limits: limits.imageCircleMm, unit: 'mm' },
      optional: true,
      empty: 'not known',
    },
    {
      name: 'frontDiameterMm',
      label: 'front',
      legal: { what: 'Front diameters', limits: limits.frontDiameterMm, unit: 'mm' },
      optional: true,
      empty: 'not known',
    },
    {
      name: 'pupilToImageMm',
      label: 'pupil to image',
      legal: { what: 'Pupil distances', limits: limits.pupilToImageMm, unit: 'mm' },
      optional: true,
      empty: 'not known',
    },
    {
      name: 'kilograms',
      label: 'weight',
      legal: { what: 'Weights', limits: limits.kilograms, unit: 'kg' },
      optional: true,
      empty: 'not known',
    },
  ];
}

/** A lens with a field changed, or without it. */
function withField<Name extends keyof Lens>(lens: Lens, name: Name, value: Lens[Name] | undefined): Lens {
  const { [name]: _, ...rest } = lens;
  return (value === undefined ? rest : { ...lens, [name]: value }) as Lens;
}

function CloseFocusField({ lens, change }: { readonly lens: Lens; readonly change: Change }) {
  const lengths = useSession((state) => state.lengths);
  const [lowest, highest] = LENS_LIMITS.closeFocusMetres;
  const take = (closeFocusMetres: number): string | null => change({ ...lens, closeFocusMetres });
  return (
    <OfferField
      label="close focus"
      text={formatLength(lens.closeFocusMetres, lengths)}
      commit={(text) => {
        const read = parseLength(text, lengths);
        if (!read.ok) return { sentence: firstSentence(read.faults) ?? '', offer: null };
        if (read.value >= lowest && read.value <= highest) {
          const sentence = take(read.value);
          return sentence === null ? null : { sentence, offer: null };
        }
        const nearest = Math.min(highest, Math.max(lowest, read.value));
        return {
          sentence: `Close focus runs from ${formatLength(lowest, lengths)} to ${formatLength(highest, lengths)}.`,
          offer: { word: `Take ${formatLength(nearest, lengths)}`, take: () => void take(nearest) },
        };
      }}
    />
  );
}

/** All that is known of a lens, to be typed once. */
export function LensForm({ lens, change }: { readonly lens: Lens; readonly change: Change }) {
  const bends = lens.distortion ?? STRAIGHT;
  return (
    <>
      <div className="fields">
        <Field
          wide
          label="name"
          text={lens.label}
          commit={(text) => change({ ...lens, label: text.trim() })}
        />
        <Field
          wide
          label="set"
          text={lens.set ?? ''}
          empty="by itself"
          commit={(text) => change(withField(lens, 'set', text.trim() === '' ? undefined : text.trim()))}
        />
        {fieldsOf(lens).map(({ name, label, legal, optional = false, empty = '' }) => (
          <LegalField
            key={name}
            label={label}
            value={lens[name]}
            legal={legal}
            optional={optional}
            empty={empty}
            take={(value) => change(withField(lens, name, value))}
          />
        ))}
        <CloseFocusField lens={lens} change={change} />
      </div>
      <h4>Distortion, k1 k2 k3 p1 p2 with fx = focal / squeeze</h4>
      <div className="fields">
        {BENDS.map((name) => (
          <LegalField
            key={name}
            label={name}
            value={bends[name]}
            legal={{ what: 'Here coefficients', limits: LENS_LIMITS[name], decimals: 8 }}
            take={(value) => {
              const distortion = { ...bends, [name]: value ?? 0 };
              const isStraight = Object.values(distortion).every((coefficient) => coefficient === 0);
              return change(withField(lens, 'distortion', isStraight ? undefined : distortion));
            }}
          />
        ))}
      </div>
    </>
  );
}
