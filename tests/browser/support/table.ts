import type { Phone } from './phone.ts';

/** Opens a readings table at the bench, and the job it makes. */
export async function openTable({ page, open }: Phone, table: string): Promise<void> {
  await open('#/bench');
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({ name: 'lid.csv', mimeType: 'text/csv', buffer: Buffer.from(table) });
  await page.getByRole('link', { name: 'Open it' }).click();
}
