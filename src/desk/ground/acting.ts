import { fileSave } from 'browser-fs-access';
import { groundSentence } from '../../core/clearance/ground/words';
import { type BestSpot, heldFast } from '../../core/clearance/useful/bestSpot';
import { putLamp } from '../../core/clearance/useful/putLamp';
import { named } from '../../core/plan/named';
import { formatLength } from '../../core/units/lengths';
import { groundPng } from '../../exchange/groundPng';
import { isAbort } from '../assets/isAbort';
import { fileWord } from '../fileWord';
import { planStore } from '../planStore';
import { sentenceOf } from '../reasonOf';
import { sessionStore } from '../sessionStore';
import { toastStore } from '../toastStore';
import { groundStore } from './groundStore';

/** Puts a lamp in its best spot, aimed and dimmed, as one step of the history. */
export function putInBestSpot(best: BestSpot): void {
  const { plan, edit, undo } = planStore.getState();
  const { say } = toastStore.getState();
  const held = heldFast(plan, best.lampId);
  if (held !== null) {
    say(held, { tone: 'warn', about: 'best spot' });
    return;
  }
  const faults = edit('put the lamp in the best spot', (before) => putLamp(before, best));
  const label = plan.gear.find(({ id }) => id === best.lampId)?.label ?? best.lampId;
  const [fault] = faults;
  if (fault)
    say(`${named(label)} stays where it is. ${fault.sentence}`, { tone: 'warn', about: 'best spot' });
  else {
    const moved = formatLength(best.metres, sessionStore.getState().lengths);
    say(`${named(label)} stands ${moved} from where it was, aimed and dimmed.`, {
      about: 'best spot',
      action: { word: 'Undo', act: undo },
    });
  }
}

/** Saves the map of clear ground as a picture, the same that the command line makes. */
export async function saveGroundPicture(): Promise<void> {
  const { ground } = groundStore.getState();
  const { plan } = planStore.getState();
  const { say } = toastStore.getState();
  if (!ground) return;
  const fileName = `${fileWord(plan.title)}-clear-ground.png`;
  try {
    const png = groundPng(ground, {
      Title: plan.title,
      Description: groundSentence(plan, ground),
    });
    const handle = await fileSave(new Blob([png], { type: 'image/png' }), {
      description: 'Picture',
      mimeTypes: ['image/png'],
      extensions: ['.png'],
      fileName,
    });
    say(`Saved as ${handle?.name ?? fileName}.`);
  } catch (error) {
    if (!isAbort(error))
      say(sentenceOf('The picture was not saved', error), {
        tone: 'warn',
      });
  }
}
