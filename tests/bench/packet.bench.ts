/** A packet of a thousand entries and forty photos, opened and sent by the built app in a real browser. */
import { mkdtempSync, openAsBlob, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readPacketFile } from '../../src/device/packet-file/index.ts';
import { type App, startApp } from '../browser/support/app.ts';
import { type Phone, withPhone } from '../browser/support/phone.ts';
import { makePhoto } from '../browser/support/photo.ts';
import { JOB, packetFile } from './packet-job.ts';
import { type Felt, feel } from './page-probe.ts';

const ENTRIES = 1000;
const PHOTOS = 40;
const LONGEST_PAUSE_MS = 200;
const LONGEST_TASK_MS = 50;
const HEAP_PER_PACKET = 3;
const SLOWDOWNS = [1, 4];
const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(1);
const ms = (time: number): string => time.toFixed(0);

const app = await startApp();
const folder = mkdtempSync(join(tmpdir(), 'tapetrue-packet-'));
try {
  const path = join(folder, 'many-photos.json');
  writeFileSync(path, Buffer.from(await (await drawPacket(app)).arrayBuffer()));
  for (const slowdown of SLOWDOWNS) await measure(app, path, slowdown);
} finally {
  await app.stop();
  rmSync(folder, { recursive: true });
}

async function drawPacket({ url }: App): Promise<Blob> {
  const pictures: Buffer[] = [];
  await withPhone(url, {}, async ({ page }) => {
    for (let seed = 1; seed <= PHOTOS; seed += 1)
      pictures.push(await makePhoto(page, { grain: true, seed, width: 1920, height: 1440 }));
  });
  return packetFile(pictures, ENTRIES);
}

async function measure({ url }: App, path: string, slowdown: number): Promise<void> {
  const { size } = await openAsBlob(path);
  await withPhone(url, { slowdown }, async (phone) => {
    const { page } = phone;
    await phone.open('#/bench');
    await phone.readyOffline();
    const picker = page.locator('input[type=file][multiple]').first();
    await picker.waitFor({ state: 'attached' });
    const taken = await feel(
      page,
      () => picker.setInputFiles(path),
      () => document.querySelector('.banner')?.textContent?.includes('new entries') ?? false,
    );
    await page.evaluate((job) => location.replace(`#/job/${job}`), JOB);
    await page.getByRole('link', { name: 'Send to the shop' }).waitFor();
    const made = await feel(
      page,
      () => page.getByRole('link', { name: 'Send to the shop' }).tap(),
      () => document.querySelector('[data-testid=download]:not([disabled])') !== null,
    );
    const sent = await save(phone);
    console.log(table(slowdown, size, { opened: [taken, size], sent: [made, sent] }));
  });
}

/** Size of the packet the app made, which must hold everything. */
async function save({ page }: Phone): Promise<number> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByTestId('download').tap()]);
  const file = await openAsBlob(await download.path());
  const reading = await readPacketFile(file);
  const isWhole = reading.ok && reading.kind === 'packet' && reading.photos.length === PHOTOS;
  if (!isWhole || reading.packet.logbook.length !== ENTRIES) throw new Error('The packet came out incomplete.');
  return file.size;
}

function table(slowdown: number, size: number, columns: Record<'opened' | 'sent', [Felt, number]>): string {
  const { opened, sent } = columns;
  const row = (name: string, wanted: string, of: (felt: Felt, size: number) => string): string =>
    `| ${name} | ${wanted} | ${of(...opened)} | ${of(...sent)} |`;
  return [
    `| ${slowdown === 1 ? 'this machine' : `page ${slowdown} x slower`}: packet of ${megabytes(size)} MB | wanted | opened | made to send |`,
    '| --- | --- | --- | --- |',
    row('time, ms', '', ({ took }) => ms(took)),
    row('longest pause, ms', `< ${LONGEST_PAUSE_MS}`, ({ longestPause }) => ms(longestPause)),
    row('longest task over 50 ms', `< ${LONGEST_TASK_MS}`, ({ longestTask }) => ms(longestTask)),
    row('peak heap, MB', `< ${megabytes(HEAP_PER_PACKET * size)}`, ({ heap }) => megabytes(heap)),
    row('packet, MB', '', (_, bytes) => megabytes(bytes)),
    '',
  ].join('\n');
}
