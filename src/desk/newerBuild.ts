import { offlineStore } from '../offline/page/offlineStore';
import { openNewerBuild } from '../offline/page/startOffline';
import { isAllSafe, writeAll } from './plans/keeper';
import { toastStore } from './toastStore';

/** Says when a newer version of the page is here, and opens it when it is asked to, once every edit is written. */
export function offerNewerBuild(): void {
  const offer = (): void => {
    if (!offlineStore.getState().isNewerHere) return;
    toastStore.getState().say('A newer version is here.', {
      about: 'newer version',
      stays: true,
      action: { word: 'Use it now', act: () => void writeAndOpen() },
    });
  };
  offlineStore.subscribe(({ isNewerHere }, before) => {
    if (isNewerHere !== before.isNewerHere) offer();
  });
  offer();
}

async function writeAndOpen(): Promise<void> {
  await writeAll();
  if (isAllSafe()) return openNewerBuild();
  toastStore.getState().say('This plan could not be kept on the device. Save it as a file, then reload.', {
    about: 'newer version',
    tone: 'warn',
  });
}
