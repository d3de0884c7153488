import { parse } from 'parse5';
import { expect, test } from 'vitest';
import { nightOf } from '../../../../src/core/night/nightOf';
import { packingOf } from '../../../../src/core/night/packing/packingOf';
import { parsePlanText } from '../../../../src/core/plan/parse';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { serialisePlan } from '../../../../src/core/plan/serialise';
import { assembleReport } from '../../../../src/core/report/report';
import { fingerprintOf } from '../../../../src/exchange/fingerprint';
import { type CrewFileInput, crewFileOf } from '../../../../src/exchange/html/crewFile';
import { planTextIn } from '../../../../src/exchange/html/planInFile';
import { packLinkOf } from '../../../../src/exchange/pdf/link/packLink';
import { standingOf } from '../../../../src/exchange/pdf/standing';
import { EVEN_NIGHT, nightRoof } from '../../../plans/nightRoof';
import { readCode } from '../readCode';

const PAGE = 'https://standclear.example/';

/** All of a crew sheet but what lenses see. */
function inputOf(plan: Plan): CrewFileInput {
  const night = nightOf(plan);
  return {
    plan,
    report: assembleReport(plan, []),
    night,
    packing: packingOf(plan, night),
    standing: standingOf(plan, 'm'),
    link: packLinkOf(plan, PAGE),
    fingerprint: fingerprintOf(plan),
    lengths: 'm',
  };
}

/** Faults that a reader by the standard finds in it. */
function faultsOf(file: string): readonly string[] {
  const faults: string[] = [];
  parse(file, {
    onParseError: ({ code, startLine, startCol }) => faults.push(`${code} ${startLine}:${startCol}`),
  });
  return faults;
}

const roof = nightRoof(EVEN_NIGHT);
const input = inputOf(roof);
const file = crewFileOf(input);

test('it is HTML without a fault, and the same plan gives the same text', () => {
  expect(faultsOf(file)).toEqual([]);
  expect(crewFileOf(inputOf(nightRoof(EVEN_NIGHT)))).toBe(file);
});

test('nothing in it runs or is fetched: no script but data, no address but the link and its own parts', () => {
  expect(file.match(/<script[^>]*>/g)).toEqual(['<script type="application/json" id="plan">']);
  const addresses = [...file.matchAll(/(?:href|src|action)="([^"]*)"/g)].map(([, address]) => address);
  for (const address of addresses)
    expect(address === input.link?.address || /^#[a-z]+$/.test(address)).toBe(true);
  const isHeldTo = file
    .replaceAll('&#39;', "'")
    .includes("default-src 'none'; img-src data:; style-src 'unsafe-inline'");
  expect(isHeldTo).toBe(true);
  expect(/ on[a-z]+=|url\((?!#)|@import/.test(file)).toBe(false);
});

test('it has every setup, everything that is set by tapes with both of them, and all that is packed', () => {
  const text = file.replaceAll('&#39;', "'").replaceAll('\u00a0', ' ');
  for (const { label } of roof.setups) expect(text).toContain(label);
  expect(input.standing.length).toBeGreaterThan(2);
  for (const { label, places } of input.standing) {
    expect(text).toContain(label);
    for (const { tapes } of places)
      for (const tape of tapes) expect(text).toContain(tape.replaceAll('\u00a0', ' '));
  }
  for (const { label } of input.packing) expect(text).toContain(label);
});

test('its code is the link, as another reader reads it', () => {
  const path = /<path d="([^"]*)" fill="#000"\/>/.exec(file)?.[1] ?? '';
  const size = Number(/<svg class="code" viewBox="-4 -4 (\d+)/.exec(file)?.[1]) - 8;
  const dark = new Set<string>();
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let k = 0; k < Number(length); k += 1) dark.add(`${Number(x) + k} ${y}`);
  expect(readCode(size, (x, y) => dark.has(`${x} ${y}`))).toBe(input.link?.address);
});

test('the plan is read back out of it as it was', () => {
  const read = parsePlanText(planTextIn(file) ?? '');
  expect(read.ok && serialisePlan(read.value)).toBe(serialisePlan(roof));
  expect(planTextIn('<!doctype html><p>Something else')).toBeNull();
  expect(planTextIn(file.slice(0, file.indexOf('</script>')))).toBeNull();
});

test('names that would be markup stay text, in the page and in the data of the plan', () => {
  const hostile = '</script><img src=x onerror="alert(1)"><!--';
  const plan: Plan = {
    ...roof,
    title: hostile,
    notes: `${hostile}\n]]>&lt;`,
    place: { ...roof.place, label: "' onload='alert(1)" },
    gear: roof.gear.map((each) => ({ ...each, label: hostile })),
    setups: roof.setups.map((each) => ({ ...each, label: `"><script>alert(1)</script>` })),
  };
  const own = crewFileOf({
    ...inputOf(plan),
    pictures: new Map([[plan.setups[0].id, 'data:text/html,<b>']]),
  });
  expect(faultsOf(own)).toEqual([]);
  expect(own.match(/<script[^>]*>/g)).toEqual(['<script type="application/json" id="plan">']);
  expect(own).not.toContain('<img');
  expect(own).not.toContain('data:text/html');
  const read = parsePlanText(planTextIn(own) ?? '');
  expect(read.ok && read.value.title).toBe(hostile);
});

test('without a link, setups or things it is a crew sheet all the same', () => {
  const bare = {
    ...roof,
    pieces: [],
    cast: [],
    gear: [],
    setups: [],
    beats: [],
    probes: [],
    night: undefined,
  };
  const own = crewFileOf({ ...inputOf(bare), link: null });
  expect(faultsOf(own)).toEqual([]);
  expect(own).toContain('This plan has no setups.');
});
