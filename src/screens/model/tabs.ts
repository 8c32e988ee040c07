import * as z from 'zod/mini';

/** What the app's tabs tell each other: the id of a job that has grown, or of one that was deleted. */
const Message = z.union([z.string(), z.object({ deleted: z.string() })]);

const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('tapetrue-job');

export const tellGrown = (job: string): void => channel?.postMessage(job);
export const tellDeleted = (job: string): void => channel?.postMessage({ deleted: job });

export function listenToTabs({ grown, deleted }: Record<'grown' | 'deleted', (job: string) => void>): void {
  channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    const message = Message.safeParse(data);
    if (!message.success) return;
    if (typeof message.data === 'string') grown(message.data);
    else deleted(message.data.deleted);
  });
}
