import { lazily } from '../parts/lazily';

/** The panels of what is chosen, which come when something is chosen, or when there is time. */
export const AreaPanel = lazily(async () => (await import('./panels/WetAreas')).AreaPanel);
export const ItemPanel = lazily(async () => (await import('./ItemPanel')).ItemPanel);
export const SetupPanel = lazily(async () => (await import('./camera/SetupPanel')).SetupPanel);
export const SeveralPanel = lazily(async () => (await import('./panels/SeveralPanel')).SeveralPanel);
