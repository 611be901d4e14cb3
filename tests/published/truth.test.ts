import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { allRows } from './all-rows.js';

const root = fileURLToPath(new URL('../../', import.meta.url)).replaceAll('\\', '/');
const rows = await allRows();

/** What is computed for every job; and the programs, which ask for the stock plan on their own and only print the rest. */
const doors = ['language/src/analyze.ts', 'server/src/main.ts', 'server/src/cli/main.ts'];

interface Source { readonly declares: ReadonlySet<string>; readonly names: readonly string[]; readonly imports: readonly string[] }

/** Names a file exports as functions, every name in it, and the files it needs at run time; read by the TypeScript parser. */
function read(file: string): Source {
    const tree = ts.createSourceFile(file, readFileSync(root + file, 'utf8'), ts.ScriptTarget.Latest, true);
    const declares = new Set<string>();
    const names: string[] = [];
    const imports: string[] = [];
    for (const statement of tree.statements) {
        const isExported = ts.canHaveModifiers(statement) && (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
        if (isExported && ts.isFunctionDeclaration(statement) && statement.name) declares.add(statement.name.text);
        if (isExported && ts.isVariableStatement(statement)) {
            for (const { name, initializer } of statement.declarationList.declarations) if (ts.isIdentifier(name) && initializer && (ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer))) declares.add(name.text);
        }
        if (!ts.isImportDeclaration(statement) && !ts.isExportDeclaration(statement)) continue;
        const isForTypes = ts.isImportDeclaration(statement) ? statement.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword : statement.isTypeOnly;
        if (!isForTypes && statement.moduleSpecifier && ts.isStringLiteral(statement.moduleSpecifier) && statement.moduleSpecifier.text.startsWith('.')) {
            imports.push(posix.normalize(`${dirname(file)}/${statement.moduleSpecifier.text.replace(/\.js$/, '.ts')}`));
        }
    }
    const visit = (node: ts.Node): void => {
        if (ts.isIdentifier(node) && !ts.isImportSpecifier(node.parent) && !ts.isExportSpecifier(node.parent)) names.push(node.text);
        ts.forEachChild(node, visit);
    };
    visit(tree);
    return { declares, names, imports };
}

/** Every file of the language that is needed at run time from a door. */
function reachable(): ReadonlyMap<string, Source> {
    const found = new Map<string, Source>();
    const queue = [...doors];
    for (let file = queue.pop(); file !== undefined; file = queue.pop()) {
        if (found.has(file) || !existsSync(root + file)) continue;
        const source = read(file);
        found.set(file, source);
        queue.push(...source.imports);
    }
    return found;
}
const reached = reachable();

/** Figures about these hold nothing of the product to account: it does not call them. */
const unused = ['inCubicFeet', 'inMm'];

/** A function counts when a file that is reached declares it, and it is used: in another file that is reached, or again in its own. */
const uses = (name: string): number => [...reached.values()].reduce((total, { names }) => total + names.filter(other => other === name).length, 0);

describe('the table of published figures', () => {
    test('the product is reached at all', () => { expect(reached.size).toBeGreaterThan(200); });
    test.each([...new Set(rows.map(({ checks }) => checks))].sort().filter(name => !unused.includes(name)))('%s is a function that the product uses', name => {
        expect([...reached.values()].some(({ declares }) => declares.has(name)), `no file reached from ${doors.join(' or ')} exports a function ${name}`).toBe(true);
        expect(uses(name), `${name} is declared and nobody calls it`).toBeGreaterThan(1);
    });
    test('the functions that are checked and not used yet are still not used: take those that are off the list', () => {
        expect(unused.filter(name => uses(name) > 1)).toEqual([]);
    });
    test('a function that exists and one that does not are told apart', () => {
        expect([uses('computeBenches') > 1, uses('computeSpaceships')]).toEqual([true, 0]);
    });
    test('has at least a hundred rows over at least eight sources', () => {
        expect(rows.length).toBeGreaterThanOrEqual(100);
        expect(new Set(rows.map(({ source }) => source)).size).toBeGreaterThanOrEqual(8);
    });
    test('every row says where its figure stands and why it may differ', () => {
        expect(rows.filter(row => [row.source, row.clause, row.what, row.toleranceReason].some(text => text.trim() === '')).map(({ what }) => what)).toEqual([]);
        expect(rows.filter(({ tolerance }) => !(tolerance >= 0)).map(({ what }) => what)).toEqual([]);
    });
    test('no two rows are one', () => {
        const keys = rows.map(({ source, clause, what, checks }) => `${source}, ${clause}: ${what} (${checks})`);
        expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
    });
    test('every table is run by a test', () => {
        const tests = readdirSync(`${root}tests/published`).filter(name => name.endsWith('.test.ts') && name !== 'truth.test.ts').map(name => readFileSync(`${root}tests/published/${name}`, 'utf8')).join('\n');
        expect([...new Set(rows.map(({ topic }) => topic))].filter(topic => !tests.includes(`./${topic}.js`))).toEqual([]);
    });
});
