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

/** The demo at the bench: its shade is not flat and hangs over the deck, its bow cover is flat. */
async function demoAtBench({ page, open }: Phone, piece: RegExp): Promise<void> {
  await open('#/');
  await page.getByRole('button', { name: 'Load the demo job' }).click();
  await page.getByRole('heading', { name: 'Open-bow cover' }).waitFor();
  const job = new URL(page.url()).hash.split('/')[2] ?? '';
  await open(`#/bench/${job}`);
  await page.getByRole('button', { name: piece }).click();
  await page.getByRole('region', { name: 'How sure' }).waitFor();
}

type Screen = 'desk' | 'phone';
const drawing = ({ page }: Phone) => page.locator('.bench-plan-box');

/** Where the named point is drawn, px on the screen. */
async function pointAt({ page }: Phone, label: string): Promise<{ x: number; y: number }> {
  // One that hides another carries both names.
  const named = page.locator('.bench-drawing g[data-on="point"]').filter({ hasText: new RegExp(`\\b${label}\\b`) });
  const box = await named.first().locator('circle.point').boundingBox();
  if (!box) throw new Error(`${label} is not drawn`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** One finger, or the mouse with its button held. */
async function drag({ page, context }: Phone, screen: Screen, dx: number, dy: number): Promise<void> {
  await page.locator('.bench-plan-box').scrollIntoViewIfNeeded();
  const box = await page.locator('.bench-plan-box').boundingBox();
  if (!box) throw new Error('no drawing');
  const from = { x: box.x + box.width / 2, y: box.y + box.height * 0.8 };
  const steps = Array.from({ length: 6 }, (_, i) => ({
    x: from.x + (dx * (i + 1)) / 6,
    y: from.y + (dy * (i + 1)) / 6,
  }));
  if (screen === 'desk') {
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    for (const { x, y } of steps) await page.mouse.move(x, y);
    await page.mouse.up();
    return;
  }
  const finger = await context.newCDPSession(page);
  await finger.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [from] });
  for (const at of steps) await finger.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [at] });
  await finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

async function tapAt({ page }: Phone, screen: Screen, { x, y }: { x: number; y: number }): Promise<void> {
  if (screen === 'desk') await page.mouse.click(x, y);
  else await page.touchscreen.tap(x, y);
}

