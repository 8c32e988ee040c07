import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { install, mayInstall } from './debian.ts';

const FIREFOX = '/usr/bin/firefox-esr';
const WEBKIT_DRIVER = '/usr/bin/WebKitWebDriver';
const XVFB = '/usr/bin/Xvfb';

const FIREFOX_PACKAGES = ['firefox-esr'];
const WEBKIT_PACKAGES = ['webkit2gtk-driver', 'xvfb', 'gir1.2-webkit2-4.1', 'python3-gi'];

export const firefoxPath = (): string => FIREFOX;
export const webkitDriverPath = (): string => WEBKIT_DRIVER;
export const xvfbPath = (): string => XVFB;

export const hasFirefox = (): boolean => existsSync(FIREFOX);

/** The driver, a screen for it, and the library with its Python face, of which our own window is made. */
export function hasWebkit(): boolean {
  const face = "import gi; gi.require_version('WebKit2', '4.1'); from gi.repository import WebKit2";
  return existsSync(WEBKIT_DRIVER) && existsSync(XVFB) && spawnSync('/usr/bin/python3', ['-c', face]).status === 0;
}

/** Debian's Firefox and WebKitGTK. Without one of them its tests are left out, and it is said. */
export function ensureEngines(): void {
  const missing = [...(hasFirefox() ? [] : FIREFOX_PACKAGES), ...(hasWebkit() ? [] : WEBKIT_PACKAGES)];
  if (missing.length > 0 && mayInstall()) install(missing);
  sayWhatIsLeftOut();
}

export function sayWhatIsLeftOut(): void {
  if (!hasFirefox()) leftOut('Firefox', FIREFOX_PACKAGES);
  if (!hasWebkit()) leftOut('WebKitGTK', WEBKIT_PACKAGES);
}

const leftOut = (engine: string, packages: readonly string[]): void =>
  console.warn(`\n*** ${engine} is NOT tested: ${packages.join(', ')} are not here and could not be installed. ***\n`);
