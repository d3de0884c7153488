import { expect, test, vi } from 'vitest';
import { assembleReport } from '../../../../src/core/report/report';
import { inOneGo } from '../../../../src/core/units/steps';
import { crewFileOf } from '../../../../src/exchange/html/crewFile';
import { LinkTooLarge } from '../../../../src/exchange/link/link';
import { packPdf } from '../../../../src/exchange/pdf/pack';
import { packInputSteps } from '../../../../src/exchange/pdf/packInput';
import { EVEN_NIGHT, nightRoof } from '../../../plans/nightRoof';
import { readPdf } from './readPdf';

// A plan that really is too large takes long to set out.
vi.mock('../../../../src/exchange/link/link', async (original) => {
  const link = await original<typeof import('../../../../src/exchange/link/link')>();
  return {
    ...link,
    linkOfPlan: () => {
      throw new link.LinkTooLarge();
    },
  };
});

test('a plan that is too large for a link gets its pack and its crew file, which say so', async () => {
  const plan = { ...nightRoof(EVEN_NIGHT), setups: [], night: undefined };
  const input = inOneGo(
    packInputSteps(plan, assembleReport(plan, []), { paper: 'a4', address: 'https://standclear.example/' }),
  );
  const { message } = new LinkTooLarge();
  expect(message).toMatch(/larger than a link may be/);
  expect(input.link).toBeNull();
  expect(crewFileOf(input)).toContain(message);
  const { pages } = await readPdf((await packPdf(input)).bytes);
  expect(pages[0].text).toContain(message);
});
