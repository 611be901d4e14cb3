import { expect } from 'vitest';
import { modelExport, readModel } from '../../language/src/exports/model-schema.js';
import { checkLaws } from '../compare/laws.js';
import { exampleText } from '../support/workspace.js';
import { ModelReader } from './model-reader.js';

/** Every n-th line of a file left out, the file cut off behind it, and within it: each time there is a model that can be read back and compared. */
export async function damageLines(path: string, every = 1): Promise<void> {
    const reader = new ModelReader();
    const lines = exampleText(path).split('\n');
    const [whole] = await reader.models(lines.join('\n'), path);
    for (const [i, line] of lines.entries()) {
        if (i % every !== 0 || line.trim() === '') continue;
        for (const text of [lines.filter((_, k) => k !== i).join('\n'), lines.slice(0, i + 1).join('\n'), [...lines.slice(0, i), line.slice(0, line.length / 2)].join('\n')]) {
            const models = await reader.models(text, path);
            expect(readModel(JSON.stringify(modelExport(models))), line).toEqual({ ok: true, model: modelExport(models) });
            const [job] = models;
            if (job) checkLaws(whole!, job);
        }
    }
}
