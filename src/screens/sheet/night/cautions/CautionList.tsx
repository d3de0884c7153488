import { Fragment } from 'react';
import { useStore } from 'zustand';
import { CAUTION_STANDINGS, type Caution } from '../../../../core/cautions/types';
import type { Plan } from '../../../../core/plan/schema/plan';
import { cautionsStore } from '../../../../desk/cautions/cautionsStore';
import { openCaution } from '../../../../desk/cautions/opening';
import { useSession } from '../../../../desk/hooks';
import { ChoosableRow } from '../../ChoosableRow';
import { CautionActs } from './CautionActs';
import { CautionGlyph } from './CautionGlyph';
import { sourceShort } from './sourceWords';
import { HEADINGS, KIND_WORDS, keyFigure } from './words';

/** All cautions by weight. One that is opened chooses what it is about, is drawn on the roof, and takes a note. */
export function CautionList({
  plan,
  cautions,
}: {
  readonly plan: Plan;
  readonly cautions: readonly Caution[];
}) {
  const openKey = useStore(cautionsStore, (state) => state.openKey);
  const lengths = useSession((state) => state.lengths);
  const notes = new Map((plan.cautions?.notes ?? []).map(({ key, note }) => [key, note]));
  return CAUTION_STANDINGS.map((standing) => {
    const own = cautions.filter((caution) => caution.standing === standing);
    if (own.length === 0) return null;
    return (
      <section key={standing} className="group">
        <h4>
          {HEADINGS[standing]}, {own.length}
        </h4>
        <ul className="rows findings caution-rows">
          {own.map((caution) => {
            const { id, kind, sentence, sources } = caution;
            const isOpen = id === openKey;
            const note = notes.get(id);
            const figure = keyFigure(caution, lengths);
            return (
              <Fragment key={id}>
                <ChoosableRow
                  chosen={isOpen}
                  expanded={isOpen}
                  onChoose={() => openCaution(isOpen ? null : id)}
                >
                  <CautionGlyph standing={standing} noted={note !== undefined} />
                  <span className="sentence">
                    <b>{KIND_WORDS[kind]}</b>: {sentence}
                    <small>
                      {figure === null ? '' : `${figure}; `}
                      {sourceShort(sources)}
                    </small>
                    {note === undefined || isOpen ? null : <small className="note">Noted: {note}</small>}
                  </span>
                </ChoosableRow>
                {isOpen ? <CautionActs plan={plan} caution={caution} note={note} /> : null}
              </Fragment>
            );
          })}
        </ul>
      </section>
    );
  });
}
