import { rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { NodeFileSystem } from 'langium/node';
import { URI } from 'langium';
import { DidChangeWatchedFilesNotification, DidChangeTextDocumentNotification, FileChangeType, HoverRequest, type Diagnostic, type MarkupContent } from 'vscode-languageserver-protocol';
import { followDays } from '../../../server/src/lsp/day-change.js';
import { createServerServices, type HotroomServerSharedServices } from '../../../server/src/services.js';
import { readDay, untilMidnight } from '../../../server/src/today.js';
import { withStandardJob } from '../../support/standard-job.js';
import { exampleText } from '../../support/workspace.js';
import { bundleServer, folderWith, StdioServer } from './stdio-server.js';

const lowRoom = withStandardJob('room { system Skerry; width 84"; depth 79 1/2"; height 84"; ceiling spans_front_to_back }\nbench upper on back { build Slatted; top 42"; depth 20" }');
const waived = lowRoom.replace('bench upper', 'waive head-clearance-too-low on upper because "low room, signed" by "design office" until 2027-03-01\nbench upper');
const catalogues = { 'catalogue/skerry.hotroom': exampleText('catalogue/skerry.hotroom'), 'catalogue/heaters.hotroom': exampleText('catalogue/heaters.hotroom') };
const severityOf = (diagnostics: readonly Diagnostic[] | undefined, rule = 'head-clearance-too-low'): unknown => diagnostics?.find(({ code }) => code === rule)?.severity;
const codes = (diagnostics: readonly Diagnostic[] | undefined): unknown[] => (diagnostics ?? []).map(({ code }) => code);

describe('over a connection', { timeout: 60_000 }, () => {
    const built = folderWith({});
    let bundle = '';
    beforeAll(async () => { bundle = await bundleServer(built.folder); }, 60_000);
    afterAll(() => { built.remove(); });

    async function served(files: Readonly<Record<string, string>>, run: (server: StdioServer, change: (name: string, text?: string) => Promise<void>) => Promise<void>): Promise<void> {
        const { folder, remove } = folderWith({ ...catalogues, ...files });
        const server = new StdioServer(bundle, folder);
        const change = async (name: string, text?: string): Promise<void> => {
            if (text === undefined) rmSync(path.join(folder, name)); else writeFileSync(path.join(folder, name), text);
            server.forget(server.uri('a.hotroom'));
            await server.connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes: [{ uri: server.uri(name), type: text === undefined ? FileChangeType.Deleted : FileChangeType.Changed }] });
        };
        try {
            await server.result;
            await run(server, change);
            expect(await server.end()).toBe(0);
        } finally {
            server.kill();
            remove();
        }
    }

    test('mistakes stand in the settings at their token; jobs are checked anew when they are saved, come and go', () => served({ 'a.hotroom': lowRoom, 'hotroom.json': '{\n  "unit": "mm",\n  "severities": { "head-clearance-too-low": "error" }\n}\n' }, async (server, change) => {
        const [uri, settings] = [server.uri('a.hotroom'), server.uri('hotroom.json')];
        await server.open(uri, lowRoom);
        expect(severityOf(await server.diagnostics(uri, found => severityOf(found) === 1))).toBe(1);
        expect(await server.diagnostics(settings)).toMatchObject([{ code: 'setting-unknown', severity: 1, source: 'hotroom', range: { start: { line: 1, character: 2 }, end: { line: 1, character: 8 } }, message: 'There is no setting unit. Is units meant?' }]);
        // the place in the settings is one click away
        const related = (await server.diagnostics(uri)).find(({ code }) => code === 'head-clearance-too-low')?.relatedInformation?.at(-1);
        expect(related).toMatchObject({ location: { uri: settings, range: { start: { line: 2, character: 44 } } }, message: 'The settings make it error; by itself it is warning.' });

        await change('hotroom.json', '{ "units": "mm", "severities": { "head-clearance-too-low": "info" } }');
        await server.diagnostics(uri, found => severityOf(found) === 3);
        expect(await server.diagnostics(settings, found => found.length === 0)).toEqual([]);
        const hover = await server.connection.sendRequest(HoverRequest.type, { textDocument: { uri }, position: { line: lowRoom.split('\n').findIndex(line => line.startsWith('room')), character: 1 } });
        expect((hover?.contents as MarkupContent).value).toMatch(/inside height: ≈?[\d.]+ mm \(/);

        await change('hotroom.json', '{ "severities": { "clearance-beside-too-small": "off" } }');
        expect(codes(await server.diagnostics(settings, found => found.length > 0))).toEqual(['setting-not-allowed']);
        expect(severityOf(await server.diagnostics(uri, found => severityOf(found) === 2))).toBe(2);

        await change('hotroom.json');
        expect(await server.diagnostics(settings, found => found.length === 0)).toEqual([]);
        await change('hotroom.json', '{ "severities": { "bench": "off" } }');
        await server.diagnostics(uri, found => found.length > 0 && severityOf(found) === undefined);
    }));

    test('the nearest file wins, and a house rule that is typed becomes known to the settings', () => served({ 'hotroom.json': '{ "severities": { "aisle_wide": "info", "head-clearance-too-low": "hint" } }', 'jobs/hotroom.json': '{ "severities": { "head-clearance-too-low": "error" } }', 'jobs/a.hotroom': lowRoom.replaceAll('use "', 'use "../') }, async server => {
        const [uri, settings] = [server.uri('jobs/a.hotroom'), server.uri('hotroom.json')];
        await server.open(uri, lowRoom.replaceAll('use "', 'use "../'));
        await server.diagnostics(uri, found => severityOf(found) === 1);
        expect(await server.diagnostics(settings, found => found.length > 0)).toMatchObject([{ code: 'setting-of-unknown-rule', severity: 2 }]);
        const rule = 'rule aisle_wide "Aisle" { severity warning; require room.inside.width >= 40\'; because "house standard" }\n';
        await server.connection.sendNotification(DidChangeTextDocumentNotification.type, { textDocument: { uri, version: 2 }, contentChanges: [{ text: lowRoom.replaceAll('use "', 'use "../').replace('job standard', `${rule}job standard`) }] });
        await server.diagnostics(uri, found => severityOf(found, 'aisle_wide') === 3);
        expect(await server.diagnostics(settings, found => found.length === 0)).toEqual([]);
    }));
});

