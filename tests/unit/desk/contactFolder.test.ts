import { beforeEach, expect, test } from 'vitest';
import { PartlySaved, type PictureFolder, saveIntoFolder } from '../../../src/desk/contactFolder';
import type { NamedPng } from '../../../src/desk/contactPictures';

/** What lies in the folder, by name; null for a file that was made and not written. */
const files = new Map<string, Uint8Array | null>();
/** Which fault the next writings have; null for none. */
let fault: DOMException | null = null;

const unused = () => {
  throw new Error('nobody asks for this');
};

/** A folder in memory, as the File System Access standard has it: a file is there whole once it is closed. */
const folder: PictureFolder = {
  name: 'Stills',
  getFileHandle: async (name, options) => {
    if (!files.has(name)) {
      if (!options?.create) throw new DOMException('no such file', 'NotFoundError');
      files.set(name, null);
    }
    const written: Uint8Array[] = [];
    const writable: FileSystemWritableFileStream = Object.assign(new WritableStream(), {
      write: async (data: FileSystemWriteChunkType) => {
        if (fault) throw fault;
        if (data instanceof Uint8Array) written.push(data);
      },
      close: async () => {
        files.set(name, written[0] ?? null);
      },
      abort: async () => undefined,
      seek: unused,
      truncate: unused,
    });
    return {
      kind: 'file',
      name,
      createWritable: async () => writable,
      getFile: unused,
      isSameEntry: unused,
    };
  },
  removeEntry: async (name) => {
    files.delete(name);
  },
};

const pictures = async function* (then: (count: number) => void): AsyncGenerator<NamedPng, void, void> {
  for (const [index, name] of ['a.png', 'b.png', 'c.png'].entries()) {
    then(index);
    yield { name, bytes: Uint8Array.of(index + 1) };
  }
};

beforeEach(() => {
  files.clear();
  fault = null;
});

test('every picture is written whole', async () => {
  const said = await saveIntoFolder(
    folder,
    pictures(() => undefined),
    3,
    new AbortController().signal,
  );
  expect(said).toBe('3 pictures in Stills');
  expect([...files]).toEqual([
    ['a.png', Uint8Array.of(1)],
    ['b.png', Uint8Array.of(2)],
    ['c.png', Uint8Array.of(3)],
  ]);
});

test.each([
  ['NotAllowedError', 'the browser no longer lets the page write there'],
  ['QuotaExceededError', 'there is no room left'],
  ['NotFoundError', 'the folder is not there any more'],
  ['UnknownError', 'as it is said'],
])(
  'a fault in the middle (%s) is said, what was written stays, and nothing half written',
  async (name, why) => {
    const saving = saveIntoFolder(
      folder,
      pictures((index) => {
        if (index === 1) fault = new DOMException('as it is said.', name);
      }),
      3,
      new AbortController().signal,
    );
    await expect(saving).rejects.toThrow(PartlySaved);
    await expect(saving).rejects.toThrow(
      new PartlySaved(`1 of 3 pictures is in Stills. The next could not be written: ${why}.`),
    );
    expect([...files.keys()]).toEqual(['a.png']);
  },
);

test('a picture of before that cannot be written over stays', async () => {
  files.set('a.png', Uint8Array.of(9));
  fault = new DOMException('no', 'NotAllowedError');
  await expect(
    saveIntoFolder(
      folder,
      pictures(() => undefined),
      3,
      new AbortController().signal,
    ),
  ).rejects.toThrow('0 of 3 pictures are in Stills.');
  expect(files.get('a.png')).toEqual(Uint8Array.of(9));
});

test('a stop says how many are there', async () => {
  const stopping = new AbortController();
  const some = (async function* (): AsyncGenerator<NamedPng, void, void> {
    yield { name: 'a.png', bytes: Uint8Array.of(1) };
    stopping.abort();
  })();
  await expect(saveIntoFolder(folder, some, 3, stopping.signal)).rejects.toThrow(
    new PartlySaved('Stopped: 1 of 3 pictures is in Stills.'),
  );
  expect([...files.keys()]).toEqual(['a.png']);
});
