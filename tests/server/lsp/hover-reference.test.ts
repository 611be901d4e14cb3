import { expect, test } from 'vitest';
import { readFileSync } from 'node:fs';
import { at, ServerWorkspace } from './server-workspace.js';

const reference = readFileSync(new URL('../../../language/handbook/reference.md', import.meta.url), 'utf8');

test.each([
    ['bench upper', 1, 'bench'], ['top 37"', 1, 'bench'], ['let x', 1, 'let'], ['series s', 1, 'series'], ['waive head', 1, 'waive'], ['rule r', 1, 'rule'],
])('a hover on %s leads to its heading of the language reference', async (needle, shift, topic) => {
    const server = new ServerWorkspace({ handbook: page => page === 'reference' ? 'file:///pages/reference.md' : undefined });
    const text = 'job a {\n    rules iec\n    let x = 3"\n    waive head-clearance-too-low because "r" by "b" until 2027-01-01\n    bench upper on back { build B; top 37"; depth 20" }\n}\nseries s {\n    rules iec\n}\nrule r { require 1 < 2; because "x" }\n';
    const document = await server.add('a.hotroom', text);
    const hover = await server.hotroom.lsp.HoverProvider?.getHoverContent(document, at(document, needle, shift));
    const value = hover && typeof hover.contents === 'object' && 'value' in hover.contents ? hover.contents.value : '';
    expect(value).toContain(`(file:///pages/reference.md#${topic})`);
    expect(reference).toContain(`\n### ${topic}\n`);
});
