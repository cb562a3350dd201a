import { svelteTesting } from '@testing-library/svelte/vite';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { existsSync, readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';
import { cardOf } from './src/setup/exerciseCard.mjs';
import { leanThree } from './src/setup/leanThree.mjs';
import { gatheredChecksFile } from './src/setup/places.mjs';

const screenTests = ['tests/{panel,practice,bench,desk}/**/*.test.ts'];
const browserTests = ['tests/browser/**/*.test.ts'];
// only these of ours do something by being loaded: else each folder's index.ts would drag its whole floor into the first
// chunk; of packages their own word is taken
const doesSomething = /\.css(\?|$)|lang\.css|\/src\/(main|cli)\.ts$/;

/** The page shows every published check with our number beside it; a page without them is not built. */
const checksMustBeThere = {
  name: 'checks-must-be-there',
  apply: 'build' as const,
  buildStart() {
    if (!existsSync(gatheredChecksFile))
      throw new Error(
        'The model card shows the results of the published checks, and there are none: run npm run build, which makes them first.',
      );
  },
};

/** `scenario.json?card` is what the start page shows of an exercise; the exercise itself is fetched when it is opened. */
const exerciseCards = {
  name: 'exercise-cards',
  load(id: string) {
    if (!id.endsWith('/scenario.json?card')) return null;
    const card = cardOf(readFileSync(id.slice(0, -'?card'.length), 'utf8'));
    return { code: `export default ${JSON.stringify(card)};`, moduleType: 'js' as const };
  },
};

/**
 * One file for the page, the command line and the tests.
 * The command line is the second build: `vite build --ssr cli.ts`, one file that needs no node_modules.
 */
export default defineConfig(({ isSsrBuild }) => ({
  root: 'src',
  base: './',
  publicDir: isSsrBuild ? false : '../assets',
  plugins: [
    svelte({ configFile: false }),
    exerciseCards,
    leanThree(),
    ...(isSsrBuild ? [] : [checksMustBeThere]),
  ],
  server: { fs: { allow: ['..'] } },
  // Workers fetch what they need in parts, as the page does.
  worker: { format: 'es' },
  ssr: isSsrBuild ? { target: 'node', noExternal: true } : {},
  build: {
    outDir: isSsrBuild ? '../dist/cli' : '../dist/app',
    emptyOutDir: true,
    target: isSsrBuild ? 'node20' : 'es2022',
    // Weights are judged by a test, gzipped, against a budget.
    chunkSizeWarningLimit: 1024,
    rolldownOptions: {
      treeshake: {
        moduleSideEffects: (id: string) =>
          doesSomething.test(id) || (id.includes('node_modules') ? undefined : false),
      },
    },
  },
  test: {
    root: '.',
    testTimeout: 30_000,
    hookTimeout: 60_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'plain',
          include: ['tests/**/*.test.ts'],
          exclude: [...screenTests, ...browserTests],
        },
      },
      {
        // Components are mounted in a document without a browser; only these tests read packages as a browser would.
        extends: true,
        plugins: [svelteTesting({ autoCleanup: false })],
        test: { name: 'screen', include: screenTests, environment: 'jsdom' },
      },
      {
        extends: true,
        test: { name: 'browser', include: browserTests, fileParallelism: false, testTimeout: 120_000 },
      },
    ],
  },
}));
