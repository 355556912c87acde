import './component-types.js';
import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import { defineConfig } from 'eslint/config';
import { fileURLToPath } from 'node:url';
import ts from 'typescript-eslint';

const root = fileURLToPath(new URL('../..', import.meta.url));

export default defineConfig(
  { ignores: ['.svelte-kit/', 'build/', 'test-results/', 'playwright-report/', 'coverage/'] },
  js.configs.recommended,
  ts.configs.strictTypeChecked,
  svelte.configs.recommended,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: root, extraFileExtensions: ['.svelte'] },
    },
    rules: {
      // The compiler knows the globals of each room; this rule does not.
      'no-undef': 'off',
      eqeqeq: 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      // An underscore marks a parameter that a shape demands and a function does not need.
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser } },
  },
  {
    // Scripts run by Node as they stand: the type checker reads them, the typed rules are for the app.
    files: ['**/*.js', '**/*.mjs'],
    extends: [ts.configs.disableTypeChecked],
  },
);
