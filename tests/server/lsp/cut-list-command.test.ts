import { Cancellation } from 'langium';
import { expect, test } from 'vitest';
import { tablesDocumentSchema } from '../../../client/src/tables-document.js';
import type { Commands } from '../../../server/src/lsp/commands.js';
import { HighsInProcess } from '../../../server/src/solver/highs.js';
import { exampleText } from '../../support/workspace.js';
import { ServerWorkspace } from './server-workspace.js';

const standard = exampleText('birch-point.hotroom');
async function opened(options: ConstructorParameters<typeof ServerWorkspace>[0] = {}): Promise<{ server: ServerWorkspace; commands: Commands; uri: string }> {
    const server = new ServerWorkspace(options);
    const document = await server.addExamples();
    // There is no folder to read: the workspace is ready as it is.
    await server.shared.workspace.WorkspaceManager.initializeWorkspace([]);
    await server.build();
    return { server, commands: server.shared.lsp.ExecuteCommandHandler as Commands, uri: document.uri.toString() };
}

test('the command is made known', async () => expect((await opened()).commands.commands).toEqual(['hotroom.server.cutList', 'hotroom.server.compare', 'hotroom.server.review', 'hotroom.server.jobs', 'hotroom.server.revisionText']));

test('a list with its plan, as the editor understands it, with progress on the way', { timeout: 60_000 }, async () => {
    const { commands, uri } = await opened({ solver: new HighsInProcess() });
    const told: string[] = [];
    const answer = tablesDocumentSchema.parse(await commands.executeCommand('hotroom.server.cutList', [{ uri, job: 'birch_point' }], undefined, message => { told.push(message); }));
    expect(answer.title).toContain('Birch Point bathhouse');
    expect(answer.tables.length).toBeGreaterThan(1);
    expect(answer.csv.length).toBe(3);
    expect(told[0]).toMatch(/^Planning stock 1 of \d+$/);
    const row = answer.tables.flatMap(({ rows }) => rows).find(({ at }) => at?.uri === uri);
    expect(row?.at && standard.split('\n')[row.at.range.start.line]).toMatch(/\S/);
});
test('without a solver the quick plan stands, and says so', async () => {
    const { commands, uri } = await opened();
    expect(JSON.stringify(await commands.executeCommand('hotroom.server.cutList', [{ uri }]))).toContain('quick plan');
});
test('a file or job that is not there', async () => {
    const { server, commands, uri } = await opened();
    expect(await commands.executeCommand('hotroom.server.cutList', [{ uri, job: 'no_such_job' }])).toBeNull();
    await expect(commands.executeCommand('hotroom.server.cutList', [{ uri: server.uri('nowhere.hotroom') }])).rejects.toThrow(/not open/);
    await expect(commands.executeCommand('hotroom.server.cutList', ['nonsense'])).rejects.toThrow(/address of a file/);
    expect(await commands.executeCommand('hotroom.server.noSuchCommand', [])).toBeUndefined();
});
test('a request that is cancelled ends as cancelled', async () => {
    const { commands, uri } = await opened({ solver: new HighsInProcess() });
    const source = new Cancellation.CancellationTokenSource();
    const answer = commands.executeCommand('hotroom.server.cutList', [{ uri }], source.token, () => { source.cancel(); });
    await expect(answer.catch((error: unknown) => String(error))).resolves.toMatch(/OperationCancelled/);
});
