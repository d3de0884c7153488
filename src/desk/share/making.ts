import { type Remote, wrap } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';
import { planStore } from '../planStore';
import { reasonOf } from '../reasonOf';
import { copyText } from './copying';
import type { ShareApi } from './shareApi';
import { type MadeLink, shareStore } from './shareStore';

/** The address that opens this page, with nothing after it; of a page from a file too, which has no origin. */
export const pageAddress = (): string => location.href.replace(/[?#].*$/s, '');

/** Makes a link of the committed plan, in a worker that ends with it: long plans take their time. */
async function made(plan: Plan, planId: string): Promise<MadeLink> {
  const worker = new Worker(new URL('./share.worker.ts', import.meta.url), { type: 'module' });
  const failed = new Promise<never>((_, reject) =>
    worker.addEventListener('error', (event) =>
      reject(new Error(event.message || 'its worker did not start')),
    ),
  );
  try {
    const api: Remote<ShareApi> = wrap<ShareApi>(worker);
    const answer = await Promise.race([api.link(plan, pageAddress()), failed]);
    return { ...answer, plan, planId };
  } finally {
    worker.terminate();
  }
}

/** Makes the link of the committed plan, and copies it. */
export async function makeLink(): Promise<void> {
  if (shareStore.getState().making) return;
  shareStore.setState({ making: true, trouble: null, copied: null });
  const { plan, planId } = planStore.getState();
  const link = made(plan, planId);
  const copying = copyText(link.then(({ address }) => address));
  try {
    shareStore.setState({ made: await link });
    shareStore.setState({ copied: await copying });
  } catch (error) {
    shareStore.setState({
      trouble: { planId, sentence: `No link could be made: ${reasonOf(error).replace(/\.?$/, '.')}` },
    });
  } finally {
    shareStore.setState({ making: false });
  }
}

/** Copies the link that there is once more. */
export async function copyLink(address: string): Promise<void> {
  shareStore.setState({ copied: null });
  shareStore.setState({ copied: await copyText(Promise.resolve(address)) });
}
