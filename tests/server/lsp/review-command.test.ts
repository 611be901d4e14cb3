import * as z from 'zod/mini';
import { expect, test } from 'vitest';
import type { Commands } from '../../../server/src/lsp/commands.js';
import type { ReviewAnswer } from '../../../server/src/lsp/review-command.js';
import { exampleText } from '../../support/workspace.js';
import { ServerWorkspace } from './server-workspace.js';

const standard = exampleText('birch-point.hotroom');
async function opened(): Promise<{ commands: Commands; uri: string; nowhere: string }> {
    const server = new ServerWorkspace({});
    const document = await server.addExamples();
    await server.shared.workspace.WorkspaceManager.initializeWorkspace([]);
    await server.build();
    return { commands: server.shared.lsp.ExecuteCommandHandler as Commands, uri: document.uri.toString(), nowhere: server.uri('nowhere.hotroom') };
}
const answerSchema = z.object({ title: z.string(), styles: z.string(), body: z.string(), html: z.string(), places: z.array(z.object({ uri: z.string(), range: z.object({ start: z.object({ line: z.int(), character: z.int() }), end: z.object({ line: z.int(), character: z.int() }) }) })) });

test('the report as markup, with every numbered place in the text, and the same as a page of its own', async () => {
    const { commands, uri } = await opened();
    const answer = answerSchema.parse(await commands.executeCommand('hotroom.server.review', [{ uri, job: 'birch_point' }])) satisfies ReviewAnswer;
    expect(answer.title).toBe('Birch Point bathhouse: review');
    expect([...answer.body.matchAll(/data-place="(\d+)"/g)].length).toBe(answer.places.length);
    const index = Number(/feet-below-stones<\/code> <span class="place" data-place="(\d+)"/.exec(answer.body)![1]);
    expect(standard.split('\n')[answer.places[index]!.range.start.line]).toMatch(/^ {4}\S|^ {8}top/);
    expect(answer.places[index]!.uri).toBe(uri);
    expect(answer.html.startsWith('<!DOCTYPE html>')).toBe(true);
    expect(answer.html).toContain(answer.body);
    expect(answer.styles).toContain('var(--vscode-editor-background)');
});
test('a file or job that is not there', async () => {
    const { commands, uri, nowhere } = await opened();
    expect(await commands.executeCommand('hotroom.server.review', [{ uri, job: 'no_such_job' }])).toBeNull();
    await expect(commands.executeCommand('hotroom.server.review', [{ uri: nowhere }])).rejects.toThrow(/not open/);
    await expect(commands.executeCommand('hotroom.server.review', ['nonsense'])).rejects.toThrow(/address of a file/);
});
