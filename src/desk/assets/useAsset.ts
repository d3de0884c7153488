import { useStore } from 'zustand';
import { type AssetState, assetStore, type Importing } from './assetStore';

const READING: AssetState = { status: 'reading' };

/** How a file that the plan names stands on this device. */
export const useAsset = (sha256: string): AssetState =>
  useStore(assetStore, ({ states }) => states.get(sha256) ?? READING);

/** The file that is being taken in, or null. */
export const useImporting = (): Importing | null => useStore(assetStore, ({ importing }) => importing);
