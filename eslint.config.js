import tseslint from 'typescript-eslint';

export default tseslint.config(
    { ignores: ['dist/**', '.cache/**', 'node_modules/**', 'language/src/syntax/generated/**', 'tests/editor/host/**', '**/*.mjs', '**/*.js', 'vitest.config.ts'] },
    ...tseslint.configs.strictTypeChecked,
    {
        languageOptions: { parserOptions: { project: ['./tsconfig.json', './client/tsconfig.page.json'], tsconfigRootDir: import.meta.dirname } },
        rules: {
            '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true, allowBoolean: true }],
            '@typescript-eslint/no-confusing-void-expression': 'off',
            '@typescript-eslint/require-await': 'off',
            '@typescript-eslint/explicit-module-boundary-types': 'error',
            // `const { secret: _secret, ...rest } = value` says plainly what is left out.
            '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true }],
            // Services of the parser library are interfaces; asking for the class behind one is the way to its additions.
            '@typescript-eslint/no-unsafe-class-assertion': 'off',
        },
    },
    {
        files: ['tests/**'],
        rules: {
            '@typescript-eslint/no-non-null-assertion': 'off',
            '@typescript-eslint/no-unnecessary-condition': 'off',
            '@typescript-eslint/no-unnecessary-type-assertion': 'off',
            '@typescript-eslint/unbound-method': 'off',
            '@typescript-eslint/explicit-module-boundary-types': 'off',
        },
    },
);
