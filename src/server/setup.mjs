/**
 * What a bare clone needs before anything typed can run. Plain JavaScript and Node's own modules only:
 * this is what installs all the rest.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));
const built = join(root, 'dist', 'sw.js');
const buildStamp = join(root, 'node_modules', '.cache', 'tapetrue-build');
/** The oldest Node that the build tools run on. */
const NODE_WANTED = [20, 19];

/** Ends the program with a plain sentence when this Node is too old. */
export function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [wantedMajor, wantedMinor] = NODE_WANTED;
  if (major > wantedMajor || (major === wantedMajor && minor >= wantedMinor)) return;
  console.error(`Tapetrue needs Node ${NODE_WANTED.join('.')} or newer; this is Node ${process.versions.node}.`);
  process.exit(1);
}

/** Runs a program in the project's folder and gives its exit code (1 when a signal ended it). */
export function run(command, args, options = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd: root, stdio: 'inherit', ...options });
    child.on('error', reject);
    child.on('close', (code) => resolve(code ?? 1));
  });
}

/** npm, whichever way this was started: under `npm start` npm names itself. */
function npm(args, options = {}) {
  const own = process.env.npm_execpath;
  if (own?.endsWith('.js')) return run(process.execPath, [own, ...args], options);
  return run('npm', args, { shell: process.platform === 'win32', ...options });
}

function packagesIn(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages ?? {};
  } catch {
    return undefined;
  }
}

/**
 * True when what is installed is what the lock asks for. npm writes its own record last, so an install that
 * was broken off has none. Packages for other systems are optional and may be absent.
 */
export function isInstalled(folder = root) {
  const wanted = packagesIn(join(folder, 'package-lock.json'));
  const present = packagesIn(join(folder, 'node_modules', '.package-lock.json'));
  if (!wanted || !present) return false;
  return Object.entries(wanted).every(([path, entry]) => {
    if (path === '') return true;
    const found = present[path];
    return found ? found.version === entry.version : entry.optional === true || entry.devOptional === true;
  });
}

/** Installs exactly what the lock says, when that is not there yet. */
export async function ensureInstalled() {
  if (isInstalled()) return;
  console.log('Installing the packages the lock file names (once, under a minute on most machines) ...');
  const code = await npm(['ci', '--include=dev', '--no-audit', '--no-fund']);
  if (code === 0) return;
  console.error('The packages could not be installed. What npm said is above; this step needs a connection.');
  process.exit(1);
}

function newest(path) {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  // The folder's own time counts too: it changes when a file in it is removed.
  return readdirSync(path).reduce((latest, name) => Math.max(latest, newestUnlessMade(join(path, name))), stat.mtimeMs);
}

/** The schema is made by the build itself, so its age says nothing about the sources. */
function newestUnlessMade(path) {
  return path.endsWith('packet.schema.json') ? 0 : newest(path);
}

function isBuilt() {
  if (!existsSync(built) || !existsSync(buildStamp)) return false;
  const started = Number(readFileSync(buildStamp, 'utf8'));
  // `public` counts by its files: making the schema touches the folder.
  const icons = readdirSync(join(root, 'public')).map((name) => join('public', name));
  const sources = ['src', 'vite.config.ts', 'package.json', 'package-lock.json', ...icons];
  return sources.every((name) => newestUnlessMade(join(root, name)) < started);
}

/** Builds `dist` when it is missing or older than its sources. Throws when the build fails. */
export async function ensureBuilt({ always = false, options = {} } = {}) {
  if (!always && isBuilt()) return;
  const started = Date.now();
  const code = await npm(['run', '--silent', 'build'], options);
  if (code !== 0) throw new Error('The build failed; what it said is above.');
  mkdirSync(join(root, 'node_modules', '.cache'), { recursive: true });
  // The time before the build: a file saved while it ran is newer, and asks for another one.
  writeFileSync(buildStamp, String(started));
}

/** Runs a TypeScript file of this project with the given arguments and gives its exit code. */
export function runTyped(file, args, options = {}) {
  return run(process.execPath, ['--import', 'tsx', join(root, file), ...args], options);
}
