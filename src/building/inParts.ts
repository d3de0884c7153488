import { resolve } from 'node:path';
import type { Plugin, Rolldown } from 'vite';
import { CREW, CREW_START, DESK, DESK_START, STAGE } from './builtFiles.ts';

const MAIN = 'main.tsx';
/** Parts of the crew sheet that know the roof's shapes; its others are of words, and stay small. */
const CREW_ROOF = 'screens/crew/overhead/CrewOverhead.tsx';
const CREW_SHAPES: readonly string[] = [
  'screens/crew/item/ItemCard.tsx',
  'screens/crew/picture/FullFrame.tsx',
];
const CREW_STAGE = 'scene/crew/crewStage.ts';
const THREE = /[\\/]node_modules[\\/]three[\\/]/;

type Modules = ReadonlySet<string>;

/** What a module imports: before it runs, and when it is asked for. */
interface Imports {
  readonly first: readonly string[];
  readonly later: readonly string[];
}
type Ask = (id: string) => Imports;

/**
 * Puts what is loaded together into one script each. Left alone the build makes a script for every set of sources that
 * share something, a hundred for the desk: each is compressed by itself, and names what it takes from the others. three
 * changes seldom and is the largest part: alone, it stays in the browser's cache over our releases.
 */
export function inParts(): Plugin {
  let root = '';
  let partOf: (id: string) => string | null = () => null;
  return {
    name: 'in-parts',
    apply: 'build',
    config: () => ({
      build: {
        rolldownOptions: {
          output: {
            codeSplitting: {
              includeDependenciesRecursively: false,
              groups: [{ debugName: 'parts', name: (id) => partOf(id) }],
            },
          },
        },
      },
    }),
    configResolved: (config) => {
      root = config.root;
    },
    buildEnd() {
      partOf = partsOf((source) => resolve(root, source), asking(this));
    },
  };
}

/**
 * Which script a module belongs in; null leaves it to the build. Each script is loaded no earlier than what it imports.
 * @param idOf the id of a source of ours
 */
function partsOf(idOf: (source: string) => string, ask: Ask): (id: string) => string | null {
  const from = (...sources: string[]): Modules => reachOf(sources.map(idOf), ask);
  const main = from(MAIN);
  const start = from(CREW_START);
  const crew = from(CREW);
  const desk = from(DESK, DESK_START);
  const stage = from(STAGE);
  const deskToItsEnd = reachOf([DESK, DESK_START, STAGE].map(idOf), ask, true);
  const later = reachOf([idOf(CREW)], ask, true);
  const roof = from(CREW_ROOF);
  const shapes = from(...CREW_SHAPES);
  const asked = [...later].flatMap((id) => ask(id).later);
  const ofShapes = new Set([CREW_ROOF, ...CREW_SHAPES, CREW_STAGE].map(idOf));
  const inWords = reachOf(
    asked.filter((id) => !ofShapes.has(id)),
    ask,
  );
  // What the address or a hand asks for keeps a script of its own name.
  const doors = new Set([...asked, ...[MAIN, CREW_START, CREW, DESK, DESK_START, STAGE].map(idOf)]);
  return (id) => {
    if (THREE.test(id) && later.has(id)) return 'three';
    if (doors.has(id) || main.has(id)) return null;
    const isOfDesk = desk.has(id) || stage.has(id);
    if (start.has(id)) return isOfDesk ? 'start' : 'crewStart';
    if (crew.has(id)) {
      if (isOfDesk) return 'words';
      // What a later sheet of the desk shares with the crew brings none of the crew's own along, nor its styles.
      return deskToItsEnd.has(id) ? null : 'crew';
    }
    if (!isOfDesk) return null;
    if (!later.has(id)) return desk.has(id) ? 'desk' : 'stage';
    if (inWords.has(id) || id.endsWith('.css')) return null;
    if (roof.has(id)) return 'roof';
    return shapes.has(id) ? 'shapes' : 'picture';
  };
}

/** Asks the build, once for each module. */
function asking(build: Rolldown.PluginContext): Ask {
  const known = new Map<string, Imports>();
  return (id) => {
    const before = known.get(id);
    if (before) return before;
    const module = build.getModuleInfo(id);
    const imports = { first: module?.importedIds ?? [], later: module?.dynamicallyImportedIds ?? [] };
    known.set(id, imports);
    return imports;
  };
}

/** All that comes with some modules, themselves among it. */
function reachOf(ids: readonly string[], ask: Ask, lazily = false): Modules {
  const reached = new Set(ids);
  // A set is walked to its end as it grows.
  for (const id of reached) {
    const { first, later } = ask(id);
    for (const next of first) reached.add(next);
    if (lazily) for (const next of later) reached.add(next);
  }
  return reached;
}
