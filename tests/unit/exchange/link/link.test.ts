import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { serialisePlan } from '../../../../src/core/plan/serialise';
import { toBase64url } from '../../../../src/exchange/link/base64url';
import { enclosed } from '../../../../src/exchange/link/envelope';
import { isLinkFragment } from '../../../../src/exchange/link/isLink';
import {
  type LinkFault,
  LinkTooLarge,
  LONGEST_FRAGMENT,
  linkOfPlan,
  planOfLink,
} from '../../../../src/exchange/link/link';
import type { Json } from '../../../../src/exchange/link/v1/document';
import { LIMITS, packed, unpacked } from '../../../../src/exchange/link/v1/pack';
import { planFrom } from '../../../plans/bare';
import { DEMO, readPlan } from '../../../plans/readPlan';

const demo = readPlan(DEMO);
const link = linkOfPlan(demo).fragment;

/** A link that is whole in itself, of any document. */
function linkOf(document: Json): string {
  const coded = packed(document);
  if (!coded) throw new Error('too large');
  return `1${toBase64url(enclosed(coded))}`;
}

function faultOf(fragment: string): { readonly kind: LinkFault; readonly sentence: string } {
  const read = planOfLink(fragment);
  if (read.ok) throw new Error('this link was read');
  return read;
}

describe('a plan as a link', () => {
  test('comes back as it was, with the sign before it or without, and with breaks of lines in it', () => {
    const wrapped = link.replace(/.{60}/g, '$&\r\n');
    for (const text of [link, `#${link}`, wrapped]) {
      const read = planOfLink(text);
      if (!read.ok) throw new Error(read.sentence);
      expect(read.plan).toEqual(demo);
      expect(serialisePlan(read.plan)).toBe(serialisePlan(demo));
    }
  });

  test('is as short as one code of squares takes, with its address', () => {
    expect(`https://standclear.example/#${link}`.length).toBeLessThan(2953);
    expect(link).toMatch(/^1[A-Za-z0-9_-]+$/);
  });

  test('is the same for the same plan, whatever was coded between', () => {
    linkOfPlan(planFrom(readPlan('tests/plans/paper.plan.json')));
    expect(linkOfPlan(structuredClone(demo)).fragment).toBe(link);
  });

  test('says which files it leaves out', () => {
    const underlay: Plan['underlay'] = {
      asset: { sha256: 'a'.repeat(64), name: 'roof "from" above.jpg', bytes: 5 },
      pixels: [10, 10],
      at: [0, 0],
      headingDegrees: 0,
      metresPerPixel: 0.01,
      strength: 0.5,
    };
    expect(linkOfPlan(demo).leftOut).toEqual([]);
    const { fragment, leftOut } = linkOfPlan({ ...demo, underlay });
    expect(leftOut).toHaveLength(1);
    expect(leftOut[0]).toContain('“roof "from" above.jpg” under the overhead');
    expect(planOfLink(fragment)).toMatchObject({ ok: true, leftOut });
  });

  test('keeps what no keyboard types: halves of pairs, control characters, names of prototypes', () => {
    const notes =
      '\u0000\ud800 \udc00\ud83d\ude00\u202e__proto__ constructor <script>alert(1)</script>\u00ff\uffff';
    const read = planOfLink(linkOfPlan({ ...demo, notes, title: 'constructor' }).fragment);
    expect(read).toMatchObject({ ok: true, plan: { notes, title: 'constructor' } });
  });

  test('refuses what is larger than a link may be', () => {
    const reason = 'x'.repeat(200);
    const gear = Array.from({ length: 4000 }, (_, k): Plan['gear'][number] => ({
      id: `bag-${k}`,
      label: `Bag ${k}`,
      kind: 'sandbag',
      at: [k / 7, 0, k / 11],
      headingDegrees: 0,
      kilograms: 10,
      shows: demo.setups.slice(0, 3).map(({ id }) => ({ setup: id, reason })),
    }));
    expect(() => linkOfPlan({ ...demo, gear })).toThrow(LinkTooLarge);
    const { message, sentence } = new LinkTooLarge();
    expect([message, sentence]).toEqual([sentence, expect.stringMatching(/Hand it over as a file\.$/)]);
  });
});

