import { expect, test } from 'vitest';
import manifest from '../../../package.json' with { type: 'json' };
import { hintKinds } from '../../../language/src/editing/hints.js';
import { withStandardJob } from '../../support/standard-job.js';
import { exampleText } from '../../support/workspace.js';
import { ServerWorkspace } from './server-workspace.js';

const everywhere = { start: { line: 0, character: 0 }, end: { line: 1000, character: 0 } };
const server = new ServerWorkspace();
for (const path of ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom']) await server.add(path, exampleText(path));
const document = await server.add('a.hotroom', withStandardJob('let step = round_down(upper.top / 2, 1")'));
const telling = { volume: /inside volume/, cutLength: /bench top to ceiling lining/, amps: /current 25 A/, spareRoom: /to spare/, computedValues: /^= 18"$/, parameterNames: /^value:$/ } as const;

async function labels(inlayHints: unknown): Promise<readonly string[]> {
    server.shared.workspace.ConfigurationProvider.updateConfiguration({ settings: { hotroom: { inlayHints } } });
    return (await server.hotroom.lsp.InlayHintProvider?.getInlayHints(document, { textDocument: { uri: document.uri.toString() }, range: everywhere }) ?? []).map(({ label }) => label as string);
}
const kindsIn = (found: readonly string[]): readonly string[] => hintKinds.filter(kind => found.some(label => telling[kind].test(label)));

test('every kind is shown', async () => { expect(kindsIn(await labels({ enabled: true }))).toEqual([...hintKinds]); });
test.each(hintKinds)('%s alone can be turned off, by a setting of the extension', async kind => {
    expect(kindsIn(await labels({ enabled: true, [kind]: false }))).toEqual(hintKinds.filter(other => other !== kind));
    expect(manifest.contributes.configuration.properties).toHaveProperty([`hotroom.inlayHints.${kind}`, 'default'], true);
});
test('a setting that is no yes or no counts as not set', async () => { expect(kindsIn(await labels({ volume: 'never', amps: 0 }))).toEqual([...hintKinds]); });
