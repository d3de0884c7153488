import { CAUTION_STANDINGS } from '../../../core/cautions/types';
import type { LengthSystem } from '../../../core/units/lengths';
import type { CautionInFull } from '../../../desk/crew/crewApi';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { BreakingAddresses } from '../../parts/BreakingAddresses';
import { CautionGlyph } from '../../sheet/night/cautions/CautionGlyph';
import { figureLines, HEADINGS, KIND_WORDS } from '../../sheet/night/cautions/words';
import { Waiting } from '../page/Waiting';

/** A caution in full: what it says, its figures, where they come from, who decides, and what was noted. */
function CautionRow({
  caution,
  note,
  lengths,
}: {
  readonly caution: CautionInFull;
  readonly note: string | undefined;
  readonly lengths: LengthSystem;
}) {
  const { kind, standing, sentence, figures, sourceLines, decides } = caution;
  return (
    <li>
      <CautionGlyph standing={standing} noted={note !== undefined} />
      <div>
        <p>
          <b>{KIND_WORDS[kind]}</b>: {sentence}
        </p>
        {note === undefined ? null : <p className="caution-noted">Noted: {note}</p>}
        <ul className="caution-more">
          {figureLines(figures, lengths).map((line) => (
            <li key={line}>{line}</li>
          ))}
          {sourceLines.map((line) => (
            <li key={line} className="q">
              <BreakingAddresses words={line} />
            </li>
          ))}
        </ul>
        <p className="q">{decides}</p>
      </div>
    </li>
  );
}

/** What on this roof can hurt somebody, what breaks a figure first. */
export default function CautionsPart() {
  const plan = useCrew((state) => state.plan);
  const lengths = useCrew((state) => state.lengths);
  const cautions = useCrewReading((state) => state.cautions);
  if (!cautions) return <Waiting what="The roof is being looked over." />;
  const notes = new Map((plan.cautions?.notes ?? []).map(({ key, note }) => [key, note]));
  if (cautions.length === 0)
    return <p className="crew-section">Nothing on this roof asks for a caution that the plan can tell of.</p>;
  return (
    <>
      {CAUTION_STANDINGS.map((standing) => {
        const own = cautions.filter((caution) => caution.standing === standing);
        return own.length === 0 ? null : (
          <section key={standing} className="crew-section">
            <h3>
              {HEADINGS[standing]}, {own.length}
            </h3>
            <ul className="crew-told crew-cautions">
              {own.map((caution) => (
                <CautionRow
                  key={caution.id}
                  caution={caution}
                  note={notes.get(caution.id)}
                  lengths={lengths}
                />
              ))}
            </ul>
          </section>
        );
      })}
      <p className="q crew-estimate">
        All of it is an estimate for planning. On the roof a competent person decides.
      </p>
    </>
  );
}
