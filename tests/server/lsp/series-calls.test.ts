import { expect, test } from 'vitest';
import { ServerWorkspace, at, textIn } from './server-workspace.js';

const line = 'series cottage "Cottage" {\n    parameter w { takes length; otherwise 84" }\n}\nseries high is cottage(90")\n';
const jobs = 'use "line.hotroom"\n\njob one "First" is cottage(84")\njob two is high { number "2" }\njob alone { number "3" }\n';

async function hierarchy(needle: string, shift = 0): Promise<{ readonly item: string | undefined; readonly callers: readonly (readonly [string, string])[]; readonly callees: readonly (readonly [string, string])[] }> {
    const server = new ServerWorkspace();
    const documents = [await server.add('line.hotroom', line), await server.add('jobs.hotroom', jobs)];
    const document = documents.find(one => one.textDocument.getText().includes(needle))!;
    const provider = server.hotroom.lsp.CallHierarchyProvider!;
    const [item] = await provider.prepareCallHierarchy(document, at(document, needle, shift)) ?? [];
    const callers = item ? await provider.incomingCalls({ item }) ?? [] : [];
    const callees = item ? await provider.outgoingCalls({ item }) ?? [] : [];
    const text = (uri: string, range: Parameters<typeof textIn>[1] | undefined): string => range ? textIn(documents.find(one => one.uri.toString() === uri)!, range) : '';
    return {
        item: item && `${item.name}: ${item.detail ?? ''}`,
        callers: callers.map(({ from, fromRanges: [range] }) => [from.name, text(from.uri, range)] as const), callees: callees.map(({ to, fromRanges: [range] }) => [to.name, text(item!.uri, range)] as const),
    };
}

test.each([
    ['series cottage', 9, 'cottage: series · Cottage', [['one', 'cottage(84")'], ['high', 'cottage(90")']], []],
    ['is cottage(84', 5, 'cottage: series · Cottage', [['one', 'cottage(84")'], ['high', 'cottage(90")']], []],
    ['high is', 2, 'high: series', [['two', 'high']], [['cottage', 'cottage(90")']]],
    ['two is', 0, 'two: job', [], [['high', 'high']]],
    ['alone', 1, 'alone: job', [], []],
] as const)('of %s', async (needle, shift, item, callers, callees) => { expect(await hierarchy(needle, shift)).toEqual({ item, callers, callees }); });

test('nothing where no series or job is named', async () => {
    expect((await hierarchy('number "3"')).item).toBeUndefined();
});
