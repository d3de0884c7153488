import { plansStore } from '../../desk/plans/plansStore';

/** Does something with the kept plans; why it could not be done is said in the list. */
export function doing(act: () => Promise<unknown>): void {
  act().catch((error: unknown) => {
    const reason = error instanceof Error ? error.message : String(error);
    plansStore.setState({ trouble: `That could not be done: ${reason}` });
  });
}
