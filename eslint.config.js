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
        },
    },
    { files: ['tests/**'], rules: { '@typescript-eslint/no-non-null-assertion': 'off' } },
);
