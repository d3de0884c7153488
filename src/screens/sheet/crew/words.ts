import { listed } from '../../../core/report/listed';
import type { MadeLink } from '../../../desk/share/shareStore';

/** Characters from which on some chats and mails cut a link: common practice, no source. */
const LONG_LINK = 2000;
/** Bytes that the largest code holds: ISO/IEC 18004, version 40 with the least correction, from memory. */
const CODE_BYTES = 2953;

const counted = (count: number): string => count.toLocaleString('en-GB');

/** How long a link is, and what that means for whoever sends it. */
export function lengthSentence({ address, code }: Pick<MadeLink, 'address' | 'code'>): string {
  const long = `${counted(address.length)} characters`;
  if (address.length <= LONG_LINK) return `${long}: chats and mails carry it whole.`;
  const instead =
    code === null ? 'the pack or the crew sheet as one file' : 'the code, the pack or the one file';
  return `${long}: some chats cut a link over ${counted(LONG_LINK)}. Send ${instead} there.`;
}

/** Why there is no code, what takes the most room in the link, and what goes instead. */
export const noCodeSentence = ({ heaviest }: Pick<MadeLink, 'heaviest'>): string =>
  `Too long for one code, which holds ${counted(CODE_BYTES)} characters. The most room goes to ${listed(heaviest)}. Send the crew sheet as one file.`;

/** Names of a machine for itself. */
const ITSELF = /^(?:localhost|127(?:\.\d+){3}|\[::1\])$/;

/** What is to be known where a link leads nowhere for others; null where it does. */
export function nowhereSentence(address: string): string | null {
  const { protocol, hostname } = new URL(address);
  if (protocol === 'file:')
    return 'This page was opened from a file, so its link opens on this device alone. Send the crew sheet as one file.';
  return ITSELF.test(hostname)
    ? 'This page comes from this computer, so its link opens here alone. Put the page on a web server first, or send the crew sheet as one file.'
    : null;
}
