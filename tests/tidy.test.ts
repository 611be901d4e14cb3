import { readdirSync, readFileSync } from 'node:fs';
import { dirname, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../', import.meta.url)).replaceAll('\\', '/');

/** Floors of the language from the ground up: a file imports from its own floor and from floors before it. */
const floors = ['core', 'vocabulary', 'syntax', 'model', 'rule-sets', 'engines', 'assembly', 'facts', 'rules', 'settings', 'scene', 'renderings', 'drawings', 'analysis', 'analyze.ts', 'exports', 'compare', 'editing', 'review'];

interface Import { readonly file: string; readonly from: string; readonly isTypeOnly: boolean }

function sources(folder: string): string[] {
    return readdirSync(root + folder, { recursive: true, encoding: 'utf8' }).map(path => `${folder}/${path.replaceAll('\\', '/')}`)
        .filter(path => path.endsWith('.ts') && !path.includes('/node_modules/') && !path.includes('/generated/'));
}
/** What a file imports, read by the TypeScript parser, relative paths made whole. */
function importsOf(file: string): Import[] {
    const tree = ts.createSourceFile(file, readFileSync(root + file, 'utf8'), ts.ScriptTarget.Latest);
    const found: Import[] = [];
    const visit = (node: ts.Node): void => {
        const isStatic = (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier !== undefined && ts.isStringLiteral(node.moduleSpecifier);
        if (isStatic) found.push(importOf(file, (node.moduleSpecifier as ts.StringLiteral).text, ts.isImportDeclaration(node) && node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword));
        if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword && node.arguments[0] && ts.isStringLiteral(node.arguments[0])) found.push(importOf(file, node.arguments[0].text, false));
        if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && ts.isStringLiteral(node.argument.literal)) found.push(importOf(file, node.argument.literal.text, true));
        ts.forEachChild(node, visit);
    };
    visit(tree);
    return found;
}
const importOf = (file: string, written: string, isTypeOnly: boolean): Import =>
    ({ file, from: written.startsWith('.') ? posix.normalize(`${dirname(file)}/${written}`) : written, isTypeOnly });

const language = sources('language/src').flatMap(importsOf);
const server = sources('server/src').flatMap(importsOf);
const client = sources('client/src').flatMap(importsOf);
const floorOf = (path: string): number => floors.indexOf(path.replace('language/src/', '').replace(/\.js$/, '.ts').split('/')[0] ?? '');
const wrong = (imports: readonly Import[], isWrong: (one: Import) => boolean): string[] => imports.filter(isWrong).map(({ file, from }) => `${file} imports ${from}`);

describe('imports', () => {
    test('are found at all', () => { expect(language.length).toBeGreaterThan(300); });
    test('point one way through the floors of the language', () => {
        expect(wrong(language, ({ file, from }) => from.startsWith('language/src/') && (floorOf(from) < 0 || floorOf(from) > floorOf(file)))).toEqual([]);
    });
    test('from Langium stay in the syntax, the lowering and the façade', () => {
        expect(wrong(language, ({ file, from }) => from.startsWith('langium') && !/^language\/src\/(syntax|model|editing|analysis)\/|^language\/src\/analyze\.ts$/.test(file))).toEqual([]);
    });
    test('of the language leave out the editor protocol, the process and the file system', () => {
        expect(wrong(language, ({ from }) => /^(vscode|node:|fs$|path$|highs)/.test(from) || from === 'langium/lsp' || from === 'langium/node')).toEqual([]);
    });
    test('never lead from the language to a door, nor from the client into the server', () => {
        expect(wrong(language, ({ from }) => /^(server|client)\//.test(from))).toEqual([]);
        expect(wrong(server, ({ from }) => from.startsWith('client/'))).toEqual([]);
        expect(wrong(client, ({ from, isTypeOnly }) => (from.startsWith('server/') || from.startsWith('language/')) && !isTypeOnly)).toEqual([]);
    });
    test('of engines know no model, no rule and no syntax', () => {
        expect(wrong(language.filter(({ file }) => file.startsWith('language/src/engines/')), ({ from }) => /^language\/src\/(model|syntax|assembly|facts|rules)\//.test(from))).toEqual([]);
    });
});

test('engines, rules and renderings use no clock, no randomness and no locale', () => {
    const uses = sources('language/src').filter(file => /Math\.random|Date\.now|new Date\(|toLocale|Intl\.|performance\.now/.test(readFileSync(root + file, 'utf8')));
    expect(uses).toEqual([]);
});
test('nothing in the language prints', () => {
    expect(sources('language/src').filter(file => /console\.|process\.(stdout|stderr|env)/.test(readFileSync(root + file, 'utf8')))).toEqual([]);
});
test('offsets become lines and columns in one place of the server, and one of the renderings', () => {
    const uses = sources('server/src').filter(file => /\.positionAt\(/.test(readFileSync(root + file, 'utf8')));
    expect(uses).toEqual(['server/src/to-lsp.ts']);
});
test('no file is too large to hold in the head', () => {
    const long = [...sources('language/src'), ...sources('server/src'), ...sources('client/src')].filter(file => readFileSync(root + file, 'utf8').split('\n').length > 320);
    expect(long).toEqual([]);
});