describe.each([{ screen: 'desk' }, { screen: 'phone' }] as const)('the drawing at the $screen', ({ screen }) => {
  test('shows a piece that is not flat from above, from a side and from astern, and turns it by drag and by keys', async () => {
    await withPhone(app.url, { screen }, async (phone) => {
      const { page } = phone;
      await demoAtBench(phone, /^Tension shade/);
      const views = page.getByRole('group', { name: 'Looked at' });
      for (const view of ['Plan', 'Side elevation', 'Stern elevation']) {
        await views.getByRole('button', { name: view }).click();
        expect(await views.getByRole('button', { name: view }).getAttribute('aria-pressed')).toBe('true');
        await shot(page, `drawing-${screen}-${view.split(' ')[0]?.toLowerCase()}`);
      }
      // The hardtop lies above the poles it slopes down to.
      const [a, c] = [await pointAt(phone, 'A'), await pointAt(phone, 'C')];
      expect(a.y).toBeLessThan(c.y);

      await views.getByRole('button', { name: '3D' }).click();
      await page.getByTestId('axes').waitFor();
      const before = await pointAt(phone, 'A');
      const scrolled = await page.evaluate(() => scrollY);
      await drag(phone, screen, 70, -60);
      const after = await pointAt(phone, 'A');
      expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeGreaterThan(15);
      expect(Math.abs((await page.evaluate(() => scrollY)) - scrolled)).toBeLessThan(screen === 'desk' ? 1 : 400);
      await drawing(phone).focus();
      await page.keyboard.press('ArrowLeft');
      const keyed = await pointAt(phone, 'A');
      expect(Math.hypot(keyed.x - after.x, keyed.y - after.y)).toBeGreaterThan(2);
      await page.getByRole('button', { name: 'Turn right' }).click();
      await page.getByRole('button', { name: 'Larger' }).click();
      await page.locator('.bench-plan-box').scrollIntoViewIfNeeded();
      await shot(page, `drawing-${screen}-turned`);
      await expectAccessible(page);
      // A turn is no tap: nothing was selected by it.
      await page.getByText('Nothing selected.').waitFor();

      await views.getByRole('button', { name: 'Plan' }).click();
      expect(await page.locator('.bench-oval').count()).toBeGreaterThan(3);
    });
  });

  test('measures distances, angles and areas by taps, with how sure they are', async () => {
    await withPhone(app.url, { screen }, async (phone) => {
      const { page } = phone;
      await demoAtBench(phone, /^Tension shade/);
      await page.getByRole('button', { name: 'Measure', exact: true }).click();
      const tool = page.getByTestId('measure');
      for (const label of ['A', 'C']) {
        await page.locator('.bench-plan-box').scrollIntoViewIfNeeded();
        await tapAt(phone, screen, await pointAt(phone, label));
      }
      await tool.getByText('Straight', { exact: true }).waitFor();
      expect(await tool.innerText()).toMatch(/Straight\s+[\d /]+"\s± [\d /]+"/);
      expect(await tool.innerText()).toMatch(/On plan\s+[\d /]+"\s± /);
      expect(await tool.innerText()).toMatch(/In height\s+[\d /]+"\s± /);
      await page.locator('.bench-plan-box').scrollIntoViewIfNeeded();
      // The tool stands below the drawing and covers nothing of it.
      const [drawn, below] = [await page.locator('.bench-plan-box').boundingBox(), await tool.boundingBox()];
      expect(below?.y ?? 0).toBeGreaterThanOrEqual((drawn?.y ?? 0) + (drawn?.height ?? 0));
      await shot(page, `measure-${screen}-distance`);
      await expectAccessible(page);

      await tool.getByRole('button', { name: 'Angle' }).click();
      await tool.getByLabel('One arm to').selectOption({ label: 'A' });
      await tool.getByLabel('Corner').selectOption({ label: 'B' });
      await tool.getByLabel('Other arm to').selectOption({ label: 'D' });
      expect(await tool.innerText()).toMatch(/\d+\.\d° ± 0\.\d°/);
      await tool.getByRole('button', { name: 'Area' }).click();
      expect(await tool.innerText()).toMatch(/Area of the plan\s+[\d.]+ sq ft ± [\d.]+ sq ft/);
      await tool.getByText('It is not the area of the cloth.').waitFor();
      await page.locator('.bench-plan-box').scrollIntoViewIfNeeded();
      await shot(page, `measure-${screen}-area`);
      await page.getByRole('button', { name: 'Done measuring' }).click();
      await page.getByText('Nothing selected.').waitFor();
    });
  });

  test('measures on a flat piece in its own plane, along an edge and between its fasteners', async () => {
    await withPhone(app.url, { screen, colorScheme: 'dark' }, async (phone) => {
      const { page } = phone;
      await demoAtBench(phone, /^Open-bow cover/);
      await page.getByText(/Drawn from the adjusted shape/).waitFor();
      await page.getByRole('button', { name: 'Measure', exact: true }).click();
      const tool = page.getByTestId('measure');
      await tool.getByRole('button', { name: 'Area' }).click();
      expect(await tool.innerText()).toMatch(/Area\s+[\d.]+ sq ft ± /);
      expect(await tool.innerText()).not.toContain('plan');
      await page.locator('.bench-plan-box').scrollIntoViewIfNeeded();
      await shot(page, `measure-${screen}-flat-dark`);
      await tool.getByRole('button', { name: 'Girth' }).click();
      await tool.getByLabel('Edge').selectOption({ index: 1 });
      expect(await tool.innerText()).toMatch(/Point to point along it\s+[\d /]+"\s± /);
      await page.locator('.bench-plan-box').scrollIntoViewIfNeeded();
      await shot(page, `measure-${screen}-edge-dark`);
      await expectAccessible(page);
    });
  });
});

test('what lies under the mouse lights up on the drawing and in the lists', async () => {
  await withPhone(app.url, { screen: 'desk' }, async (phone) => {
    const { page } = phone;
    await demoAtBench(phone, /^Tension shade/);
    const row = page.getByRole('region', { name: 'Readings' }).locator('tr[data-row]').first();
    await row.scrollIntoViewIfNeeded();
    await row.hover();
    await page.locator('.bench-line.lit').first().waitFor({ state: 'attached' });
    const { x, y } = await pointAt(phone, 'A');
    await page.mouse.move(x, y);
    await page.locator('tr.lit[data-row^="point:"]').first().waitFor();
    await page.locator('tr.lit[data-row^="reading:"]').first().waitFor();
    await page.mouse.move(5, 5);
    await page.locator('.bench-line.lit').first().waitFor({ state: 'detached' });
    for (const view of ['Side elevation', 'Stern elevation', '3D']) {
      await page.getByRole('button', { name: view }).click();
      // The note below has other lines in another view, and the drawing another height.
      await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
      const at = await pointAt(phone, 'C');
      await page.mouse.move(at.x, at.y);
      await page.locator('.bench-line.lit').first().waitFor({ state: 'attached' });
      await page.mouse.move(5, 5);
    }
  });
});
