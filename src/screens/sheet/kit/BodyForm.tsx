import { freeId } from '../../../core/plan/edits/freeId';
import { type Body, MODE_LIMITS } from '../../../core/plan/schema/kit';
import { Field } from '../../parts/Field';
import { LegalField } from '../camera/LegalField';

type Mode = Body['modes'][number];

const GATE = { what: 'Gates', limits: MODE_LIMITS.gateMm, unit: 'mm' } as const;
const CIRCLE = { what: 'Circles of confusion', limits: MODE_LIMITS.circleMm, unit: 'mm' } as const;

function withCircle(mode: Mode, circleMm: number | undefined): Mode {
  const { circleMm: _, ...rest } = mode;
  return circleMm === undefined ? rest : { ...rest, circleMm };
}

/** A body and its gate modes. */
export function BodyForm(props: {
  readonly body: Body;
  readonly change: (body: Body) => string | null;
  /** Which setups use a mode, in words; nothing for none. */
  readonly usedBy: (modeId: string) => string;
}) {
  const { body, change, usedBy } = props;
  const changeMode = (changed: Mode): string | null =>
    change({ ...body, modes: body.modes.map((mode) => (mode.id === changed.id ? changed : mode)) });
  const addMode = (): void => {
    const last = body.modes[body.modes.length - 1];
    const mode = { ...last, id: freeId(body.modes, 'mode'), label: `Mode ${body.modes.length + 1}` };
    change({ ...body, modes: [...body.modes, mode] });
  };
  return (
    <>
      <div className="fields">
        <Field
          wide
          label="name"
          text={body.label}
          commit={(text) => change({ ...body, label: text.trim() })}
        />
      </div>
      <ul className="parts-of">
        {body.modes.map((mode) => {
          const used = usedBy(mode.id);
          const { id, label, gateMm } = mode;
          return (
            <li key={id}>
              <div className="fields">
                <Field
                  wide
                  label="mode"
                  text={label}
                  commit={(text) => changeMode({ ...mode, label: text.trim() })}
                />
                <LegalField
                  label="gate width"
                  value={gateMm[0]}
                  legal={GATE}
                  take={(width = gateMm[0]) => changeMode({ ...mode, gateMm: [width, gateMm[1]] })}
                />
                <LegalField
                  label="gate height"
                  value={gateMm[1]}
                  legal={GATE}
                  take={(height = gateMm[1]) => changeMode({ ...mode, gateMm: [gateMm[0], height] })}
                />
                <LegalField
                  optional
                  label="circle of confusion"
                  value={mode.circleMm}
                  legal={CIRCLE}
                  empty="as usual"
                  take={(circleMm) => changeMode(withCircle(mode, circleMm))}
                />
              </div>
              {used === '' && body.modes.length > 1 ? (
                <button
                  type="button"
                  className="bare"
                  onClick={() => change({ ...body, modes: body.modes.filter((each) => each.id !== id) })}
                >
                  Take {label} out
                </button>
              ) : used === '' ? null : (
                <p className="q">Used by {used}.</p>
              )}
            </li>
          );
        })}
      </ul>
      <p className="acts">
        <button type="button" onClick={addMode}>
          Add a mode
        </button>
      </p>
    </>
  );
}
