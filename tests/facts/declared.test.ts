import { expect, test } from 'vitest';
import { nameBlocks } from '../../language/src/assembly/naming.js';
import { dimensions, sameDimension } from '../../language/src/core/quantity.js';
import { ofFigure } from '../../language/src/core/value.js';
import { declaredFacts, findDeclared } from '../../language/src/facts/declared.js';
import { examplePaths, exampleText, TestWorkspace } from '../support/workspace.js';

/** Kind of block and path below it of every fact that some example has, with the fact. */
async function published(): Promise<readonly { readonly kind: string; readonly path: string; readonly is: string }[]> {
    const workspace = new TestWorkspace();
    const documents = examplePaths().filter(path => !path.startsWith('mistakes/')).map(path => workspace.add(path, exampleText(path)));
    await workspace.build();
    return documents.flatMap(document => workspace.analyze(document).jobs.slice(0, 4)).flatMap(({ job, facts }) => {
        const kinds = new Map([...new Set(job.block.children.map(({ kind }) => kind))].flatMap(kind => nameBlocks(job.block.children.filter(child => child.kind === kind)).map(({ name }) => [name, kind] as const)));
        return facts.under().map(({ path, value, exact }) => {
            const [first = '', ...rest] = path.split('.');
            const found = exact ?? ofFigure(value);
            const is = found?.kind === 'quantity' ? Object.entries(dimensions).find(([, dimension]) => sameDimension(dimension, found.quantity.dimension))?.[0] ?? 'other' : found?.kind === 'flag' ? 'flag' : 'words';
            return { kind: kinds.get(first) ?? first, path: rest.join('.'), is };
        });
    });
}

test('everything that is computed is declared, with what it is', async () => {
    const all = await published();
    expect(all.length).toBeGreaterThan(300);
    expect([...new Set(all.flatMap(({ kind, path, is }) => findDeclared(kind, path)?.is === is ? [] : [`${kind}.${path} is ${is}`]))].sort()).toEqual([]);
});
test('everything that is declared is computed for some example', async () => {
    const all = await published();
    const unused = Object.entries(declaredFacts).flatMap(([kind, facts]) => facts.filter(fact => !all.some(found => found.kind === kind && findDeclared(kind, found.path) === fact)).map(({ path }) => `${kind}.${path}`));
    expect(unused).toEqual([]);
});
