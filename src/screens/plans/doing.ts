import { plansStore } from '../../desk/plans/plansStore';
import { sentenceOf } from '../../desk/reasonOf';

/** Does something with the kept plans; why it could not be done is said in the list. */
export function doing(act: () => Promise<unknown>): void {
  act().catch((error: unknown) => {
    plansStore.setState({ trouble: sentenceOf('That could not be done', error) });
  });
}
