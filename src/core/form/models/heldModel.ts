/** A picture that lies on a model's surface, as it is in the file: drawn, never judged. */
export interface ModelPicture {
  readonly bytes: Uint8Array;
  /** `image/png`, `image/jpeg` or `image/webp`. */
  readonly mime: string;
  /** How the picture goes on beyond its edges. */
  readonly wraps: readonly [ModelWrap, ModelWrap];
}
export type ModelWrap = 'repeat' | 'mirror' | 'clamp';

/** How a stretch of a model looks, corner by corner. */
export interface ModelSkin {
  /** x, y, z per corner, in the file's axes; null where the file has none: then facets show. */
  readonly normals: Float32Array | null;
  /** Linear red, green and blue per corner, 65535 for 1; it takes the picture's colour down where there is one. */
  readonly colours: Uint16Array;
  /** u, v per corner from the picture's top left corner; null without a picture. */
  readonly places: Float32Array | null;
  readonly picture: ModelPicture | null;
  /** The picture has holes: where it is more clear than not, nothing is drawn. */
  readonly isCutOut: boolean;
}

/** Triangles of a model that bear one name and lie together. */
export interface ModelChunk {
  readonly name: string;
  /** x, y, z per corner in the file's units and axes, from the middle of the model's extent. */
  readonly positions: Float32Array;
  readonly indices: Uint32Array;
  /** A stretch cut out of a larger surface: it cannot be a closed solid. */
  readonly isCut: boolean;
  /** Null where nothing is drawn, as in a worker that only judges. */
  readonly skin: ModelSkin | null;
}

/** An imported model as its file gives it, placed nowhere yet. */
export interface HeldModel {
  readonly chunks: readonly ModelChunk[];
  /** The middle of the model's extent, in the file's units and axes. */
  readonly centre: readonly [number, number, number];
  /** How many triangles the file has; the chunks have fewer where it was thinned out. */
  readonly trianglesInFile: number;
  /** How far the chunks may lie from the file's surface, in its units; 0 where nothing was thinned out. */
  readonly errorUnits: number;
}

/** How many triangles a model has. */
export const trianglesIn = ({ chunks }: HeldModel): number =>
  chunks.reduce((sum, { indices }) => sum + indices.length / 3, 0);
