import { PNG } from 'pngjs';
import { beforeAll, expect, test } from 'vitest';
import { DECIDES } from '../../../../src/core/cautions/caution';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { setupLetter } from '../../../../src/core/plan/setupLetter';
import { reportOf } from '../../../../src/core/report/report';
import { findingSentence } from '../../../../src/core/report/sentences';
import { SOURCES } from '../../../../src/core/sources';
import { formatLight } from '../../../../src/core/units/illuminance';
import { inOneGo } from '../../../../src/core/units/steps';
import { packPdf } from '../../../../src/exchange/pdf/pack';
import { packInputSteps } from '../../../../src/exchange/pdf/packInput';
import type { PaperName } from '../../../../src/exchange/pdf/paper';
import type { PackInput } from '../../../../src/exchange/pdf/types';
import { EVEN_NIGHT, nightRoof } from '../../../plans/nightRoof';
import { cable, generator, lamp, wired } from '../../../plans/wired';
import { asRead, type ReadPdf, readPdf } from './readPdf';

const inputOf = (plan: Plan, paper: PaperName = 'a4'): PackInput =>
  inOneGo(packInputSteps(plan, reportOf(plan), { paper }));

let input: PackInput;
let bytes: Uint8Array;
let read: ReadPdf;
/** The page whose foot says that it is of a part. */
const part = (name: string): string =>
  read.pages
    .filter(({ text }) => text.includes(` ${name} Page `))
    .map(({ text }) => text)
    .join(' ');

// A whole report and its pages: more than a hook is given where others work beside it.
beforeAll(async () => {
  input = inputOf(nightRoof(EVEN_NIGHT));
  ({ bytes } = await packPdf(input));
  read = await readPdf(bytes);
}, 300_000);

test('every page has the title, its number of how many, and the date of the plan', () => {
  const { title, place } = input.plan;
  expect(read.pages.length).toBeGreaterThanOrEqual(10);
  read.pages.forEach(({ text }, index) => {
    expect(text).toContain(title);
    expect(text).toContain(place.date);
    expect(text).toContain(`Page ${index + 1} of ${read.pages.length}`);
  });
  expect(read.title).toBe(title);
  expect(read.created).toMatch(/^D:20261120000000/);
});

test('the cover has each setup with its letter, lens, stop and support, and the page where it is', () => {
  const cover = part('Cover');
  for (const [place, setup] of input.plan.setups.entries()) {
    const lens = input.plan.kit.lenses.find(({ id }) => id === setup.lens);
    expect(cover).toContain(`${setupLetter(place)} ${setup.label}`);
    expect(cover).toContain(lens?.label);
    expect(cover).toContain(setup.support);
  }
  const pages = input.plan.setups.map(
    (_, place) => read.pages.findIndex(({ text }) => text.includes(` Setup ${setupLetter(place)} Page `)) + 1,
  );
  // Page numbers are set when all pages are there, just before the head and foot.
  expect(cover).toContain(`${pages.join(' ')} Small roof 2026-11-20 Cover Page 1 of`);
  expect(cover).toContain(DECIDES);
});

test('the page of a setup has its readings, and its findings in the words of the report', () => {
  for (const [place, setup] of input.report.setups.entries()) {
    const text = part(`Setup ${setupLetter(place)}`);
    expect(text).toMatch(/lens height [\d.]+ m, tilt [−+\d.]+°/);
    for (const item of setup.items.filter(
      ({ wish, verdict }) => wish === 'keep out' && verdict !== 'clear',
    )) {
      const { name, text: said, colon } = findingSentence(item, setup, 'm');
      expect(text).toContain(asRead(`${name}${colon ? ':' : ''} ${said}`));
    }
  }
});

test('what is accepted comes with its reason', async () => {
  const { report } = input;
  const seen = report.setups[0].items.find(
    ({ wish, verdict }) => wish === 'keep out' && verdict === 'showing',
  );
  expect(seen).toBeDefined();
  const setups = report.setups.map((setup) => ({
    ...setup,
    items: setup.items.map((item) =>
      item.id === seen?.id ? { ...item, accepted: { reason: 'It is a prop.' } } : item,
    ),
  }));
  const { pages } = await readPdf((await packPdf({ ...input, report: { ...report, setups } })).bytes);
  expect(pages.map(({ text }) => text).join(' ')).toContain('It may show: It is a prop.');
});

test('no legend goes over the edge of its page', () => {
  const words = 'set gear cable edge of a frame way of a camera camera performer';
  expect(part('Overhead')).toContain(words);
  expect(part('Clear ground')).toContain('clear close covered mirrored showing');
});

