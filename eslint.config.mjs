import js from '@eslint/js';
import reactHooks from 'eslint-plugin-react-hooks';
import globals from 'globals';
import tseslint from 'typescript-eslint';

/** Kebab-case file names, so that a reader finds a thing where its name says. */
const kebabCaseFiles = {
  rules: {
    'kebab-case': {
      meta: { type: 'layout', schema: [] },
      create: (context) => ({
        Program(node) {
          const name = context.filename.split('/').pop();
          if (!/^\.?[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9-]+)*\.(ts|tsx|mts|mjs|cjs)$/.test(name)) {
            context.report({ node, message: `File name '${name}' is not kebab-case.` });
          }
        },
      }),
    },
  },
};

const WAYS = '^(Get|Post|Put|Patch|Delete|Head|Options|All|Search|Sse)$';
const RIGHTS = '^(Permit|ForSignedIn|ForOwnSignIn|OpenToAll)$';
const named = (pattern) => `> Decorator[expression.callee.name=/${pattern}/]`;

export default tseslint.config(
  {
    ignores: [
      'dist',
      'data',
      'node_modules',
      'coverage',
      'screens',
      'libs/store/generated',
      'apps/web/src/lib/api-types.ts',
    ],
  },
  js.configs.recommended,
  {
    files: ['**/*.ts', '**/*.tsx', '**/*.mts'],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: {
      parserOptions: {
        project: ['./tsconfig.json', './apps/web/tsconfig.json'],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  {
    files: ['apps/web/**/*.{ts,tsx}'],
    plugins: { 'react-hooks': reactHooks },
    rules: reactHooks.configs.recommended.rules,
  },
  { files: ['**/*.{mjs,cjs}'], languageOptions: { globals: globals.node } },
  {
    plugins: { house: kebabCaseFiles },
    rules: {
      'house/kebab-case': 'error',
      'max-lines': ['error', { max: 250, skipBlankLines: true, skipComments: true }],
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
      'no-console': 'error',
      eqeqeq: 'error',
    },
  },
  {
    files: ['apps/api/**/*.ts'],
    rules: {
      // The API does not start either; here it is said before anything is run.
      'no-restricted-syntax': [
        'error',
        {
          selector: `MethodDefinition:has(${named(WAYS)}):not(:has(${named(RIGHTS)}))`,
          message: 'A route names who may use it: @Permit, @ForSignedIn, @ForOwnSignIn or @OpenToAll.',
        },
      ],
    },
  },
  {
    files: ['apps/tools/**', 'apps/cli/**', 'test/{bench,faults,screens}/**', '**/*.cjs'],
    rules: { 'no-console': 'off' },
  },
  {
    files: ['**/*.spec.ts', 'test/**/*.ts'],
    rules: { 'max-lines': ['error', { max: 600 }], 'max-lines-per-function': 'off' },
  },
);
