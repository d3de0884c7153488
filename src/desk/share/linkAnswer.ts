import type { Plan } from '../../core/plan/schema/plan';
import { linkOfPlan } from '../../exchange/link/link';
import { qrOf } from '../../exchange/link/qr';
import { codeOutline } from './codeOutline';
import { heaviest } from './heaviest';
import type { LinkAnswer } from './shareApi';

/** A plan as a link to a page, with its code. @param page the page's address, without anything after # */
export function linkAnswer(plan: Plan, page: string): LinkAnswer {
  const { fragment, leftOut } = linkOfPlan(plan);
  const address = `${page}#${fragment}`;
  const squares = qrOf(address);
  return { address, leftOut, heaviest: heaviest(plan), code: squares ? codeOutline(squares) : null };
}