describe('the day', () => {
    async function opened(now: () => Date, folder: string): Promise<HotroomServerSharedServices> {
        const { shared } = createServerServices(NodeFileSystem, { now });
        shared.workspace.Imports.roots = [URI.file(folder)];
        void shared.workspace.ConfigurationProvider.initialized({});
        await shared.workspace.WorkspaceManager.initializeWorkspace([{ uri: URI.file(folder).toString(), name: 'work' }]);
        await shared.workspace.DocumentBuilder.build(shared.workspace.LangiumDocuments.all.toArray(), { validation: true });
        return shared;
    }

    test('waivers run out at midnight without an edit', async () => {
        const { folder, remove } = folderWith({ ...catalogues, 'a.hotroom': waived });
        let clock = new Date(2027, 2, 1, 23, 0, 0);
        try {
            const shared = await opened(() => clock, folder);
            const document = shared.workspace.LangiumDocuments.getDocument(URI.file(path.join(folder, 'a.hotroom')))!;
            expect(codes(document.diagnostics)).not.toContain('waiver-expired');
            vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
            const end = followDays(shared);
            vi.advanceTimersByTime(59 * 60_000);
            clock = new Date(2027, 2, 2, 0, 0, 1);
            vi.advanceTimersByTime(2 * 60_000);
            vi.useRealTimers();
            await vi.waitFor(() => { expect(codes(document.diagnostics)).toContain('waiver-expired'); }, 10_000);
            end();
        } finally {
            vi.useRealTimers();
            remove();
        }
    });
    test('ends and begins where the clock on the wall says so', () => {
        expect(untilMidnight(new Date(2027, 2, 1, 23, 59, 0))).toBe(60_000);
        expect(untilMidnight(new Date(2027, 11, 31, 0, 0, 0))).toBe(24 * 3_600_000);
    });
    test.each([['2027-01-31', { year: 2027, month: 1, day: 31 }], ['2028-02-29', { year: 2028, month: 2, day: 29 }], ['2027-02-29', undefined], ['2027-13-01', undefined], ['27-1-1', undefined], ['2027-01-31 ', undefined], ['0000-00-00', undefined]])('%s', (text, day) => { expect(readDay(text)).toEqual(day); });
});