test('the overhead names every stand, and its deck is as large as its scale says', () => {
  const text = part('Overhead');
  for (const { kind, label } of input.plan.gear)
    if (kind !== 'cable' && kind !== 'sandbag') expect(text).toContain(label);
  const scale = Number(/Overhead, 1:(\d+)/.exec(text)?.[1]);
  expect(text).toContain(`Scale 1:${scale}`);
  const deck = input.plan.pieces.find((piece) => piece.kind === 'deck');
  const outline = deck && 'outline' in deck ? deck.outline : [];
  const across = (axis: 0 | 1): number =>
    Math.max(...outline.map((spot) => spot[axis])) - Math.min(...outline.map((spot) => spot[axis]));
  // 72 points an inch, 0.0254 m an inch.
  const points = (metres: number): number => (metres / scale / 0.0254) * 72;
  const page = read.pages.find((each) => each.text.includes('Overhead, 1:'));
  const sizes = page?.paths.map(([left, bottom, right, top]) => [right - left, top - bottom]) ?? [];
  const matching = sizes.filter(
    ([width, height]) =>
      Math.abs(width - points(across(0))) < 0.01 && Math.abs(height - points(across(1))) < 0.01,
  );
  expect(matching).not.toEqual([]);
});

test('clear ground, light, power, the night, the list and the cautions are in it', () => {
  expect(part('Clear ground')).toMatch(/\d+ % of .* stays clear of A, B, C for a stand of 2\.4 m\./);
  const light = part('Light');
  for (const { light: own } of input.report.setups) {
    expect(light).toContain(asRead(`The stop asks for ${formatLight(own.askedLux, 'lx')} on a face.`));
    for (const { key, isShown } of own.levels.flatMap(({ faces }) => faces))
      if (isShown && key) expect(light).toContain(asRead(formatLight(key.lux, 'lx')));
  }
  expect(part('Power')).toContain(`${input.report.power.mainsVolts} V`);
  for (const { sentence } of input.report.power.sentences) expect(part('Power')).toContain(asRead(sentence));
  expect(part('Order of the night')).toContain('Call 18:00');
  for (const { label } of input.packing) expect(part('Packing')).toContain(asRead(label));
  expect(input.report.cautions.length).toBeGreaterThan(0);
  for (const { sentence } of input.report.cautions) expect(part('Cautions')).toContain(asRead(sentence));
  expect(part('Cautions')).toContain(DECIDES);
  const [first] = input.report.cautions.filter(({ sources }) => sources.length > 0);
  const { title, where } = SOURCES[first.sources[0]];
  // Numbered as they are first named, and listed once.
  expect(part('Cautions')).toContain(asRead(`${first.sentence} Source`));
  expect(part('Cautions').split(asRead(`1. ${title} (${where})`))).toHaveLength(2);
});

test('circuits have their number, breaker, amperes and all that hangs on them', async () => {
  const loads = ['north', 'east', 'south', 'west'];
  const plan = wired([
    generator('Putter'),
    ...loads.flatMap((id) => [lamp(id), cable(`to-${id}`, 'Putter', id)]),
  ]);
  const { pages } = await readPdf((await packPdf(inputOf(plan))).bytes);
  const power = pages.find(({ text }) => text.includes(' Power Page '))?.text;
  // 4 × 350 W at 120 V with a power factor of 0.95: 12.3 A, of the 24 A that a breaker of 30 A may carry for long.
  expect(power).toMatch(/Putter 1 30(\.0)? A 1 12\.3 A 51 % north; east; south; west/);
});

test('the same plan gives the same bytes', async () => {
  const again = await packPdf(inputOf(nightRoof(EVEN_NIGHT)));
  expect(Buffer.from(again.bytes).equals(Buffer.from(bytes))).toBe(true);
});

test('pages are A4, or letter, upright or lying', async () => {
  const sizes = ({ pages }: ReadPdf): string[] => [
    ...new Set(
      pages.map(({ width, height }) =>
        [width, height]
          .map((side) => side.toFixed(1))
          .toSorted()
          .join(' by '),
      ),
    ),
  ];
  expect(sizes(read)).toEqual(['595.3 by 841.9']);
  const letter = await packPdf({ ...input, paper: 'letter' });
  expect(sizes(await readPdf(letter.bytes))).toEqual(['612.0 by 792.0']);
});

