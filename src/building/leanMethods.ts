import type { ESTree, Plugin } from 'vite';

/** Where three keeps its classes, each in a file of its own. */
const CLASSES = /[\\/]node_modules[\\/]three[\\/]src[\\/](?!nodes[\\/])[^?]+\.js$/;

/** Writing a scene down and reading it again. Dates have the one as well, so it is looked for by `drawsByLeftOut`. */
const WRITING: readonly string[] = ['toJSON', 'fromJSON'];

/** Other methods of three's classes that nothing on the page calls: turns and measures, most of them. */
const NOT_CALLED: ReadonlySet<string> = new Set([
  ...['computeVertexNormals', 'normalizeNormals', 'normalizeSkinWeights', 'transposeIntoArray'],
  ...['setAxisAngleFromRotationMatrix', 'setAxisAngleFromQuaternion', 'makeRotationAxis', 'extractBasis'],
  ...[
    'setViewOffset',
    'clearViewOffset',
    'getViewBounds',
    'getViewSize',
    'setFromCamera',
    'setFromXRController',
  ],
  ...[
    'slerp',
    'slerpFlat',
    'slerpQuaternions',
    'multiplyQuaternionsFlat',
    'rotateTowards',
    'angleTo',
    'randomDirection',
  ],
  ...['lerpVectors', 'lerpHSL', 'clampScalar', 'roundToZero', 'subScalar'],
  ...[
    'manhattanLength',
    'manhattanDistanceTo',
    'projectOnVector',
    'projectOnPlane',
    'setFromMatrixScale',
    'transformUv',
  ],
  ...[
    'getHSL',
    'offsetHSL',
    'getHex',
    'getHexString',
    'getStyle',
    'intersectLine',
    'intersectsLine',
    'containsBox',
    'getBoundingSphere',
  ],
  ...[
    'setFromCenterAndSize',
    'setFromCoplanarPoints',
    'getPlane',
    'setFromAttributeAndIndices',
    'addUpdateRange',
  ],
]);

const LEFT_OUT: ReadonlySet<string> = new Set([...WRITING, ...NOT_CALLED]);

/** A stretch of a source, from its first character to behind its last. */
interface Stretch {
  readonly name: string;
  readonly start: number;
  readonly end: number;
}

/**
 * Leaves methods out of three's classes that nothing on the page calls. A class is one piece to a bundler: what no
 * module of ours imports goes, what no line of ours calls stays.
 * @throws an error while building when three has no such method any more, or a script of the page names one
 */
export function leanMethods(): Plugin {
  const missed = new Set(LEFT_OUT);
  return {
    name: 'lean-methods',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      if (!CLASSES.test(id)) return null;
      const lean = withoutUncalled(code, this.parse(code));
      for (const name of lean.names) missed.delete(name);
      return lean.names.length > 0 ? { code: lean.code, map: null } : null;
    },
    buildEnd(error) {
      if (!error && missed.size > 0)
        throw new Error(`three has no ${[...missed].join(', ')} any more: see src/building/leanMethods.ts`);
    },
    generateBundle(_, bundle) {
      for (const part of Object.values(bundle)) {
        const name = part.type === 'chunk' ? namedIn(part.code) : undefined;
        if (name !== undefined)
          throw new Error(
            `${part.fileName} names ${name}, which is left out of three: see src/building/leanMethods.ts`,
          );
      }
    },
  };
}

/** The methods of a module's classes, in the order in which they are written. */
function methodsOf({ body }: ESTree.Program): Stretch[] {
  return body.flatMap((statement) => {
    const written = statement.type === 'ExportNamedDeclaration' ? statement.declaration : statement;
    if (written?.type !== 'ClassDeclaration') return [];
    return written.body.body.flatMap((member) => {
      if (member.type !== 'MethodDefinition' || member.computed || member.kind !== 'method') return [];
      const { key, start, end } = member;
      return key.type === 'Identifier' ? [{ name: key.name, start, end }] : [];
    });
  });
}

/**
 * A module of three's without the methods that nothing calls.
 * @param program the module as it was parsed
 * @returns what is left of it, and the names of what is not
 */
export function withoutUncalled(
  code: string,
  program: ESTree.Program,
): { readonly code: string; readonly names: readonly string[] } {
  const out = methodsOf(program).filter(({ name }) => LEFT_OUT.has(name));
  let from = 0;
  let kept = '';
  for (const { start, end } of out) {
    kept += code.slice(from, start);
    from = end;
  }
  return { code: kept + code.slice(from), names: out.map(({ name }) => name) };
}

/** The first of the methods left out that a script names, be it of a class of its own; undefined where it names none. */
export function namedIn(code: string): string | undefined {
  return code.match(/[A-Za-z_$][\w$]*/g)?.find((word) => NOT_CALLED.has(word));
}
