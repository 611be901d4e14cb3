import { expect, test } from 'vitest';
import { SymbolKind } from 'vscode-languageserver';
import { ServerWorkspace } from './server-workspace.js';

const text = `let finger = 1"
rule deep { require all(bench.depth >= 18"); because "house" }
series cottage "Cottage" {
    parameter wide { takes length }
    let step = 18"
}
job one is cottage(96") {
    waive deep because "agreed" by "office" until 2027-03-01
    variant low "Low" { bench upper { top 36" } }
}
`;

test.each([
    ['finger', SymbolKind.Constant, 'let'], ['deep', SymbolKind.Interface, 'rule'], ['cottage', SymbolKind.Class, 'series'], ['wide', SymbolKind.TypeParameter, 'parameter in cottage'],
    ['step', SymbolKind.Constant, 'let in cottage'], ['one', SymbolKind.Package, 'job'], ['low', SymbolKind.EnumMember, 'variant in one'], ['upper', SymbolKind.Object, 'bench in low'], ['deep', SymbolKind.Event, 'waived in one'],
] as const)('%s can be found in every file', async (name, kind, containerName) => {
    const server = new ServerWorkspace();
    await server.add('a.hotroom', text);
    const found = await server.shared.lsp.WorkspaceSymbolProvider?.getSymbols({ query: name }) ?? [];
    expect(found.map(symbol => [symbol.name, symbol.kind, symbol.containerName])).toContainEqual([name, kind, containerName]);
});
