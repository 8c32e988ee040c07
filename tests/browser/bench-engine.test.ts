import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

/** The demo at the bench, its bow cover chosen: F to P3 was typed as 72 3/16 where the tape said 27 3/16. */
async function demoAtBench({ page, open }: Phone): Promise<void> {
  await open('#/');
  await page.getByRole('button', { name: 'Load the demo job' }).click();
  await page.getByRole('heading', { name: 'Open-bow cover' }).waitFor();
  const job = new URL(page.url()).hash.split('/')[2] ?? '';
  await open(`#/bench/${job}`);
  await page.getByRole('button', { name: /^Open-bow cover/ }).click();
  await page.getByRole('heading', { name: 'Suspected slips' }).waitFor();
}

const region = ({ page }: Phone, name: string) => page.getByRole('region', { name, exact: true });

describe.each([
  { screen: 'desk', size: '1440x900' },
  { screen: 'phone', size: '390x844' },
] as const)('the bench at $size', ({ screen }) => {
  test('names the slip in the demo, asks it again without saying what fits, and says what is missing once it is struck', async () => {
    await withPhone(app.url, { screen }, async (phone) => {
      const { page } = phone;
      await demoAtBench(phone);
      const slips = region(phone, 'Suspected slips');
      const first = await slips.getByRole('listitem').first().innerText();
      expect(first).toContain('F–P3: 27 3/16" would fit, digits swapped');
      expect(first).toContain('Almost certainly');
      expect(first).toContain('The tape was read as 72 3/16.');
      expect(first).toContain('Not read again');
      await slips.getByText('No reading was changed, and the dock is not told what would fit.').waitFor();
      const sure = region(phone, 'How sure');
      await sure.getByText('Something does not fit').waitFor();
      await sure.getByText('Without F–P3, everything else fits within what tapes do.').waitFor();
      await sure.getByText(/^Least sure: P\d|^Least sure: [ST]/).waitFor();
      await page.getByText('Drawn from the adjusted shape without F–P3').waitFor();
      expect(await page.locator('.bench-oval').count()).toBe(10);
      await shot(page, `engine-${screen}-slip`, { fullPage: true });
      await expectAccessible(page);

      const row = region(phone, 'Readings').getByRole('row', { name: /^F–P3/ });
      expect(await row.innerText()).toContain('27 3/16" would fit');
      await page.getByTestId('ask-slips').click();
      expect(await page.getByRole('checkbox', { name: 'Ask again for F–P3' }).isChecked()).toBe(true);
      const asking = region(phone, 'Ask again');
      await asking.getByText('Chosen: F–P3', { exact: true }).waitFor();
      await shot(page, `engine-${screen}-ask`);
      await asking.getByRole('button', { name: 'Do not ask' }).click();
    });
  });

  test('opens the numbers behind a reading, and after the strike says what is missing', async () => {
    await withPhone(app.url, { screen }, async (phone) => {
      const { page } = phone;
      await demoAtBench(phone);
      const readings = region(phone, 'Readings');
      await readings.getByRole('button', { name: 'F–P2', exact: true }).click();
      await readings.getByText('Numbers', { exact: true }).click();
      const numbers = await readings.locator('details').innerText();
      for (const term of ['Residual', 'Redundancy', 'Standardised residual', 'Smallest slip seen'])
        expect(numbers).toContain(term);
      expect(numbers).toMatch(/\d mm \(\d+\/\d+"\); power 80 %, false alarm 0\.4 % for the whole job/);
      await expectAccessible(page);
      await shot(page, `engine-${screen}-numbers`);

      await region(phone, 'Suspected slips').getByRole('button', { name: 'Go to F–P3' }).click();
      await readings.getByRole('button', { name: 'Strike out 72 3/16' }).click();
      await readings.getByRole('button', { name: 'A later reading replaces it' }).click();
      await region(phone, 'Decide').getByText('F–P3: not taped yet.').waitFor();
      await region(phone, 'How sure').getByText('Worked out from what is there. Still open: F–P3.').waitFor();
      await region(phone, 'How sure').getByText('Everything fits within what tapes do.').waitFor();
      expect(await region(phone, 'Suspected slips').count()).toBe(0);
      await shot(page, `engine-${screen}-struck`, { fullPage: true });
      await expectAccessible(page);
    });
  });

  test('counts a reading as its slip would have it, marked as such; lays the state before beside it; saves drawings', async () => {
    await withPhone(app.url, { screen }, async (phone) => {
      const { page } = phone;
      await demoAtBench(phone);
      await page.getByTestId('ask-slips').click();
      await page.getByTestId('make-ask').click();
      await region(phone, 'Suspected slips').getByRole('button', { name: 'Count F–P3 as 27 3/16"' }).click();
      await page.getByTestId('count-instead').click();
      const row = region(phone, 'Readings').getByRole('row', { name: /^F–P3/ });
      await row.getByText('counted so by the shop, not measured again').waitFor();
      expect(await row.innerText()).toContain('72 3/16');
      await region(phone, 'How sure').getByText('Everything fits within what tapes do.').waitFor();

      const compare = region(phone, 'Compare');
      await compare.getByLabel('Compare with').selectOption({ index: 1 });
      const changed = compare.getByRole('row', { name: /^F–P3/ });
      await changed.waitFor();
      expect(await changed.innerText()).toMatch(/72 3\/16".*27 3\/16".*−45"/s);
      await shot(page, `engine-${screen}-compared`, { fullPage: true });
      await expectAccessible(page);

      const [download] = await Promise.all([page.waitForEvent('download'), page.getByTestId('file-dxf-in').click()]);
      expect(download.suggestedFilename()).toMatch(/open-bow-in\.dxf$/);
      const text = readFileSync(await download.path(), 'utf8');
      expect(text).toContain('NOT CLEARED TO CUT');
      expect(text.trimEnd().endsWith('EOF')).toBe(true);
    });
  });
});
