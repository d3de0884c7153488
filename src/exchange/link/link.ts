import { parsePlanText } from '../../core/plan/parse';
import type { Plan } from '../../core/plan/schema/plan';
import { serialisePlan } from '../../core/plan/serialise';
import { fromBase64url, toBase64url } from './base64url';
import { disclosed, enclosed } from './envelope';
import { leftOutOf } from './leftOut';
import { packed, unpacked } from './v1/pack';

/** A plan as the part of an address behind its `#`. */
export interface PlanLink {
  /** Without the `#`: the digit of the version, then base64url. */
  readonly fragment: string;
  /** What the plan has beside it that the link does not carry, a sentence each. */
  readonly leftOut: readonly string[];
}

/** Why a link gives no plan. */
export type LinkFault = 'empty' | 'cut' | 'altered' | 'newer' | 'tooLarge' | 'notAPlan';

/** What a link gave: its plan, or in a sentence what is wrong and what to do. */
export type LinkReading =
  | { readonly ok: true; readonly plan: Plan; readonly leftOut: readonly string[] }
  | { readonly ok: false; readonly kind: LinkFault; readonly sentence: string };

const VERSION = '1';
/** The longest fragment that is read: sixty times what a night takes. */
export const LONGEST_FRAGMENT = 400_000;

const SENTENCES: Readonly<Record<Exclude<LinkFault, 'notAPlan'>, string>> = {
  empty: 'This address holds no plan. Ask for the whole link again.',
  cut: 'This link lost its end: something on its way cut it off. Ask for it again, or for the plan as a file.',
  altered:
    'This link was changed on its way and cannot be read. Ask for it again, or for the plan as a file.',
  newer: 'This link comes from a newer version of the page. Load this page again to get that version.',
  tooLarge: 'This link holds more than a link may. Ask for the plan as a file.',
};

/** Thrown for a plan that no link can hold: 2 MB of JSON, or what takes many seconds to read. */
export class LinkTooLarge extends Error {
  readonly sentence: string;

  constructor() {
    // As its message too: between a worker and the page an error keeps nothing else.
    const sentence = 'This plan is larger than a link may be. Hand it over as a file.';
    super(sentence);
    this.sentence = sentence;
  }
}

/**
 * The whole plan as a link: nothing of it lies on a server. The same plan gives the same link.
 * @throws LinkTooLarge for a plan that is larger than any night needs
 * @throws Error for a plan that is none, which is our own mistake
 */
export function linkOfPlan(plan: Plan): PlanLink {
  const coded = packed(JSON.parse(serialisePlan(plan)));
  const fragment = coded && VERSION + toBase64url(enclosed(coded));
  if (!fragment || fragment.length > LONGEST_FRAGMENT) throw new LinkTooLarge();
  return { fragment, leftOut: leftOutOf(plan) };
}

/** Reads the fragment of a link, with or without its `#`. Never throws: whatever it is given is a plan or a fault. */
export function planOfLink(fragment: string): LinkReading {
  if (fragment.length > LONGEST_FRAGMENT) return faultOf('tooLarge');
  // Letters wrap long lines, and whoever copies from there takes the breaks along.
  const bare = fragment.replace(/^#/, '').replace(/\s/g, '');
  if (bare.length === 0) return faultOf('empty');
  if (/^[2-9]/.test(bare)) return faultOf('newer');
  if (!bare.startsWith(VERSION)) return faultOf('altered');
  const bytes = fromBase64url(bare.slice(1));
  if (!bytes) return faultOf('altered');
  const coded = disclosed(bytes);
  if (typeof coded === 'string') return faultOf(coded);
  const read = unpacked(coded);
  if (!read.ok) return faultOf(read.kind);
  const parsed = parsePlanText(read.text);
  if (!parsed.ok)
    return {
      ok: false,
      kind: 'notAPlan',
      sentence: `This link holds no plan. ${parsed.faults[0].sentence} Ask for it again, or for the plan as a file.`,
    };
  return { ok: true, plan: parsed.value, leftOut: leftOutOf(parsed.value) };
}

const faultOf = (kind: Exclude<LinkFault, 'notAPlan'>): LinkReading => ({
  ok: false,
  kind,
  sentence: SENTENCES[kind],
});
