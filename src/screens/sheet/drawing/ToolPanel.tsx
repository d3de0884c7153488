import type { PaletteEntry } from '../../../core/kit/palette';
import { formatHeading } from '../../../core/units/angles';
import { formatLength } from '../../../core/units/lengths';
import { NBSP } from '../../../core/units/numbers';
import { usePlanState, useSession } from '../../../desk/hooks';
import {
  dropStroke,
  endStroke,
  press,
  putDown,
  takeBackCorner,
  typeBearing,
  typeFields,
  typeLength,
} from '../../../desk/tools/drawing';
import { strokeFigures } from '../../../desk/tools/figures';
import { entryOf } from '../../../desk/tools/making';
import type { Stroke } from '../../../desk/tools/toolStore';
import { readBearing, readLegLength } from '../../../desk/tools/typing';
import { useTool } from '../../../desk/tools/useTool';
import { Field } from '../../parts/Field';
import { firstSentence } from '../../parts/faultSentence';
import { Glyph } from '../../parts/Glyph';
import { Icon, iconNamed } from '../../parts/Icon';
import { EditContext } from '../fields/edit';
import { FieldOf } from '../fields/FieldOf';
import { fieldsOf } from '../fields/fieldsOf';
import { UnderlayPanel } from '../import/UnderlayPanel';
import { inARow } from '../palette/findEntries';
import { type Draft, draftOf, fieldsTyped } from './draft';
import { lightSentence } from './facts';
import { ToolHint } from './ToolHint';

/** Length and bearing of the leg in the hand: typed, they hold it. */
function LegFields({ stroke, isOutline }: { readonly stroke: Stroke | null; readonly isOutline: boolean }) {
  const lengths = useSession((state) => state.lengths);
  const { corners, next, typedLengthMetres, typedBearingDegrees } = stroke ?? {
    corners: [],
    next: null,
    typedLengthMetres: null,
    typedBearingDegrees: null,
  };
  const figures = strokeFigures(corners, next, { outline: isOutline, postEveryMetres: null });
  const metres = typedLengthMetres ?? figures.legMetres;
  const degrees = typedBearingDegrees ?? figures.bearingDegrees;
  const [number = '', unit] =
    metres === null
      ? ['']
      : lengths === 'm'
        ? formatLength(metres, 'm').split(NBSP)
        : [formatLength(metres, lengths)];
  return (
    <>
      <Field
        label="length"
        text={number}
        {...(unit === undefined ? {} : { unit })}
        commit={(text) => {
          if (text.trim() === '') {
            typeLength(null);
            return null;
          }
          const read = readLegLength(text);
          if (read.ok) typeLength(read.value);
          return read.ok ? null : firstSentence(read.faults);
        }}
      />
      <BearingField label="bearing" degrees={degrees} />
    </>
  );
}

function BearingField({ label, degrees }: { readonly label: string; readonly degrees: number | null }) {
  return (
    <Field
      label={label}
      text={degrees === null ? '' : formatHeading(degrees, 1).replace('°', '')}
      unit="°"
      commit={(text) => {
        if (text.trim() === '') {
          typeBearing(null);
          return null;
        }
        const read = readBearing(text);
        if (read.ok) typeBearing(read.value);
        return read.ok ? null : firstSentence(read.faults);
      }}
    />
  );
}

/** The numbers of what is made: those that a draft can take before it stands. */
function DraftFields({ draft }: { readonly draft: Draft }) {
  const lengths = useSession((state) => state.lengths);
  const fields = fieldsOf(draft.plan, draft.item, lengths)
    .flatMap((group) => group.fields)
    // A class comes with what belongs to it; the palette has each by itself.
    .filter((spec) => spec.label !== 'class' && spec.form !== 'shown');
  return (
    <EditContext
      value={(_, change) => {
        const typed = fieldsTyped(draft, change);
        if ('sentence' in typed) return typed.sentence;
        typeFields(typed.fields);
        return null;
      }}
    >
      {fields.map((spec) => (
        <FieldOf key={spec.label} spec={spec} />
      ))}
    </EditContext>
  );
}

