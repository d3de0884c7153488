import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { anchorsOf } from '../../../src/core/form/tape/anchors';
import { nightOf } from '../../../src/core/night/nightOf';
import { packingOf } from '../../../src/core/night/packing/packingOf';
import { parsePlanText } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupLetter } from '../../../src/core/plan/setupLetter';
import { assembleReport } from '../../../src/core/report/report';
import { fingerprintOf } from '../../../src/exchange/fingerprint';
import { packPdf } from '../../../src/exchange/pdf/pack';
import { standingOf } from '../../../src/exchange/pdf/standing';
import { HOUSE } from '../../../src/workshop/house.mjs';
import { asRead, readPdf } from '../../unit/exchange/pdf/readPdf';

/** The demo plan. */
function demo(): Plan {
  const read = parsePlanText(readFileSync(join(HOUSE, 'assets/loft-night.plan.json'), 'utf8'));
  if (!read.ok) throw new Error('the demo is no plan');
  return read.value;
}

const plan = demo();
const folder = mkdtempSync(join(tmpdir(), 'standclear-'));
const file = join(folder, 'pack.pdf');
let bytes: Uint8Array;

beforeAll(async () => {
  const night = nightOf(plan);
  ({ bytes } = await packPdf({
    plan,
    report: assembleReport(plan, []),
    night,
    packing: packingOf(plan, night),
    ground: { why: 'Not asked for.' },
    standing: standingOf(plan, 'm'),
    link: null,
    fingerprint: fingerprintOf(plan),
    paper: 'a4',
    lengths: 'm',
  }));
  writeFileSync(file, bytes);
}, 300_000);
afterAll(() => rmSync(folder, { recursive: true }));

/** Pages whose foot says that they are of a part, as one text. */
const part = (pages: readonly string[], name: string): string =>
  pages.filter((text) => new RegExp(` ${name} Page \\d`).test(text)).join(' ');

/** The lens on the page of each setup; by the place where each stands, both distances from the corners that are named. */
function holdsLensesAndTapes(pages: readonly string[]): void {
  expect(plan.setups.length).toBeGreaterThan(5);
  for (const [place, { lens }] of plan.setups.entries()) {
    const label = plan.kit.lenses.find(({ id }) => id === lens)?.label ?? 'no such lens';
    expect(part(pages, `Setup ${setupLetter(place)}`)).toContain(asRead(label));
  }

  const text = part(pages, 'Where things stand');
  // The longest first: no other corner's name is the beginning of one that is found.
  const corners = anchorsOf(plan).toSorted((one, other) => other.label.length - one.label.length);
  const stands = plan.gear.flatMap((each) => (each.kind === 'stand' ? [each] : []));
  expect(stands.length).toBeGreaterThan(5);
  for (const { label, at } of stands) {
    const row = text.slice(text.indexOf(asRead(label)));
    const tapes = [...row.matchAll(/(\d+\.\d\d) m from /g)].slice(0, 2).map((match) => {
      const named = row.slice(match.index + match[0].length);
      const corner = corners.find((each) => named.startsWith(asRead(each.label)));
      return { metres: Number(match[1]), corner };
    });
    expect(tapes, label).toHaveLength(2);
    expect(tapes[0].corner, label).not.toBe(tapes[1].corner);
    for (const { metres, corner } of tapes) {
      const [x, z] = corner?.at ?? [Number.NaN, Number.NaN];
      // As printed, to a centimetre.
      expect(Math.abs(metres - Math.hypot(at[0] - x, at[2] - z)), label).toBeLessThan(0.005_001);
    }
  }
}

/** Whether a program is not on this machine. */
const lacking = (program: string): boolean => spawnSync(program, ['--version']).error !== undefined;

test('the pack of the demo holds every lens and every two tapes, as pdf.js reads it', async () => {
  const { pages } = await readPdf(bytes);
  holdsLensesAndTapes(pages.map(({ text }) => asRead(text)));
});

test('so it does as pdftotext reads it, a program of its own', (context) => {
  context.skip(lacking('pdftotext'), 'pdftotext is not on this machine: it comes with poppler-utils');
  const text = execFileSync('pdftotext', ['-raw', '-enc', 'UTF-8', file, '-'], { encoding: 'utf8' });
  holdsLensesAndTapes(text.split('\f').map(asRead));
});

test('qpdf finds no fault in the file', (context) => {
  context.skip(lacking('qpdf'), 'qpdf is not on this machine');
  const { status, stdout, stderr } = spawnSync('qpdf', ['--check', file], { encoding: 'utf8' });
  expect([status, stderr]).toEqual([0, '']);
  expect(stdout).toContain('No syntax or stream encoding errors found');
});

test('pdffonts finds every font in the file', (context) => {
  context.skip(lacking('pdffonts'), 'pdffonts is not on this machine: it comes with poppler-utils');
  const [, , ...rows] = execFileSync('pdffonts', [file], { encoding: 'utf8' }).trim().split('\n');
  expect(rows.length).toBeGreaterThanOrEqual(2);
  // emb, sub, uni, then the object and its generation.
  for (const row of rows) expect(row).toMatch(/ yes +(yes|no) +(yes|no) +\d+ +\d+$/);
});
