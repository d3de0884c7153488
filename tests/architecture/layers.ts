/** One layer of the house: the folders of one rank, and the packages that they may use. */
export interface Layer {
  /** Folders or files below src. The longest that matches a file is its own. */
  readonly paths: readonly string[];
  /** Says whether the layer may import a package, named without its sub-path. */
  readonly packages: (name: string) => boolean;
}

const none = (): boolean => false;
const only =
  (...names: string[]) =>
  (name: string): boolean =>
    names.includes(name);
/** What works without a page: anything but React, what draws with it, and Node's own modules. */
const withoutReact = (name: string): boolean =>
  name !== 'react' && name !== 'react-dom' && !name.startsWith('@react-three/') && !name.startsWith('node:');
const page = (name: string): boolean => !name.startsWith('node:');
const command = (name: string): boolean => name.startsWith('node:') || withoutReact(name);

/**
 * The layers from the ground up. A file imports from its own layer and from those before it, never from a later one.
 * Folders of one layer may use each other in one direction only. There is no list of exceptions.
 */
export const LAYERS: readonly Layer[] = [
  {
    paths: [
      'core/sources.ts',
      'core/sourcesOfCautions.ts',
      'core/sourcesOfLight.ts',
      'core/sourcesOfNight.ts',
      'core/sourcesOfPower.ts',
    ],
    packages: none,
  },
  { paths: ['core/units'], packages: none },
  { paths: ['core/plan', 'core/kit'], packages: only('valibot') },
  { paths: ['core/sky'], packages: none },
  { paths: ['core/form'], packages: only('three') },
  { paths: ['core/optics'], packages: none },
  { paths: ['core/sight'], packages: only('three') },
  { paths: ['core/light'], packages: none },
  { paths: ['core/cautions', 'core/clearance', 'core/continuity', 'core/power'], packages: none },
  { paths: ['core/report'], packages: none },
  { paths: ['core/clearance/remedies', 'core/clearance/useful'], packages: none },
  { paths: ['core/clearance/solve'], packages: none },
  { paths: ['core/night'], packages: none },
  { paths: ['exchange'], packages: withoutReact },
  { paths: ['offline'], packages: only('zustand') },
  { paths: ['desk'], packages: page },
  { paths: ['scene', 'screens'], packages: page },
  { paths: ['main.tsx'], packages: page },
];

/** Folders that stand beside the layers, with all that each may import from src. */
export const BESIDE: readonly (Layer & { readonly imports: readonly string[] })[] = [
  { paths: ['cli'], imports: ['core', 'exchange'], packages: command },
  {
    paths: ['workshop'],
    imports: [],
    packages: (name) => name.startsWith('node:') || name === 'vite' || name === 'playwright-core',
  },
  {
    paths: ['building'],
    imports: ['offline'],
    packages: (name) => name.startsWith('node:') || name === 'vite',
  },
  { paths: ['vite.config.ts'], imports: ['building'], packages: (name) => !withoutReact(name) || page(name) },
];

/** Names of three that draw or load: core uses its maths and its geometry only. */
export const NOT_FOR_CORE = /Renderer|Loader|Texture|Material|Scene|^\*$/;
