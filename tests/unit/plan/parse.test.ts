import { describe, expect, test } from 'vitest';
import { parsePlan, parsePlanText } from '../../../src/core/plan/parse';
import { PAPER, readPlan, textOf } from '../../plans/readPlan';

const text = textOf(PAPER);

/** The sentences of a text that should not be read as a plan. */
function sentencesOf(broken: string): string[] {
  const parsed = parsePlanText(broken);
  return parsed.ok ? [] : parsed.faults.map(({ sentence }) => sentence);
}

/** The plan's text with one passage put in the place of another, which has to be there. */
function swapped(passage: string, by: string): string {
  expect(text).toContain(passage);
  return text.replace(passage, by);
}

const POST = 'pieces[13].heightMetres of "Post behind the fence"';
const KINDS =
  'a kind of set piece: deck, parapet, wall, fence, stair house, shed, tank, post, line, chimney, box, riser, pane, chart, skyline block or model';

describe('a field', () => {
  test.each([
    [
      'unknown at the top',
      '"title"',
      '"colour": 1,\n"title"',
      'colour: found a field that a plan does not have, expected it to be left out.',
    ],
    [
      'unknown in a set piece',
      '"id": "middle"',
      '"id": "middle", "colour": {"label": "red"}',
      'pieces[1].colour of "In the middle": found a field that a plan does not have, expected it to be left out.',
    ],
    [
      'named __proto__, which would change what other fields say',
      '"id": "middle"',
      '"id": "middle", "__proto__": {"label": "other"}',
      'pieces[1].__proto__ of "In the middle": found a field that a plan does not have, expected it to be left out.',
    ],
    [
      'named __proto__ at the top',
      '{',
      '{"__proto__": {"title": "other"},',
      '__proto__: found a field that a plan does not have, expected it to be left out.',
    ],
    [
      'whose name breaks the line and goes on and on',
      '"id": "middle"',
      `"id": "middle", "col\u2028\u202eour${'r'.repeat(90)}": 1`,
      `pieces[1].col\\u2028\\u202eour${'r'.repeat(72)}… of "In the middle": found a field that a plan does not have, expected it to be left out.`,
    ],
    [
      'named constructor',
      '"id": "middle"',
      '"id": "middle", "constructor": 1',
      'pieces[1].constructor of "In the middle": found a field that a plan does not have, expected it to be left out.',
    ],
    ['missing at the top', '"notes"', '"noted"', 'notes: found nothing, expected this field to be there.'],
    [
      'missing in a set piece',
      '"armMetres": 0',
      '"arm": 0',
      'pieces[13].armMetres of "Post behind the fence": found nothing, expected this field to be there.',
    ],
    [
      'missing that tells the kind',
      '"kind": "post",',
      '',
      `pieces[13].kind of "Post behind the fence": found nothing, expected ${KINDS}.`,
    ],
    [
      'of no known kind',
      '"kind": "post"',
      '"kind": "gazebo"',
      `pieces[13].kind of "Post behind the fence": found "gazebo", expected ${KINDS}.`,
    ],
    [
      'of the wrong type',
      '"closed": false',
      '"closed": "no"',
      'pieces[12].closed of "Fence": found "no", expected true or false.',
    ],
    [
      'that is no choice',
      '"material": "concrete"',
      '"material": "gold"',
      'pieces[1].material of "In the middle": found "gold", expected brick, render, timber, metal or concrete.',
    ],
    [
      'with no name in it',
      '"label": "Fence"',
      '"label": ""',
      'pieces[12].label: found "", expected a name of at least one character.',
    ],
  ])('%s', (_, passage, by, sentence) => {
    expect(sentencesOf(swapped(passage, by))).toContain(sentence);
  });

  test('that is unknown is the only thing wrong', () => {
    expect(sentencesOf(swapped('"id": "middle"', '"id": "middle", "colour": 1'))).toHaveLength(1);
  });
});

