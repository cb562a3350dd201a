import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import { defineConfig } from 'vitest/config';

/**
 * One file for the page, the command line and the tests.
 * The command line is the second build: `vite build --ssr cli.ts --outDir ../dist/cli`.
 */
export default defineConfig(({ isSsrBuild }) => ({
  root: 'src',
  base: './',
  publicDir: isSsrBuild ? false : '../assets',
  plugins: [
    svelte({ configFile: false }),
    ...(process.env.VITEST ? [svelteTesting({ autoCleanup: false })] : []),
  ],
  server: { fs: { allow: ['..'] } },
  ssr: isSsrBuild ? { target: 'node', noExternal: true } : {},
  build: {
    outDir: isSsrBuild ? '../dist/cli' : '../dist/app',
    emptyOutDir: true,
    target: isSsrBuild ? 'node20' : 'es2022',
  },
  test: {
    root: '.',
    include: ['tests/**/*.test.ts'],
    environment: 'node',
    testTimeout: 30_000,
  },
}));
