import type { Plan } from '../../plan/schema/plan';
import type { NetworkFault } from '../../power/types';
import { namedIn, namesIn } from './powerWords';
import type { PowerSentence } from './types';

type Told = Pick<PowerSentence, 'standing' | 'itemIds' | 'sentence'>;

const breaks = (itemIds: readonly string[], sentence: string): Told => ({
  standing: 'breaks',
  itemIds,
  sentence,
});
const said = (itemIds: readonly string[], sentence: string): Told => ({
  standing: 'said',
  itemIds,
  sentence,
});

function toldOf(plan: Plan, fault: NetworkFault): Told {
  switch (fault.kind) {
    case 'ring': {
      const names = namesIn(plan, fault.cableIds);
      const ids = [...fault.cableIds, ...fault.itemIds];
      return fault.cableIds.length === 1
        ? breaks(ids, `${names} ends where it begins. Plug one of its ends elsewhere.`)
        : breaks(
            ids,
            `${names} make a ring, and nobody can say which way its current goes. Pull one of them.`,
          );
    }
    case 'two sources':
      return breaks(
        [...fault.sourceIds, ...fault.itemIds],
        `${namesIn(plan, fault.sourceIds)} are joined by cables and would feed into each other. Pull the cable between them.`,
      );
    case 'no cord': {
      const one = fault.itemIds.length === 1;
      return breaks(
        fault.itemIds,
        `${namesIn(plan, fault.itemIds)} ${one ? 'hangs' : 'hang'} on no cord. Run one to ${one ? 'it' : 'each'}, or say that ${one ? 'it has' : 'they have'} power of ${one ? 'its' : 'their'} own.`,
      );
    }
    case 'no source': {
      const one = fault.itemIds.length === 1;
      return breaks(
        fault.itemIds,
        `${namesIn(plan, fault.itemIds)} ${one ? 'has' : 'have'} a cord that comes from no supply. Plug its other end into a generator, a socket of the house, a battery or a box that has power.`,
      );
    }
    case 'open end':
      return said(
        [fault.cableId],
        `One end of ${namedIn(plan, fault.cableId)} lies free; the other is plugged into ${namedIn(plan, fault.itemId)}.`,
      );
    case 'loose': {
      const one = fault.cableIds.length === 1;
      return said(
        fault.cableIds,
        `${namesIn(plan, fault.cableIds)} ${one ? 'is' : 'are'} plugged into nothing, so ${one ? 'it carries' : 'they carry'} nothing here.`,
      );
    }
    case 'takes no plug':
      return breaks(
        [fault.cableId, fault.itemId],
        `${namedIn(plan, fault.cableId)} is plugged into ${namedIn(plan, fault.itemId)}, which takes no plug.`,
      );
    case 'too few sockets':
      return breaks(
        [fault.itemId],
        `${namedIn(plan, fault.itemId)} has ${fault.sockets} ${fault.sockets === 1 ? 'socket' : 'sockets'} for ${fault.cables} cables, or too few on the circuit that they name. Add a box, or move a cable.`,
      );
    case 'no such circuit':
      return said(
        [fault.cableId, fault.itemId],
        `${namedIn(plan, fault.cableId)} names circuit ${fault.circuit} of ${namedIn(plan, fault.itemId)}, which has fewer; it is counted on the one with most room.`,
      );
    case 'passes on':
      return said(
        [fault.itemId, ...fault.cableIds],
        `${namesIn(plan, fault.cableIds)} ${fault.cableIds.length === 1 ? 'comes' : 'come'} out of ${namedIn(plan, fault.itemId)}, which passes power on only where it has a socket for that. Look at its plate.`,
      );
  }
}

/** What is wrong with how things are plugged together, in words. */
export const plugSentences = (plan: Plan, faults: readonly NetworkFault[]): readonly PowerSentence[] =>
  faults.map((fault) => ({ about: 'plugs', ...toldOf(plan, fault) }));
