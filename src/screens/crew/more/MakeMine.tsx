import { useState } from 'react';
import { crewStore } from '../../../desk/crew/crewStore';
import { openEditor } from '../../../desk/crew/ways';
import { sentenceOf } from '../../../desk/reasonOf';

/** Copies the open plan; says why not where it could not, null where it could. */
async function copied(): Promise<string | null> {
  const script = await import('../../../desk/crew/makeMine').catch(() => null);
  if (!script)
    return 'What copies it could not be loaded. Try again with a signal. The sheet stays as it is.';
  try {
    await script.makeMine(crewStore.getState().asWritten);
    return null;
  } catch (error) {
    return `${sentenceOf('This browser does not keep plans', error)} The sheet stays as it is.`;
  }
}

/** Copies the link's plan among the reader's own plans, and opens it in the editor. */
export function MakeMine() {
  const [trouble, setTrouble] = useState('');
  const [isMaking, setMaking] = useState(false);
  const make = async (): Promise<void> => {
    setMaking(true);
    setTrouble('');
    const trouble = await copied();
    if (trouble === null) return openEditor();
    setTrouble(trouble);
    setMaking(false);
  };
  return (
    <section className="crew-part" aria-label="Make it mine">
      <p>
        A copy goes among the plans on this device and opens in the editor. The plans that are there stay.
      </p>
      <button type="button" disabled={isMaking} onClick={() => void make()}>
        Make it mine
      </button>
      <p role="alert" className="verm">
        {trouble}
      </p>
    </section>
  );
}
