import type { Edge } from './importGraph';
import { BESIDE, LAYERS, type Layer, NOT_FOR_CORE } from './layers';

/** Where a file belongs: its folder as the layers name it, and that layer's place from the ground up. */
interface Home {
  readonly folder: string;
  readonly layer: Layer;
  /** Place from the ground up; null beside the layers. */
  readonly rank: number | null;
}

const HOMES: readonly Home[] = [
  ...LAYERS.flatMap((layer, rank) => layer.paths.map((folder) => ({ folder, layer, rank }))),
  ...BESIDE.flatMap((layer) => layer.paths.map((folder) => ({ folder, layer, rank: null }))),
].sort((a, b) => b.folder.length - a.folder.length);

/** The folder of the layers that holds a file; null if the layers do not name it. */
export function homeOf(file: string): Home | null {
  return HOMES.find(({ folder }) => isIn(file, folder)) ?? null;
}

/** Says which rule an import breaks; null if it breaks none. */
export function brokenRule(edge: Edge): string | null {
  const home = homeOf(edge.from);
  if (!home)
    return `${edge.from} is in no layer: put it into a folder that tests/architecture/layers.ts names`;
  const line = `${edge.from} imports ${edge.to}`;
  if (edge.kind === 'missing') return `${line}: there is no such file`;
  if (edge.kind === 'computed')
    return home.folder === 'workshop' ? null : `${line}: name the module, so that this check can see it`;
  if (edge.kind === 'package') return brokenPackageRule(edge, home, line);
  if (edge.kind === 'outside')
    return edge.to === 'assets' || edge.to.startsWith('assets/')
      ? null
      : `${line}: outside src only assets may be imported`;

  const target = homeOf(edge.to);
  if (!target)
    return `${edge.to} is in no layer: put it into a folder that tests/architecture/layers.ts names`;
  if (target.folder === home.folder) return null;
  const beside = BESIDE.find((layer) => layer === home.layer);
  if (beside) {
    if (beside.imports.some((folder) => isIn(edge.to, folder))) return null;
    return `${line}: ${home.folder} may import ${beside.imports.join(' and ') || 'nothing'} of src`;
  }
  if (home.rank === null || target.rank === null)
    return `${line}: nothing imports ${target.folder}, which stands beside the layers`;
  if (target.rank > home.rank)
    return `${line}: imports run one way, and ${target.folder} comes after ${home.folder}`;
  return null;
}

function brokenPackageRule(edge: Edge, home: Home, line: string): string | null {
  if (!home.layer.packages(edge.to)) return `${line}: ${home.folder} may not use this package`;
  if (!edge.from.startsWith('core/') || edge.to !== 'three') return null;
  const drawing = edge.names.filter((name) => NOT_FOR_CORE.test(name));
  if (drawing.length === 0) return null;
  return `${line} (${drawing.join(', ')}): core uses three's maths and geometry by name, nothing that draws or loads`;
}

function isIn(file: string, folder: string): boolean {
  return file === folder || file.startsWith(`${folder}/`);
}
