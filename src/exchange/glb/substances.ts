import type { Substance } from '../../core/form/types';

/** How a substance looks to another program. Common practice, no source: chosen by eye, for recognition only. */
export interface SubstanceLook {
  /** `#rrggbb`. */
  readonly colour: string;
  readonly metallic: number;
  readonly roughness: number;
  /** Shines by itself. */
  readonly glows?: boolean;
  /** A thin sheet, seen from behind too. */
  readonly sheet?: boolean;
}

const matt = (colour: string, roughness = 0.9): SubstanceLook => ({ colour, metallic: 0, roughness });
const sheet = (colour: string, roughness = 0.9): SubstanceLook => ({
  ...matt(colour, roughness),
  sheet: true,
});
const metal = (colour: string, roughness: number): SubstanceLook => ({ colour, metallic: 1, roughness });
const glowing = (colour: string): SubstanceLook => ({ ...matt(colour), glows: true });

/** One look for each substance. */
export const SUBSTANCE_LOOKS: Readonly<Record<Substance, SubstanceLook>> = {
  concrete: matt('#8b8d8b'),
  asphalt: matt('#3a3b3d'),
  felt: matt('#474a4c'),
  tile: matt('#9a6a52', 0.6),
  timber: matt('#8a6f52'),
  boards: matt('#7a6550'),
  brick: matt('#7d4f40'),
  render: matt('#b3aa9a'),
  metal: metal('#9aa0a6', 0.45),
  'dark metal': metal('#2c2e31', 0.5),
  galvanised: metal('#a7adb0', 0.55),
  rubber: matt('#1b1c1d'),
  'black cloth': sheet('#0e0e10', 1),
  net: sheet('#0e0e10', 1),
  'white cloth': sheet('#e9e7e1', 1),
  card: matt('#ededed', 1),
  diffusion: sheet('#f3f2ee', 0.8),
  silver: { ...metal('#d5d8da', 0.3), sheet: true },
  glass: sheet('#9fb2b8', 0.05),
  mirror: { ...metal('#e6e9ea', 0.02), sheet: true },
  'wire mesh': { ...metal('#8f9599', 0.6), sheet: true },
  glow: glowing('#fff3d6'),
  window: glowing('#ffd9a0'),
  screen: glowing('#9fb8d8'),
  paint: matt('#6f7a80', 0.6),
  skin: matt('#b98a6d', 0.6),
  hair: matt('#2b221c', 0.7),
  upper: matt('#4b5563'),
  lower: matt('#2f3540'),
  shoe: matt('#1d1b1a', 0.6),
  feather: sheet('#d9d6cf'),
  linen: sheet('#dcd6c8', 1),
  terracotta: matt('#a5603f'),
};
