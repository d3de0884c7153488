import * as v from 'valibot';

const news = v.strictObject({
  /** `written`: a plan has that writing now. `listed`: plans came or went. */
  type: v.picklist(['written', 'listed']),
  planId: v.string(),
  writing: v.number(),
});

/** What one tab of this device tells the others about the shelf. */
export type TabNews = v.InferOutput<typeof news>;

/** Where the browser has no channels, the numbers on the shelf still tell one tab's writing from another's. */
let channel: BroadcastChannel | null = null;

export const tellTabs = (told: TabNews): void => channel?.postMessage(told);

/** Hears what other tabs tell, for as long as the page is there; what is no news of ours is passed over. */
export function listenToTabs(hear: (told: TabNews) => void): void {
  if (typeof BroadcastChannel !== 'function') return;
  channel ??= new BroadcastChannel('standclear-plans');
  channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    const read = v.safeParse(news, data);
    if (read.success) hear(read.output);
  });
}
