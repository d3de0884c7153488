import { useState } from 'react';
import type { Plan } from '../../../../core/plan/schema/plan';
import { useSession } from '../../../../desk/hooks';
import { savePack } from '../../../../desk/pack/savingPack';
import type { PaperName } from '../../../../exchange/pdf/paper';
import { MakeButton, Progress, useIsMaking } from './Making';
import './pack.css';

const PAPER_WORDS: Readonly<Record<PaperName, string>> = { a4: 'A4', letter: 'Letter' };
const isPaper = (text: string): text is PaperName => Object.hasOwn(PAPER_WORDS, text);

function PaperChoice(props: { readonly paper: PaperName; readonly onChoose: (paper: PaperName) => void }) {
  return (
    <select
      aria-label="Paper of the pack"
      value={props.paper}
      onChange={({ currentTarget: { value } }) => {
        if (isPaper(value)) props.onChoose(value);
      }}
    >
      {Object.entries(PAPER_WORDS).map(([name, word]) => (
        <option key={name} value={name}>
          {word}
        </option>
      ))}
    </select>
  );
}

/** Saves all that goes up to the roof as one file to print: on which paper, how far it is, and what stops it. */
export function PackActs({ plan }: { readonly plan: Plan }) {
  const [paper, setPaper] = useState<PaperName>('a4');
  const lengths = useSession((state) => state.lengths);
  const isMaking = useIsMaking('pack');
  return (
    <div className="pack-acts">
      <span role="status">{isMaking ? 'Making the pack' : ''}</span>
      {isMaking ? <Progress kind="pack" /> : <PaperChoice paper={paper} onChoose={setPaper} />}
      <MakeButton kind="pack" word="Save the pack" onMake={() => void savePack(plan, { paper, lengths })} />
    </div>
  );
}