test('Greek and Cyrillic are printed, and what no font has is said', async () => {
  const named = (title: string): PackInput => ({ ...input, plan: { ...input.plan, title } });
  const both = await packPdf(named('Ταράτσα, Крыша, Dachstühle'));
  expect(both.notes).toEqual([]);
  const [cover] = (await readPdf(both.bytes)).pages;
  expect(cover.text.replaceAll(' ', '')).toContain('Ταράτσα,Крыша,Dachstühle');
  const far = await packPdf(named('屋上 and גג'));
  expect(far.notes).toEqual([
    '3 letters are in no font of the pack and printed as a question mark: U+05D2, U+4E0A, U+5C4B.',
  ]);
  const [said] = (await readPdf(far.bytes)).pages;
  expect(said.text).toContain('?? and ??');
  expect(said.text).toContain('U+5C4B');
});

test('a row that no page holds goes on over the next', async () => {
  const words = Array.from({ length: 3000 }, (_, k) => `bag${k}`);
  const [line] = input.packing;
  const packing = [{ ...line, label: 'Bags', detail: words.join(' ') }, ...input.packing];
  const { pages } = await readPdf((await packPdf({ ...input, packing })).bytes);
  const own = pages.filter(({ text }) => text.includes(' Packing Page '));
  expect(own.length).toBeGreaterThan(3);
  const found = own.flatMap(({ text }) => text.match(/bag\d+/g) ?? []);
  expect(found).toEqual(words);
  for (const { text } of own.slice(0, -1)) expect(text).toContain('amount what spare in it for');
});

test('lengths are in feet and inches, and light in footcandles, where they are asked for', async () => {
  const pack = await packPdf({ ...input, lengths: 'ft-in' });
  expect(pack.notes).toEqual([]);
  const { pages } = await readPdf(pack.bytes);
  const text = pages.map((page) => page.text).join(' ');
  // 1.60 m over the deck is 62.99 in.
  expect(text).toMatch(/lens height 5′ 3″, tilt/);
  expect(text).toMatch(/The stop asks for [\d.,]+ fc on a face\./);
});

test('a title as long as it may be stays off the date', async () => {
  const title = 'W'.repeat(80);
  const { pages } = await readPdf((await packPdf({ ...input, plan: { ...input.plan, title } })).bytes);
  for (const { text } of pages) expect(text).toMatch(/W … 2026-11-20/);
});

test('a picture of a setup is put on its page', async () => {
  const png = new PNG({ width: 24, height: 10 });
  png.data.fill(200);
  const still = new Uint8Array(PNG.sync.write(png));
  const withStill = await packPdf({ ...input, stills: new Map([[input.plan.setups[0].id, still]]) });
  expect(withStill.pages).toBe(read.pages.length);
  expect(Buffer.from(withStill.bytes).includes('/Subtype /Image')).toBe(true);
  expect(Buffer.from(bytes).includes('/Subtype /Image')).toBe(false);
});

test('a plan with nothing in it has a pack all the same', async () => {
  const { plan } = input;
  const bare = { ...plan, pieces: [], cast: [], gear: [], setups: [], beats: [], probes: [] };
  const parsed = parsePlan({ ...bare, night: undefined });
  const empty = parsed.ok ? parsed.value : bare;
  const { pages } = await readPdf((await packPdf(inputOf(empty))).bytes);
  expect(pages[0].text).toContain('This plan has no setups.');
  expect(pages.some(({ text }) => text.includes('No setup was named'))).toBe(true);
});

test('of a zoom the length that it stands at is told, on the cover and with its setup', async () => {
  const { plan } = input;
  const [first, ...others] = plan.setups;
  const lenses = plan.kit.lenses.map((lens) =>
    lens.id === first.lens ? { ...lens, focalMm: 24, longestMm: 90 } : lens,
  );
  const keys = first.move.keys.map((key) => ({ ...key, focalMm: 61.5 }));
  const zoomed = {
    ...plan,
    kit: { ...plan.kit, lenses },
    setups: [{ ...first, move: { ...first.move, keys }, ndStops: 1 }, ...others],
  };
  const { pages } = await readPdf((await packPdf({ ...input, plan: zoomed })).bytes);
  const label = lenses.find(({ id }) => id === first.lens)?.label ?? '';
  const texts = pages.map(({ text }) => text.replaceAll('\u00a0', ' '));
  expect(texts[0]).toContain('61.5 mm');
  expect(texts.find((text) => text.includes(`${label}: 61.5 mm`))).toContain('ND 1.0 stop,');
});
