import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { expectAccessible } from './support/accessible.ts';
import { type App, startApp } from './support/app.ts';
import { type Phone, withPhone } from './support/phone.ts';
import { shot } from './support/shots.ts';
import { openTable } from './support/table.ts';

let app: App;
beforeAll(async () => {
  app = await startApp();
});
afterAll(() => app.stop());

/** A lid of four corners and a point in it, one tape to spare and one wrong: nobody can tell which. */
const LID = [
  'kind,from,to,reading,piece',
  'straight,A,B,762 mm,lid',
  'straight,B,C,1016 mm,lid',
  'straight,C,D,762 mm,lid',
  'straight,A,D,1016 mm,lid',
  'straight,A,E,450 mm,lid',
  'straight,B,E,525 mm,lid',
  'straight,C,E,895 mm,lid',
  'straight,D,E,823 mm,lid',
  'flat,*,,,lid',
  '',
].join('\n');

const region = ({ page }: Phone, name: string) => page.getByRole('region', { name, exact: true });

/** The lid at the bench, the contradiction taken on with a reason. */
async function takenOn(phone: Phone): Promise<void> {
  const { page } = phone;
  await openTable(phone, LID);
  await region(phone, 'How sure').getByText('Something does not fit').waitFor();
  const accept = page.getByRole('button', { name: 'Accept it as it is' });
  while ((await accept.count()) > 0) {
    const left = await accept.count();
    await accept.first().click();
    await page.getByRole('button', { name: 'The boat is built so' }).first().click();
    await expect.poll(() => accept.count()).toBeLessThan(left);
  }
}

describe.each([
  { screen: 'desk', colorScheme: 'light' },
  { screen: 'phone', colorScheme: 'dark' },
] as const)('a contradiction taken on, at the bench of a $screen', ({ screen, colorScheme }) => {
  test('leaves a picture that says so, and no figure of it: on the screen, on paper, in files', async () => {
    await withPhone(app.url, { screen, colorScheme }, async (phone) => {
      const { page } = phone;
      await takenOn(phone);
      await page.getByText('NOT TO BE USED: drawn from a shape that contradicting readings bend').waitFor();
      const sure = region(phone, 'How sure');
      await sure.getByText('It bends the shape, and nobody knows which reading is wrong').waitFor();
      const points = await sure.locator('.bench-points tbody').innerText();
      expect(points).toContain('not to be used');
      expect(points).not.toMatch(/\d/);
      expect(await page.locator('.bench-oval').count()).toBe(0);
      await sure.scrollIntoViewIfNeeded();
      await shot(page, `bent-${screen}-sure`);
      await page.locator('.bench-plan-box').scrollIntoViewIfNeeded();
      await shot(page, `bent-${screen}-plan`);
      await expectAccessible(page);

      await page.getByRole('button', { name: 'Measure', exact: true }).click();
      await page.getByRole('button', { name: 'Area', exact: true }).click();
      const measured = await page.getByTestId('measure').innerText();
      expect(measured).toContain('what is measured on it is not to be used');
      expect(measured).not.toMatch(/\d ?(mm|in|m²|sq ft|")/);

      await page.getByTestId('clear').click();
      await page.getByText('nobody knows which one is wrong, so no place and no ± of it is given').waitFor();
      await page.getByTestId('clear-sure').click();
      const compare = region(phone, 'Compare');
      await compare.getByLabel('Compare with').selectOption({ index: 1 });
      await compare.getByText('Nothing differs.').waitFor();

      const saved = async (form: string): Promise<string> => {
        const [download] = await Promise.all([page.waitForEvent('download'), page.getByTestId(`file-${form}`).click()]);
        return readFileSync(await download.path(), 'utf8');
      };
      for (const form of ['svg', 'dxf-mm']) expect(await saved(form)).toContain('NOT TO BE USED');
      expect((await saved('points')).match(/,,,,not to be used: /g)).toHaveLength(5);

      await page.getByRole('link', { name: 'Print the job sheet' }).click();
      await page.locator('.paper-page').first().waitFor();
      const paper = await page.locator('.paper').innerText();
      expect(paper).toContain('NOT TO BE USED: readings contradict each other');
      expect(paper).toContain('CLEARED OVER READINGS THAT CONTRADICT EACH OTHER');
      expect(paper).toContain('Its places, ± and differences are not to be used and are left out.');
      expect(await page.locator('.paper-page .sheet-point:not(.head)').count()).toBe(0);

      const [, , job] = new URL(page.url()).hash.split('/');
      await phone.open(`#/leave/${job}`);
      await page.getByText('Clear to leave, with a contradiction that was taken on with a reason.').waitFor();
      expect(await page.getByText('is fixed within').count()).toBe(0);
      await shot(page, `bent-sheet-${screen}`, { fullPage: true });
    });
  });
});

/** A lid of 15 by 20 in of which A to B and A to C were written on each other's line. */
const MIXED_UP = [
  'kind,from,to,reading,piece',
  'straight,A,B,25,lid',
  'straight,B,C,20,lid',
  'straight,C,D,15,lid',
  'straight,A,D,20,lid',
  'straight,A,C,15,lid',
  'straight,B,D,25,lid',
  'flat,*,,,lid',
  '',
].join('\n');

test.each([{ screen: 'desk', colorScheme: 'dark' } as const, { screen: 'phone', colorScheme: 'light' } as const])(
  'two points taken for each other are told as a thought, on a $screen, and nothing is bent to it',
  async ({ screen, colorScheme }) => {
    await withPhone(app.url, { screen, colorScheme }, async (phone) => {
      const { page } = phone;
      await openTable(phone, MIXED_UP);
      const said = page.getByTestId('as-if-exchanged');
      await said.getByText('as if B and C were exchanged').waitFor();
      expect(await said.innerText()).toContain('another slip may');
      await said.scrollIntoViewIfNeeded();
      await shot(page, `exchanged-${screen}`);
      // What was read stays: 25 in from A to B.
      const row = region(phone, 'Readings').getByRole('row', { name: /^A–B/ });
      expect(await row.innerText()).toContain('25"');
    });
  },
);
