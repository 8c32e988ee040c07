import preact from '@preact/preset-vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { PACKET_FILE_TYPES } from './src/core/packet/file-name.ts';
import { contentSecurityPolicy } from './src/server/security.ts';

export default defineConfig({
  root: 'src',
  publicDir: '../public',
  base: './',
  build: { outDir: '../dist', emptyOutDir: true, target: 'es2022', manifest: true },
  plugins: [
    preact({ devToolsEnabled: false }),
    {
      name: 'content-security-policy',
      apply: 'build',
      transformIndexHtml: () => [
        {
          tag: 'meta',
          attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy({ inMeta: true }) },
          injectTo: 'head-prepend',
        },
      ],
    },
    VitePWA({
      strategies: 'generateSW',
      registerType: 'prompt',
      injectRegister: false,
      includeAssets: ['apple-touch-icon.png', 'packet.schema.json'],
      manifest: {
        name: 'Tapetrue',
        short_name: 'Tapetrue',
        description: 'Measure for boat canvas at the dock, offline, and know before you leave.',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#f7f5ef',
        theme_color: '#14181c',
        icons: [
          { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
          { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
          { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
        ],
        file_handlers: [{ action: './', accept: PACKET_FILE_TYPES }],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,woff2}'],
        navigateFallback: 'index.html',
        cleanupOutdatedCaches: true,
        // The first page of all belongs to the worker at once: a signal lost before any reload leaves every screen.
        clientsClaim: true,
      },
    }),
  ],
  test: {
    root: '.',
    projects: [
      {
        test: {
          name: 'unit',
          environment: 'node',
          include: ['tests/{core,device,screens,reference,server,cli,text,guard}/**/*.test.ts'],
          setupFiles: ['tests/setup.ts'],
          // Only so that a test that hangs ends: how long something may take is what benches are for.
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/support/global-setup.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
          // A real browser on a busy machine is late now and then. What needed a second try is printed as such, and is worth a look.
          retry: 1,
        },
      },
    ],
  },
});
