import { join } from 'node:path';
import { build, type Rolldown } from 'vite';
import { expect, test } from 'vitest';
import { parsePlanText } from '../../src/core/plan/parse';
import { reportOf } from '../../src/core/report/report';
import { HOUSE } from '../../src/workshop/house.mjs';
import { CROWDED, DEMO, PAPER, textOf } from '../plans/readPlan';
import { handful } from '../thorough';
import { smallRoofDocument } from '../unit/smallRoof';
import { openPage } from './harness';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

/** The core's own modules as one script that a page or a worker can run: nothing of the desk around it. */
async function coreAsScript(): Promise<string> {
  const entry = `
    import { parsePlanText } from '${join(HOUSE, 'src/core/plan/parse')}';
    import { reportOf } from '${join(HOUSE, 'src/core/report/report')}';
    globalThis.bytesOf = (text, options) => {
      const plan = parsePlanText(text);
      if (!plan.ok) throw new Error(plan.faults[0].sentence);
      return JSON.stringify(reportOf(plan.value, options));
    };
  `;
  const name = 'virtual:core';
  const result = (await build({
    root: HOUSE,
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    plugins: [
      {
        name: 'entry',
        resolveId: (id) => (id === name ? `\0${name}` : null),
        load: (id) => (id === `\0${name}` ? entry : null),
      },
    ],
    build: { write: false, minify: false, rollupOptions: { input: name, output: { format: 'iife' } } },
  })) as Rolldown.RolldownOutput;
  return result.output[0].code;
}

/** Some of the crowd's twenty setups: each asks the same of the engine. */
function someOfTheCrowd(): string {
  const document = JSON.parse(textOf(CROWDED)) as { setups: readonly unknown[] };
  return JSON.stringify({ ...document, setups: document.setups.slice(0, handful(6)) });
}

const CASES: readonly { readonly name: string; readonly text: string; readonly options: object }[] = [
  { name: 'a small roof, whole spans', text: JSON.stringify(smallRoofDocument(0.5)), options: {} },
  { name: 'the plan on paper', text: textOf(PAPER), options: {} },
  { name: 'the demo at one instant', text: textOf(DEMO), options: { at: 20 } },
  { name: 'some setups of the crowd at one instant', text: someOfTheCrowd(), options: { at: 2.5 } },
];

function bytesHere(text: string, options: object): string {
  const plan = parsePlanText(text);
  if (!plan.ok) throw new Error(plan.faults[0].sentence);
  return JSON.stringify(reportOf(plan.value, options));
}

/** A crowd's light takes some six seconds in each of the three places, and more beside others. */
const PATIENCE_MS = 600_000;

test(
  'the report has the same bytes in Node, in the page and in a worker of the page',
  async () => {
    const page = await openPage({
      width: 800,
      height: 600,
      before: [withoutPicture, withoutDemo],
      withoutPolicy: true,
    });
    const script = await coreAsScript();
    await page.addScriptTag({ content: script });
    for (const { name, text, options } of CASES) {
      const here = bytesHere(text, options);
      // The worker is set going before the page is kept busy.
      const inWorker = page.evaluate(
        ({ script, text, options }) =>
          new Promise<string>((resolve, reject) => {
            const source = `${script}\nonmessage = ({data}) => postMessage(bytesOf(data.text, data.options));`;
            const worker = new Worker(URL.createObjectURL(new Blob([source], { type: 'text/javascript' })));
            worker.onmessage = ({ data }) => {
              worker.terminate();
              resolve(data as string);
            };
            worker.onerror = ({ message }) => reject(new Error(message));
            worker.postMessage({ text, options });
          }),
        { script, text, options },
      );
      const there = page.evaluate(
        ({ text, options }) =>
          (globalThis as unknown as { bytesOf: (text: string, options: object) => string }).bytesOf(
            text,
            options,
          ),
        { text, options },
      );
      expect((await there) === here, `${name}, in the page`).toBe(true);
      expect((await inWorker) === here, `${name}, in a worker`).toBe(true);
      expect(here.length, name).toBeGreaterThan(1000);
    }
  },
  PATIENCE_MS,
);
