/** `npm run icons`: draws the PNG icons from public/icon.svg with Chromium. Run it after changing the mark. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { chromium } from 'playwright-core';
import { root } from '../../src/server/setup.mjs';

const ICONS = { 'icon-192': 192, 'icon-512': 512, 'icon-maskable-512': 512, 'apple-touch-icon': 180 };
const mark = readFileSync(join(root, 'public/icon.svg'), 'utf8');

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
try {
  const page = await browser.newPage();
  for (const [name, size] of Object.entries(ICONS)) {
    await page.setViewportSize({ width: size, height: size });
    await page.setContent(`<style>body{margin:0}svg{display:block;width:100vw;height:100vh}</style>${mark}`);
    writeFileSync(join(root, 'public', `${name}.png`), await page.screenshot());
  }
} finally {
  await browser.close();
}