describe('a link that gives no plan says what to do', () => {
  const flipped = (at: number): string =>
    `${link.slice(0, at)}${link[at] === 'A' ? 'B' : 'A'}${link.slice(at + 1)}`;

  test.each<[string, string, LinkFault]>([
    ['nothing', '', 'empty'],
    ['the sign alone', '#', 'empty'],
    ['its version alone', '1', 'cut'],
    ['a length of nothing, and no sum', '1AA', 'cut'],
    ['a link cut short', link.slice(0, 900), 'cut'],
    ['a link without its last four letters', link.slice(0, -4), 'cut'],
    ['a link with another letter in it', flipped(700), 'altered'],
    ['a link with letters behind it', `${link}AAAA`, 'altered'],
    ['a link with a sign that none has', link.replace(/.$/, '%'), 'altered'],
    ['a link of a newer page', `2${link.slice(1)}`, 'newer'],
    ['text', 'Ask at the door', 'altered'],
    ['endless letters', '1'.repeat(LONGEST_FRAGMENT + 1), 'tooLarge'],
    ['a document of another kind', linkOf({ hello: ['world'] }), 'notAPlan'],
    ['a number', linkOf(5), 'notAPlan'],
    [
      'keys of prototypes',
      linkOf(JSON.parse('{"__proto__":{"standclear":1},"constructor":{"x":1}}')),
      'notAPlan',
    ],
  ])('%s', (_, fragment, kind) => {
    const fault = faultOf(fragment);
    expect(fault.kind).toBe(kind);
    expect(fault.sentence).toMatch(/^This [^\n!]+\.$/);
    expect(fault.sentence).toMatch(/Ask for|Load this page/);
    expect({}).not.toHaveProperty('standclear');
  });

  test('nesting without end, endless text and endless work are stopped, while writing and while reading', () => {
    const nested = (levels: number): Json => (levels > 0 ? [nested(levels - 1)] : 1);
    expect(faultOf(linkOf(nested(30))).kind).toBe('notAPlan');
    expect(packed(nested(60))).toBeNull();
    const long: Json = Array.from({ length: 400 }, () => 12.5);
    const coded = packed(long);
    if (!coded) throw new Error('too large');
    expect(coded.length).toBeLessThan(40);
    for (const tight of [{ characters: 500 }, { decisions: 2000 }]) {
      const limits = { ...LIMITS, ...tight };
      expect(packed(long, limits)).toBeNull();
      expect(unpacked(coded, limits)).toEqual({ ok: false, kind: 'tooLarge' });
    }
    expect(unpacked(coded)).toEqual({ ok: true, text: JSON.stringify(long) });
  });

  test('a document that says more than its bytes hold is stopped where they end', () => {
    const coded = packed(JSON.parse(serialisePlan(demo)));
    if (!coded) throw new Error('too large');
    expect(unpacked(coded.slice(0, coded.length / 2))).toEqual({ ok: false, kind: 'altered' });
  });

  test('a document that was coded otherwise than it is read is noticed, though its bytes are whole', () => {
    const coded = packed(JSON.parse(serialisePlan(demo)));
    if (!coded) throw new Error('too large');
    coded[coded.length >> 1] ^= 1;
    expect(faultOf(`1${toBase64url(enclosed(coded))}`).kind).toBe('altered');
  });
});

test('every link, and nothing else that may stand behind an address, is taken for one', () => {
  for (const hash of [link, `#${link}`, '#2abc', '1']) expect(isLinkFragment(hash), hash).toBe(true);
  for (const hash of ['', '#', '#setup', '#0', '#-1', 'plan']) expect(isLinkFragment(hash), hash).toBe(false);
});
