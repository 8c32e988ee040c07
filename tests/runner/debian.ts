import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import process from 'node:process';

const APT_INSTALL = ['-o', 'DPkg::Lock::Timeout=400', 'install', '-y', '--no-install-recommends'];

/** Root on Debian: packages that are missing may be put there. */
export function mayInstall(): boolean {
  return (
    process.getuid?.() === 0 && existsSync('/etc/debian_version') && spawnSync('apt-get', ['--version']).status === 0
  );
}

export function install(packages: readonly string[]): void {
  console.log(`Installing ${packages.join(', ')} from Debian (once) ...`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync('apt-get', ['update'], { stdio: 'inherit', env });
  spawnSync('apt-get', [...APT_INSTALL, ...packages], { stdio: 'inherit', env });
}
