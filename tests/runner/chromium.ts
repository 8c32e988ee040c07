import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import process from 'node:process';
import { install, mayInstall } from './debian.ts';

const DEBIAN_CHROMIUM = '/usr/bin/chromium';
const PACKAGES = ['chromium', 'fonts-dejavu-core'];

/** The browser that tests start: `CHROMIUM` from the environment, or Debian's. It may not be there. */
export function chromiumPath(): string {
  return process.env.CHROMIUM ?? DEBIAN_CHROMIUM;
}

/** Gives the path of a Chromium that exists, installing Debian's when that is allowed. Throws a plain sentence when not. */
export async function ensureChromium(): Promise<string> {
  const path = chromiumPath();
  if (existsSync(path)) return path;
  if (process.env.CHROMIUM !== undefined) throw new Error(`CHROMIUM names ${path}, and there is no such file.`);
  if (mayInstall()) install(PACKAGES);
  if (existsSync(path)) return path;
  throw new Error(
    [
      `The browser tests need Chromium. It is not at ${DEBIAN_CHROMIUM}, and could not be installed from here`,
      '(that is tried as root on a system with apt-get). Either',
      `  apt-get install --no-install-recommends ${PACKAGES.join(' ')}     as root on Debian, or`,
      '  CHROMIUM=/path/to/chrome npm test     with any Chrome or Chromium.',
      'All other checks: npm test -- --only=types,lint,unused,directions,build,size,unit',
    ].join('\n'),
  );
}

/** Debian's ezdxf, which reads our drawings back; without it those tests say that they were left out. */
export function ensureEzdxf(): void {
  ensurePython('ezdxf', 'reading a drawing back with another program');
}

/** Debian's scipy, the independent solver of the reference tests; without it those tests say that they were left out. */
export function ensureScipy(): void {
  ensurePython('scipy', 'the comparison with an independent solver');
}

/** Debian's poppler-utils, which read our prints back; without them those tests are left out, and it is said. */
export function ensurePoppler(): void {
  const there = (): boolean => spawnSync('pdftoppm', ['-v']).error === undefined;
  if (!there() && mayInstall()) install(['poppler-utils']);
  if (!there()) console.log('poppler-utils are not here: reading a print back is left out.');
}

function ensurePython(module: string, what: string): void {
  const there = (): boolean => spawnSync('/usr/bin/python3', ['-c', `import ${module}`]).status === 0;
  if (there()) return;
  if (mayInstall()) install([`python3-${module}`]);
  if (!there()) console.log(`python3-${module} is not here: ${what} is left out.`);
}
