import { useId } from 'react';
import { candelaTable } from '../../../core/form/photometry/candelaTable';
import { ownBeam, ownLumens } from '../../../core/form/photometry/ownBeam';
import { sameEntry } from '../../../core/plan/edits/putEntry';
import { type HeadLight, setHeadLight } from '../../../core/plan/edits/setHeadLight';
import type { Distribution, Reading } from '../../../core/plan/schema/distribution';
import type { Gear } from '../../../core/plan/schema/gear';
import type { HeadClass } from '../../../core/plan/schema/kit';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLight, parseLight } from '../../../core/units/illuminance';
import { NBSP } from '../../../core/units/numbers';
import { choosePhotometricFile, headClassOfItem } from '../../../desk/photometry/photometricFile';
import { candelaText, lumenText, spreadText } from '../../../desk/photometry/words';
import { Field, ShownField } from '../../parts/Field';
import { firstSentence } from '../../parts/faultSentence';
import { LengthField } from '../../parts/LengthField';
import { useEdit } from '../fields/edit';
import { PolarPlot } from './PolarPlot';
import { changesOfTable, lampsOfClass, publishedSentence } from './words';
import './photometry.css';

/** Where a meter is first held, and how coarse its first reading is. Source: common practice, no source */
const FIRST_METRES = 3;

type Put = (name: string, light: HeadLight | null) => string | null;

function Table({ distribution }: { readonly distribution: Distribution }) {
  const { lumens, peakCandela } = candelaTable(distribution);
  return (
    <>
      <PolarPlot distribution={distribution} />
      <div className="fields">
        <ShownField wide label="from" text={distribution.source} />
        {distribution.says === undefined ? null : (
          <ShownField wide label="it says" text={`“${distribution.says}”`} />
        )}
        <ShownField label="lumens" text={lumenText(lumens)} />
        <ShownField label="peak" text={candelaText(peakCandela)} />
        <ShownField label="beam" text={spreadText(distribution, 0.5)} />
        <ShownField label="field" text={spreadText(distribution, 0.1)} />
        {distribution.lumens === undefined ? null : (
          <ShownField wide label="its bare lamps" text={lumenText(distribution.lumens)} />
        )}
      </div>
    </>
  );
}

function ReadingFields({
  own,
  reading,
  put,
}: {
  readonly own: HeadClass;
  readonly reading: Reading;
  readonly put: Put;
}) {
  const set = (patch: Partial<Reading>): string | null =>
    put('set the reading', { reading: { ...reading, ...patch } });
  return (
    <div className="fields">
      <Field
        label="meter read"
        text={formatLight(reading.lux, 'lx').replace(`${NBSP}lx`, '')}
        unit="lx"
        commit={(text) => {
          const read = parseLight(text, 'lx');
          return read.ok ? set({ lux: Number(read.value.toPrecision(6)) }) : firstSentence(read.faults);
        }}
      />
      <LengthField label="at" metres={reading.metres} commit={(metres) => set({ metres })} />
      <ShownField label="peak" text={candelaText(ownBeam(own).peakCandela)} />
      <ShownField label="lumens" text={lumenText(ownLumens(own))} />
    </div>
  );
}

/** What the class's own numbers would have a meter read. */
const firstReading = (own: HeadClass): Reading => ({
  lux: Number((ownBeam(own).peakCandela / FIRST_METRES ** 2).toPrecision(3)),
  metres: FIRST_METRES,
});

function sentencesOf(plan: Plan, gear: Gear, own: HeadClass): readonly string[] {
  const count = lampsOfClass(plan, own.id);
  return [
    ...(own.distribution || own.reading ? [] : [publishedSentence(own)]),
    ...(own.reading ? ['On the axis, with nothing before the lamp; beam and field as published.'] : []),
    ...(own.distribution
      ? ['Levels and picture go by this table.', ...changesOfTable(gear, own.distribution)]
      : []),
    ...(count > 1 ? [`What is put here goes for all ${count} lamps of this class.`] : []),
  ];
}

/** How a lamp's light was measured: by a photometric file, by a meter, or not at all; for all lamps of its class. */
export function MeasuredLight({ plan, gear }: { readonly plan: Plan; readonly gear: Gear }) {
  const edit = useEdit();
  const advice = useId();
  const own = headClassOfItem(plan, gear.id);
  if (!own) return null;
  const { distribution, reading, ...published } = own;
  const headId = own.id;
  const put: Put = (name, light) =>
    edit(name, (before) => {
      const after = setHeadLight(before, { headId, light });
      if (after !== before || !light || sameEntry({ ...published, ...light }, own)) return after;
      // A value that the plan refuses is put in all the same, so that its field hears what would work.
      const heads = before.kit.heads.map((each) => (each.id === headId ? { ...published, ...light } : each));
      return { ...before, kit: { ...before.kit, heads } };
    });
  return (
    <section className="group">
      <h4>Its light, measured</h4>
      {distribution ? <Table distribution={distribution} /> : null}
      {reading ? <ReadingFields own={own} reading={reading} put={put} /> : null}
      <p className="advice" id={advice}>
        {sentencesOf(plan, gear, own).join(' ')}
      </p>
      <p className="acts">
        <button type="button" aria-describedby={advice} onClick={() => void choosePhotometricFile(headId)}>
          {distribution ? 'Read another file' : 'Read a photometric file'}
        </button>
        {reading ? null : (
          <button type="button" onClick={() => put('measure it instead', { reading: firstReading(own) })}>
            Measured instead
          </button>
        )}
        {distribution || reading ? (
          <button type="button" className="bare" onClick={() => put('take the measured light out', null)}>
            {distribution ? 'Take the file out' : 'Take the reading out'}
          </button>
        ) : null}
      </p>
      <p className="advice">Or drop a file of LM-63, which ends in .ies, on the page.</p>
    </section>
  );
}
