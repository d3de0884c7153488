import { setRoofLoad } from '../../../../core/plan/edits/setRoofLoad';
import { CAUTION_LIMITS, type RoofLoad } from '../../../../core/plan/schema/cautions';
import type { Plan } from '../../../../core/plan/schema/plan';
import { editPlan } from '../../fields/edit';
import { AmountIn } from './AmountIn';
import { AREA_LOAD, FOOT_LOAD, type UnitPair } from './units';

const FIELDS: readonly {
  readonly key: keyof RoofLoad;
  readonly label: string;
  readonly units: UnitPair;
  readonly most: number;
}[] = [
  {
    key: 'kilonewtonsPerSquareMetre',
    label: 'spread out',
    units: AREA_LOAD,
    most: CAUTION_LIMITS.areaLoad[1],
  },
  { key: 'kilonewtons', label: 'under a foot', units: FOOT_LOAD, most: CAUTION_LIMITS.pointLoad[1] },
];

/** The load with one of its figures said or taken away; null where nothing is left. */
function withFigure(load: RoofLoad, key: keyof RoofLoad, value: number | undefined): RoofLoad | null {
  const { [key]: _, ...rest } = load;
  const after: RoofLoad = value === undefined ? rest : { ...rest, [key]: value };
  return Object.keys(after).length === 0 ? null : after;
}

/** What whoever answers for the building says that its roof carries. */
export function LoadFields({ plan }: { readonly plan: Plan }) {
  const load = plan.cautions?.roofLoad ?? {};
  return (
    <section className="group">
      <h4>What the roof carries</h4>
      <div className="fields">
        {FIELDS.map(({ key, label, units, most }) => (
          <AmountIn
            key={key}
            label={label}
            units={units}
            value={load[key]}
            most={most}
            commit={(value) =>
              editPlan('say what the roof carries', (before) =>
                setRoofLoad(before, {
                  roofLoad: withFigure(before.cautions?.roofLoad ?? {}, key, value),
                }),
              )
            }
          />
        ))}
      </div>
      <p className="advice">
        As its owner or an engineer says it, beside its own weight. Without their word the plan only says what
        weighs most.
      </p>
    </section>
  );
}
