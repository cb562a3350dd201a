import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import tseslint from 'typescript-eslint';

const typeAware = {
  '@typescript-eslint/await-thenable': 'error',
  '@typescript-eslint/no-floating-promises': 'error',
  '@typescript-eslint/no-misused-promises': 'error',
  '@typescript-eslint/no-unnecessary-type-assertion': 'error',
  '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
};

export default tseslint.config(
  { ignores: ['dist', 'node_modules', 'coverage'] },
  { linterOptions: { reportUnusedDisableDirectives: 'error', noInlineConfig: true } },
  js.configs.recommended,
  tseslint.configs.strict,
  svelte.configs.recommended,
  {
    languageOptions: {
      globals: { ...globals.browser, ...globals.node },
      parserOptions: {
        projectService: true,
        tsconfigRootDir: import.meta.dirname,
        extraFileExtensions: ['.svelte'],
      },
    },
    rules: {
      eqeqeq: 'error',
      'no-console': ['error', { allow: ['error'] }],
      '@typescript-eslint/consistent-type-imports': 'error',
    },
  },
  { files: ['src/**/*.ts', 'tests/**/*.ts'], rules: typeAware },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: tseslint.parser } },
  },
  { files: ['**/*.js', '**/*.mjs'], languageOptions: { parserOptions: { projectService: false } } },
  { files: ['src/setup/*.mjs', 'src/cli.ts', 'tests/**/*.ts'], rules: { 'no-console': 'off' } },
);
