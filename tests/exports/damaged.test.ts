import { expect, test } from 'vitest';
import { modelExport, readModel } from '../../language/src/exports/model-schema.js';
import { exampleText } from '../support/workspace.js';
import { checkLaws } from '../compare/laws.js';
import { ModelReader } from './model-reader.js';

test.each(['birch-point.hotroom', 'house/petrel-wharf.hotroom'])('%s with any line missing, or cut off behind it, still is a model that can be read back and compared', async path => {
    const reader = new ModelReader();
    const lines = exampleText(path).split('\n');
    const [whole] = await reader.models(lines.join('\n'), path);
    for (const [i, line] of lines.entries()) {
        if (line.trim() === '') continue;
        for (const text of [lines.filter((_, k) => k !== i).join('\n'), lines.slice(0, i + 1).join('\n'), [...lines.slice(0, i), line.slice(0, line.length / 2)].join('\n')]) {
            const models = await reader.models(text, path);
            expect(readModel(JSON.stringify(modelExport(models))), line).toEqual({ ok: true, model: modelExport(models) });
            const [job] = models;
            if (job) checkLaws(whole!, job);
        }
    }
});