describe('a number', () => {
  test.each([
    ['1e999', 'found Infinity, expected a finite number.'],
    ['-1e999', 'found -Infinity, expected a finite number.'],
    ['null', 'found null, expected a number of metres.'],
    ['"0.8"', 'found "0.8", expected a number of metres.'],
    ['[0.8]', 'found a list of 1, expected a number of metres.'],
    ['-0.8', 'found -0.8, expected 0.001 to 500 metres.'],
    ['0', 'found 0, expected 0.001 to 500 metres.'],
    ['80000', 'found 80000, expected 0.001 to 500 metres.'],
    ['5e-324', 'found 5e-324, expected 0.001 to 500 metres.'],
  ])('%s metres high', (value, rest) => {
    expect(sentencesOf(swapped('"heightMetres": 0.8', `"heightMetres": ${value}`))).toEqual([
      `${POST}: ${rest}`,
    ]);
  });

  test('NaN, which JSON does not have', () => {
    const [sentence, ...more] = sentencesOf(swapped('"heightMetres": 0.8', '"heightMetres": NaN'));
    expect(sentence).toMatch(
      /^The file: found something that is not JSON \(.+\), expected a plan in JSON\.$/,
    );
    expect(more).toEqual([]);
  });

  test('NaN in a document that never was text', () => {
    const plan = readPlan(PAPER);
    const parsed = parsePlan({ ...plan, safety: { metres: Number.NaN, frameWidths: 0 } });
    expect(parsed).toMatchObject({
      ok: false,
      faults: [{ sentence: 'safety.metres: found NaN, expected a number of metres.' }],
    });
  });

  test('that should be whole', () => {
    expect(sentencesOf(swapped('"rails": 0', '"rails": 1.5'))).toEqual([
      'pieces[12].rails of "Fence": found 1.5, expected a whole number.',
    ]);
  });

  test('of a lens of 0 mm', () => {
    expect(sentencesOf(swapped('"focalMm": 24', '"focalMm": 0'))).toEqual([
      'kit.lenses[0].focalMm of "24 mm spherical": found 0, expected 1 to 3000 mm.',
    ]);
  });

  test('minus zero comes back as zero', () => {
    const parsed = parsePlanText(swapped('"rollDegrees": 0', '"rollDegrees": -0'));
    expect(parsed.ok && Object.is(parsed.value.setups[0].move.keys[0].rollDegrees, 0)).toBe(true);
  });
});

describe('a list', () => {
  const replaced = (
    change: (document: { pieces: { size: number[] }[]; setups: { move: { keys: unknown[] } }[] }) => void,
  ) => {
    const document = JSON.parse(text);
    change(document);
    return sentencesOf(JSON.stringify(document));
  };

  test('too short', () => {
    expect(replaced(({ pieces }) => pieces[1].size.pop())).toEqual([
      'pieces[1].size[2] of "In the middle": found nothing, expected a number of metres.',
    ]);
  });

  test('too long', () => {
    expect(replaced(({ pieces }) => pieces[1].size.push(1))).toEqual([
      'pieces[1].size[3] of "In the middle": found 1, expected nothing more in this list.',
    ]);
  });

  test('with a negative size in it', () => {
    expect(
      replaced(({ pieces }) => {
        pieces[1].size[1] = -2;
      }),
    ).toEqual(['pieces[1].size[1] of "In the middle": found -2, expected 0.001 to 500 metres.']);
  });

  test('that needs an entry', () => {
    expect(
      replaced(({ setups }) => {
        setups[3].move.keys = [];
      }),
    ).toEqual([
      'setups[3].move.keys of "Along, a metre a second": found a list of 0, expected at least one camera key.',
    ]);
  });

  test('with much wrong in it names twenty faults', () => {
    const many = text
      .replaceAll('"material": "concrete"', '"material": 1')
      .replaceAll('"rollDegrees": 0', '"rollDegrees": "no"')
      .replaceAll('"headingDegrees": 0', '"headingDegrees": null');
    expect(sentencesOf(many)).toHaveLength(20);
  });
});

describe('a file', () => {
  test.each([
    ['hello', /^The file: found something that is not JSON \(.+\), expected a plan in JSON\.$/],
    [
      '{"standclear": 1,\n  "title": NaN\n}',
      /^The file: found something that is not JSON \([^\n]+\), expected a plan in JSON\.$/,
    ],
    [text.slice(0, 500), /^The file: found something that is not JSON \(.+\), expected a plan in JSON\.$/],
    [`\ufeff\ufeff${text}`, /^The file: found something that is not JSON/],
    ['', /^The file: found nothing at all, expected a plan in JSON\.$/],
    [' \n\t', /^The file: found nothing but blanks, expected a plan in JSON\.$/],
    ['\ufffdPNG\r\n\u001a', /^The file: found something that is not text, expected a plan in JSON\.$/],
    ['[]', /^The plan: found a list of 0, expected an object that starts with \{"standclear": 1\.$/],
    ['null', /^The plan: found null, expected an object that starts with \{"standclear": 1\.$/],
    ['7', /^The plan: found 7, expected an object that starts with \{"standclear": 1\.$/],
  ])('%#: is no plan', (broken, sentence) => {
    const sentences = sentencesOf(broken);
    expect(sentences).toHaveLength(1);
    expect(sentences[0]).toMatch(sentence);
  });

  test('may begin with a byte order mark', () => {
    expect(parsePlanText(`\ufeff${text}`)).toEqual(parsePlanText(text));
    expect(parsePlanText(text).ok).toBe(true);
  });

  test('of more text than a plan can have is refused unread', () => {
    const long = ' '.repeat(32 * 1024 * 1024 + 1);
    expect(sentencesOf(long)).toEqual([
      `The file: found ${long.length} characters, expected at most 33554432.`,
    ]);
  });

  test('leaves no trace on objects that are not its own', () => {
    parsePlanText(swapped('{', '{"__proto__": {"polluted": true},'));
    expect('polluted' in {}).toBe(false);
  });
});
