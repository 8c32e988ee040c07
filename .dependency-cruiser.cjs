/** Arrows point down only: screens -> device -> core. Core rooms follow the order written here. */
const rooms = ['length', 'job', 'geometry', 'adjust', 'check', 'guide', 'cloth', 'packet'];
const higher = (room) => rooms.slice(rooms.indexOf(room) + 1);
/** What core must not lean on: it runs anywhere, so nothing of the browser, of the screens or of Node. */
const worldly = '(^|/)node_modules/(preact|@preact|idb|vite|vite-plugin-pwa)/';
module.exports = {
  forbidden: [
    { name: 'no-circle', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'core-knows-nobody',
      severity: 'error',
      from: { path: '^src/core' },
      to: { path: '^src/(device|screens|text|server|cli)' },
    },
    { name: 'core-packages', severity: 'error', from: { path: '^src/core' }, to: { path: worldly } },
    {
      name: 'browser-not-node',
      severity: 'error',
      from: { path: '^src/(core|device|screens|text)' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'text-knows-core-only',
      severity: 'error',
      from: { path: '^src/text' },
      to: { path: '^src/(device|screens|server|cli)' },
    },
    {
      name: 'device-below-screens',
      severity: 'error',
      from: { path: '^src/device' },
      to: { path: '^src/(screens|server|cli)' },
    },
    {
      name: 'screens-not-node',
      severity: 'error',
      from: { path: '^src/screens' },
      to: { path: '^src/(server|cli)' },
    },
    { name: 'src-not-tests', severity: 'error', from: { path: '^src' }, to: { path: '^tests' } },
    {
      name: 'dock-and-bench-apart',
      severity: 'error',
      from: { path: '^src/screens/dock' },
      to: { path: '^src/screens/bench' },
    },
    {
      name: 'bench-and-dock-apart',
      severity: 'error',
      from: { path: '^src/screens/bench' },
      to: { path: '^src/screens/dock' },
    },
    {
      name: 'dock-and-bench-know-no-owner',
      severity: 'error',
      from: { path: '^src/screens/(dock|bench)' },
      to: { path: '^src/screens/owner' },
    },
    {
      name: 'owner-knows-no-bench',
      severity: 'error',
      from: { path: '^src/screens/owner' },
      to: { path: '^src/screens/bench' },
    },
    {
      name: 'parts-are-below',
      severity: 'error',
      from: { path: '^src/screens/parts' },
      to: { path: '^src/screens/(dock|owner|bench)' },
    },
    ...rooms
      .filter((room) => higher(room).length > 0)
      .map((room) => ({
        name: `core-${room}-order`,
        severity: 'error',
        from: { path: `^src/core/${room}/` },
        to: { path: `^src/core/(${higher(room).join('|')})/` },
      })),
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    // Packages stay in the picture as ends of arrows, so that rules can name them; nothing inside them is read.
    doNotFollow: { path: 'node_modules' },
  },
};
