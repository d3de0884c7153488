import type { OwnKit } from '../../../core/kit/ownKit';
import { chooseKitFile, type KitFormat, type KitRead, saveKitFile } from '../../../desk/kit/kitFiles';
import { ownKitStore, restoreOwnKit, takeIn } from '../../../desk/kit/ownKitStore';
import { sentenceOf } from '../../../desk/reasonOf';
import { Menu } from '../../parts/Menu';

type Say = (sentence: string, undo?: () => void) => void;

const MOST_FAULTS = 8;

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
const sizeWords = ({ bodies, lenses }: { readonly bodies: number; readonly lenses: number }): string =>
  [
    ...(bodies > 0 ? [counted(bodies, 'body', 'bodies')] : []),
    ...(lenses > 0 ? [counted(lenses, 'lens', 'lenses')] : []),
  ].join(' and ');

/** Takes in what was read, with a way back. */
export function takeInFrom({ name, kit }: KitRead, say: Say): void {
  const { bodies, lenses } = ownKitStore.getState();
  const before: OwnKit = { bodies, lenses };
  const taken = sizeWords(takeIn(kit));
  if (taken === '') say(`All that is in ${name} is kept already.`);
  else say(`${taken} of ${name} kept.`, () => restoreOwnKit(before));
}

/** Brings bodies and lenses in from a file, and out into one. */
export function KitFileActs(props: {
  readonly say: Say;
  /** Called with a file of which not all could be read. */
  readonly ask: (read: KitRead) => void;
}) {
  const { say, ask } = props;
  const bringIn = async (): Promise<void> => {
    try {
      const read = await chooseKitFile();
      if (!read) return;
      if (read.faults.length > 0) ask(read);
      else takeInFrom(read, say);
    } catch (error) {
      say(sentenceOf('The file could not be read', error));
    }
  };
  const bringOut = async (format: KitFormat): Promise<void> => {
    try {
      const name = await saveKitFile(ownKitStore.getState(), format);
      if (name !== null) say(`Saved as ${name}.`);
    } catch (error) {
      say(sentenceOf('The kit was not saved', error));
    }
  };
  return (
    <>
      <button type="button" className="import" onClick={() => void bringIn()}>
        Import
      </button>
      <Menu word="export what is kept">
        <button type="button" className="bare" onClick={() => void bringOut('kit')}>
          all of it, JSON
        </button>
        <button type="button" className="bare" onClick={() => void bringOut('lenses')}>
          lenses, CSV
        </button>
        <button type="button" className="bare" onClick={() => void bringOut('bodies')}>
          bodies, CSV
        </button>
      </Menu>
    </>
  );
}

/** What of a file could not be read, line by line, and what may be taken all the same. */
export function ReadFaults(props: {
  readonly read: KitRead;
  readonly take: () => void;
  readonly leave: () => void;
}) {
  const { name, kit, faults } = props.read;
  const rest = sizeWords({ bodies: kit.bodies.length, lenses: kit.lenses.length });
  return (
    <section className="kit-faults" role="alert">
      <h3>{name} was not read as it is</h3>
      <ul>
        {faults.slice(0, MOST_FAULTS).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
        {faults.length > MOST_FAULTS ? <li>And {faults.length - MOST_FAULTS} more.</li> : null}
      </ul>
      <p className="acts">
        {rest === '' ? null : (
          <button type="button" className="do" onClick={props.take}>
            Keep the {rest} that can be read
          </button>
        )}
        <button type="button" onClick={props.leave}>
          Leave it
        </button>
      </p>
    </section>
  );
}
