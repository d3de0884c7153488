import { holdModel } from '../../core/form/models/modelShelf';
import type { Asset } from '../../core/plan/schema/asset';
import type { ReadModel } from '../../exchange/gltf-in/readModel';
import { planStore } from '../planStore';
import { keptFile } from './assetShelf';
import { assetStore, setAssetState } from './assetStore';
import { modelFilesIn } from './assetsIn';
import { readModelFile } from './readModelFile';
import { shownPicture } from './shownPicture';

/** Puts a model that was read where forms find it. */
export function takeUp(sha256: string, read: ReadModel): void {
  holdModel(sha256, read.model);
  setAssetState(sha256, { status: 'model', model: read.model });
}

async function fetchModel({ sha256, name }: Asset): Promise<void> {
  setAssetState(sha256, { status: 'reading' });
  const blob = await keptFile(sha256);
  if (!blob) {
    setAssetState(sha256, { status: 'missing' });
    return;
  }
  const answer = await readModelFile(blob, () => {}).answer;
  if (answer?.ok && answer.sha256 === sha256) takeUp(sha256, answer.read);
  else {
    const why =
      answer && !answer.ok ? answer.sentence : 'Its bytes are not those that the plan was made with.';
    setAssetState(sha256, { status: 'unreadable', sentence: `${name} was not read. ${why}` });
  }
}

async function fetchPicture({ sha256, name }: Asset): Promise<void> {
  setAssetState(sha256, { status: 'reading' });
  const blob = await keptFile(sha256);
  const shown = blob && (await shownPicture(blob));
  if (shown) setAssetState(sha256, { status: 'picture', url: shown.url });
  else if (!blob) setAssetState(sha256, { status: 'missing' });
  else
    setAssetState(sha256, {
      status: 'unreadable',
      sentence: `${name} is no picture that this browser opens.`,
    });
}

/** Looks for every file that the plan names and nobody has looked for yet, on this device and nowhere else. */
function look(): void {
  const { plan } = planStore.getState();
  const { states } = assetStore.getState();
  for (const asset of modelFilesIn(plan)) if (!states.has(asset.sha256)) void fetchModel(asset);
  const picture = plan.underlay?.asset;
  if (picture && !states.has(picture.sha256)) void fetchPicture(picture);
}

/** Keeps the models and the picture of the open plan at hand. */
export function startAssets(): void {
  planStore.subscribe((state, before) => {
    if (state.plan !== before.plan) look();
  });
  look();
}
