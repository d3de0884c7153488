import { freeId } from '../../../core/plan/edits/freeId';
import { removeFrameLine } from '../../../core/plan/edits/removeFrameLine';
import { setFrameLine } from '../../../core/plan/edits/setFrameLine';
import type { FrameLine } from '../../../core/plan/schema/drawing';
import type { Plan } from '../../../core/plan/schema/plan';
import { sessionStore } from '../../../desk/sessionStore';
import { Field } from '../../parts/Field';
import { edit } from './editing';
import { LegalField } from './LegalField';

const SIDES = ['left', 'top', 'right', 'bottom'] as const;
/** No line is drawn narrower than this, in shares of the frame. */
const LEAST = 0.001;

/** The rectangle with one side elsewhere; a side never passes the one across. */
function withSide(
  [left, top, right, bottom]: FrameLine['rect'],
  side: number,
  to: number,
): FrameLine['rect'] {
  const rect: FrameLine['rect'] = [left, top, right, bottom];
  rect[side] = to;
  return rect;
}

/** From where to where a side may go, per cent. */
function limitsOf(rect: FrameLine['rect'], side: number): readonly [number, number] {
  const across = rect[(side + 2) % 4];
  const percent = (share: number): number => Math.round(share * 10000) / 100;
  return side < 2 ? [0, percent(across - LEAST)] : [percent(across + LEAST), 100];
}

function addLine(plan: Plan): void {
  const lines = plan.frameLines ?? [];
  const line: FrameLine = {
    id: freeId(lines, 'line'),
    label: `Line ${lines.length + 1}`,
    rect: [0.1, 0.1, 0.9, 0.9],
  };
  edit('add a frame line', (before) => setFrameLine(before, { line }));
  sessionStore.getState().setGuides({ own: true });
}

/** Frame lines of one's own, over every setup: typed here in per cent of the frame, or dragged in the picture. */
export function OwnLinesSection({ plan }: { readonly plan: Plan }) {
  const lines = plan.frameLines ?? [];
  return (
    <section className="group">
      <h4>Own frame lines</h4>
      <ul className="parts-of">
        {lines.map((line) => (
          <li key={line.id}>
            <div className="fields">
              <Field
                wide
                label="name"
                text={line.label}
                commit={(text) =>
                  edit('name the frame line', (before) =>
                    setFrameLine(before, { line: { ...line, label: text.trim() } }),
                  )
                }
              />
              {SIDES.map((side, at) => (
                <LegalField
                  key={side}
                  label={side}
                  value={line.rect[at] * 100}
                  legal={{ what: 'Here the places', limits: limitsOf(line.rect, at), unit: '%', decimals: 2 }}
                  take={(percent) =>
                    edit('move the frame line', (before) =>
                      percent === undefined
                        ? before
                        : setFrameLine(before, {
                            line: { ...line, rect: withSide(line.rect, at, percent / 100) },
                          }),
                    )
                  }
                />
              ))}
            </div>
            <button
              type="button"
              className="bare"
              onClick={() =>
                edit('take a frame line away', (before) => removeFrameLine(before, { id: line.id }))
              }
            >
              Take {line.label} away
            </button>
          </li>
        ))}
      </ul>
      <p className="acts">
        <button type="button" onClick={() => addLine(plan)}>
          Add a frame line
        </button>
      </p>
    </section>
  );
}
