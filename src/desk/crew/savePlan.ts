import { planText } from '../../core/plan/planText';
import { fileWord } from '../fileWord';
import { saveText } from '../share/saveText';
import { crewStore } from './crewStore';

/** Saves the sheet's plan as a plan file. What came of it, as a sentence; empty where somebody thought better of it. */
export function savePlan(): Promise<string> {
  const { asWritten } = crewStore.getState();
  return saveText({
    text: planText(asWritten),
    type: 'application/json',
    what: 'The plan',
    fileName: `${fileWord(asWritten.title)}.plan.json`,
  });
}