function EntryPanel({ entry }: { readonly entry: PaletteEntry }) {
  const state = useTool((each) => each);
  const plan = usePlanState((each) => each.plan);
  const { stroke, refusal } = state;
  const drawing = stroke !== null && stroke.corners.length > 0;
  const draft = draftOf(plan, state, entry);
  const light = draft ? lightSentence(draft.item) : null;
  const name = inARow(entry.word);
  return (
    <div className="item-panel">
      <h3 className="of-item stays">
        <Icon name={iconNamed(entry.icon)} />
        <span className="name">
          {entry.word}, {drawing ? 'being drawn' : entry.how === 'spot' ? 'in the hand' : 'to be drawn'}
        </span>
      </h3>
      <div className="fields draft">
        {entry.how === 'spot' ? (
          <BearingField label="facing" degrees={stroke?.typedBearingDegrees ?? null} />
        ) : (
          <LegFields stroke={stroke} isOutline={entry.how === 'outline'} />
        )}
        {draft ? <DraftFields draft={draft} /> : null}
      </div>
      {refusal === null ? null : (
        <p className="err" role="alert">
          <Glyph verdict="showing" />
          {refusal}
        </p>
      )}
      <p className="acts">
        {drawing && entry.how !== 'ends' ? (
          <button type="button" className="do" onClick={() => endStroke()}>
            End the {name}
          </button>
        ) : null}
        {drawing && stroke.next !== null && stroke.typedLengthMetres !== null ? (
          <button type="button" onClick={press}>
            Take this corner
          </button>
        ) : null}
        {drawing && stroke.corners.length > 1 ? (
          <button type="button" onClick={takeBackCorner}>
            A corner back
          </button>
        ) : null}
        {drawing ? (
          <button type="button" className="bare" onClick={() => void dropStroke()}>
            Drop it
          </button>
        ) : (
          <button type="button" className="bare" onClick={putDown}>
            Put it down again
          </button>
        )}
      </p>
      <p className="advice">
        {light === null ? null : <>{light} </>}
        <ToolHint entry={entry} drawing={drawing} />
      </p>
    </div>
  );
}

const PLAIN_TOOLS: Readonly<Record<string, readonly [title: string, hint: string]>> = {
  tape: ['Tape measure', 'Click two places. The tape stays on the roof until it is taken up.'],
  opening: [
    'An opening',
    'Click a wall, a parapet or a fence where it goes, or drag from jamb to jamb. Type a length for its width.',
  ],
  'two points': ['Two points', 'Click two places that you know the distance of, then type it.'],
  place: ['A place', 'Click the place on the roof.'],
};

/** What is in the hand: what it makes, its numbers while it is drawn, and what ends or drops it. Null with a bare hand. */
export function ToolPanel() {
  const tool = useTool((state) => state.tool);
  const refusal = useTool((state) => state.refusal);
  const entry = entryOf(tool);
  if (entry) return <EntryPanel key={entry.id} entry={entry} />;
  if (tool.type === 'two points' && tool.purpose.type === 'underlay') return <UnderlayPanel />;
  const plain = PLAIN_TOOLS[tool.type];
  if (!plain) return null;
  const [title, hint] = plain;
  return (
    <div className="item-panel">
      <h3 className="of-item stays">
        <Icon name={tool.type === 'tape' ? 'tape' : tool.type === 'opening' ? 'opening' : 'find'} />
        <span className="name">{title}</span>
      </h3>
      <p className="advice">
        {hint} <kbd>Esc</kbd> puts it down.
      </p>
      {refusal === null ? null : (
        <p className="err" role="alert">
          <Glyph verdict="showing" />
          {refusal}
        </p>
      )}
      <p className="acts">
        <button type="button" className="bare" onClick={putDown}>
          Put it down again
        </button>
      </p>
    </div>
  );
}
