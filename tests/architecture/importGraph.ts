import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { parseSync, Visitor } from 'oxc-parser';

/** One file's use of another file or of a package. */
export interface Edge {
  /** The importing file, below src, with forward slashes. */
  readonly from: string;
  /** The imported file below src, or below the root for one outside src, or the package's name, or what was written. */
  readonly to: string;
  readonly kind: 'file' | 'outside' | 'package' | 'missing' | 'computed';
  /** What is imported by name; '*' for the whole module. */
  readonly names: readonly string[];
}

export interface ImportGraph {
  readonly files: readonly string[];
  readonly edges: readonly Edge[];
}

const CODE = /\.(ts|tsx|mjs)$/;
/** The command line names its worker as it is called beside the bundle. */
const BUNDLED = /\.mjs$/;
const ENDINGS = ['', '.ts', '.tsx', '.d.ts', '/index.ts', '/index.tsx'];

/** Reads every file of code below a folder and finds what each imports, for its types, lazily and for workers too. */
export function importGraph(src: string): ImportGraph {
  const files = codeBelow(src);
  const edges = files.flatMap((file) => requests(file).map((request) => resolve(src, file, request)));
  return { files: files.map((file) => slashed(relative(src, file))), edges };
}

function codeBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return codeBelow(path);
      return CODE.test(entry.name) ? [path] : [];
    })
    .sort();
}

interface Request {
  readonly specifier: string;
  readonly names: readonly string[];
  /** Whether the specifier is an expression, so that only running the file tells what it imports. */
  readonly computed?: boolean;
}

function requests(file: string): Request[] {
  const text = readFileSync(file, 'utf8');
  const { program, module, errors } = parseSync(file, text);
  if (errors.length > 0) throw new Error(`${file} does not parse: ${errors[0]?.message}`);
  const found: Request[] = module.staticImports.map((statement) => ({
    specifier: statement.moduleRequest.value,
    names: statement.entries.map(({ importName }) => nameOf(importName.kind, importName.name)),
  }));
  for (const { entries } of module.staticExports)
    for (const { moduleRequest, importName } of entries)
      if (moduleRequest) found.push({ specifier: moduleRequest.value, names: [importName.name ?? '*'] });

  const add = (node: { type: string; value?: unknown; start: number; end: number }): void => {
    const literal = node.type === 'Literal' && typeof node.value === 'string';
    const specifier = literal ? String(node.value) : text.slice(node.start, node.end);
    found.push({ specifier, names: ['*'], computed: !literal });
  };
  new Visitor({
    ImportExpression: ({ source }) => add(source),
    TSImportType: ({ source }) => add(source),
    // new URL('./x', import.meta.url) is how a worker or a file beside the code is named; a folder is no import.
    NewExpression: ({ callee, arguments: [address, base] }) => {
      if (callee.type !== 'Identifier' || callee.name !== 'URL' || address?.type !== 'Literal') return;
      if (typeof address.value === 'string' && /(^|[./])$/.test(address.value)) return;
      if (base?.type === 'MemberExpression' && base.object.type === 'MetaProperty') add(address);
    },
  }).visit(program);
  return found;
}

/** The imported name; the namespace and the whole module are '*'. */
function nameOf(kind: string, name: string | null): string {
  return kind === 'Default' ? 'default' : (name ?? '*');
}

function resolve(src: string, file: string, { specifier, names, computed }: Request): Edge {
  const from = slashed(relative(src, file));
  if (computed) return { from, to: specifier, kind: 'computed', names };
  if (!specifier.startsWith('.')) return { from, to: packageName(specifier), kind: 'package', names };
  const base = join(dirname(file), specifier.replace(/\?.*$/, ''));
  const candidates = [...ENDINGS.map((ending) => base + ending), base.replace(BUNDLED, '.ts')];
  const found = candidates.find(isFile) ?? (isOutside(src, base) ? base : null);
  if (!found) return { from, to: specifier, kind: 'missing', names };
  if (isOutside(src, found))
    return { from, to: slashed(relative(dirname(src), found)), kind: 'outside', names };
  return { from, to: slashed(relative(src, found)), kind: 'file', names };
}

function isFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;
}

function isOutside(src: string, path: string): boolean {
  return relative(src, path).startsWith('..');
}

function packageName(specifier: string): string {
  if (specifier.startsWith('node:')) return specifier;
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
}

function slashed(path: string): string {
  return path.split(sep).join('/');
}
