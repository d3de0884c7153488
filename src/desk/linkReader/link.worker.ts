import { planOfLink } from '../../exchange/link/link';
import type { LinkMessage } from './linkMessage';

/** One question, one answer: plain messages, since every byte of this script is waited for. */
const say = (message: LinkMessage): void => postMessage(message);

addEventListener('message', ({ data }: MessageEvent<string>) =>
  say({ kind: 'read', reading: planOfLink(data) }),
);
say({ kind: 'here' });
