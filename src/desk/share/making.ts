import type { Plan } from '../../core/plan/schema/plan';
import { planStore } from '../planStore';
import { sentenceOf } from '../reasonOf';
import { AskedWorker, withoutLine } from '../workers/askedWorker';
import { silenceOf } from '../workers/silence';
import { copyText } from './copying';
import type { ShareApi } from './shareApi';
import { type MadeLink, shareStore } from './shareStore';

/** The address that opens this page, with nothing after it; of a page from a file too, which has no origin. */
export const pageAddress = (): string => location.href.replace(/[?#].*$/s, '');

/** Makes a link of the committed plan, in a worker that ends with it: long plans take their time. */
async function made(plan: Plan, planId: string): Promise<MadeLink> {
  const worker = new AskedWorker<ShareApi>(
    () => new Worker(new URL('./share.worker.ts', import.meta.url), { type: 'module' }),
    withoutLine,
    { isThere: (api) => api.isThere(), tell: silenceOf('The link') },
  );
  try {
    const answer = await worker.about(plan, (api) => api.link(plan, pageAddress()));
    return { ...answer, plan, planId };
  } finally {
    worker.end();
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
      trouble: { planId, sentence: sentenceOf('No link could be made', error) },
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
