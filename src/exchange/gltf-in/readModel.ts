import { type HeldModel, trianglesIn } from '../../core/form/models/heldModel';
import { checkDescription } from './checkDescription';
import { chunksOf } from './chunks';
import { readDescription } from './description';
import { type Extent, extentOf, gathered } from './gathered';
import { Looks } from './looks';
import { counted, ModelFault } from './modelFault';
import { openContainer } from './openContainer';
import { worldMatrices } from './standings';
import { type LeftOut, type Surface, surfacesOf } from './surfaces';
import { thinned } from './thin';
import { trimmed } from './trimmed';
import { type MakeDraco, unpacked } from './unpack';

/** A model as it is read from a file. */
export interface ReadModel {
  readonly model: HeldModel;
  /** In the file's units and axes. */
  readonly extent: Extent;
  readonly triangles: number;
  /** What a person should know, as sentences. */
  readonly notes: readonly string[];
}

/** Farther from the file's origin than a plan can say. */
const FARTHEST_UNITS = 1e9;

/**
 * Reads a GLB file. The same bytes always give the same model, in the page and in Node. Animations stand at rest, lines
 * and points are left out, and nothing is ever fetched.
 *
 * @param tell called with the share that is done, 0..1
 * @throws ModelFault, a sentence, for whatever cannot be read
 */
export async function readModel(
  bytes: Uint8Array<ArrayBuffer>,
  makeDraco: MakeDraco,
  tell: (share: number) => void = () => {},
): Promise<ReadModel> {
  const { description: found, binary } = openContainer(bytes);
  const trim = trimmed(readDescription(found));
  const { description, accessors } = trim;
  checkDescription(description, binary, accessors);
  const world = worldMatrices(description);
  tell(0.1);
  const document = await unpacked(trim, binary, makeDraco);
  tell(0.4);
  const leftOut: LeftOut = { strokes: 0, nowhere: 0, seeThrough: 0 };
  const surfaces: Surface[] = [
    ...surfacesOf({ description, document, looks: new Looks(description, binary), world }, leftOut),
  ];
  tell(0.6);
  const extent = extentOf(surfaces);
  if (!extent) throw withoutTriangles(leftOut);
  if ([...extent.lowest, ...extent.highest].some((value) => Math.abs(value) > FARTHEST_UNITS)) {
    throw new ModelFault(
      `The model reaches more than ${counted(FARTHEST_UNITS)} of its own units from its origin. Save it near the origin.`,
    );
  }
  const { lowest, highest } = extent;
  if (lowest.every((low, axis) => low === highest[axis])) throw withoutTriangles(leftOut);
  const centre: [number, number, number] = [
    (lowest[0] + highest[0]) / 2,
    (lowest[1] + highest[1]) / 2,
    (lowest[2] + highest[2]) / 2,
  ];
  const whole = gathered(surfaces, centre);
  const trianglesInFile = whole.reduce((sum, { indices }) => sum + indices.length / 3, 0);
  const { surfaces: thin, errorUnits } = await thinned(whole, trianglesInFile);
  tell(0.9);
  const model: HeldModel = { chunks: thin.flatMap(chunksOf), centre, trianglesInFile, errorUnits };
  return { model, extent, triangles: trianglesIn(model), notes: notesOf(description.scenes.length, leftOut) };
}

function withoutTriangles({ strokes, nowhere }: LeftOut): ModelFault {
  if (nowhere > 0) {
    return new ModelFault(
      'The model has no triangle that lies anywhere: its corners are not numbers. Save it anew.',
    );
  }
  return new ModelFault(
    strokes > 0
      ? 'The model has only points and lines, and no triangles. Make a surface of it first, and save that.'
      : 'The model has no triangles, so there is nothing to put on the roof.',
  );
}

function notesOf(scenes: number, { strokes, nowhere, seeThrough }: LeftOut): string[] {
  const notes: string[] = [];
  if (scenes > 1) notes.push(`It has ${scenes} scenes; one of them was read.`);
  if (strokes > 0)
    notes.push(`Its points and lines were left out (${counted(strokes)}): they have no surface.`);
  if (nowhere > 0) notes.push(`Triangles without a place were left out (${counted(nowhere)}).`);
  if (seeThrough > 0) notes.push('What is see-through in it counts as solid.');
  return notes;
}
