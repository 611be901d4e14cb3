import { expect, test } from 'vitest';
import { applyChanges, compare, inverse } from '../../language/src/compare/compare.js';
import type { Change } from '../../language/src/compare/change.js';
import { describeChange } from '../../language/src/compare/describe-change.js';
import { ModelReader } from '../exports/model-reader.js';
import { exampleText } from '../support/workspace.js';
import { otherMeaning, sameMeaning, type StagedEdit } from './staged-edits.js';

const today = { year: 2026, month: 11, day: 25 };
const before = new ModelReader();

/** Every edit applies, once. */
function edited(text: string, edits: StagedEdit['edits'] = []): string {
    return edits.reduce((changed, [from, to]) => {
        const pattern = new RegExp(from.trim().split(/\s+/).map(word => word.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('\\s+'));
        if (!pattern.test(changed)) throw new Error(`The text does not say ${from}`);
        return changed.replace(pattern, () => to.trimStart());
    }, text);
}

async function changesOf({ job = 'birch-point.hotroom', edits, used = {}, rewrite = text => text, ...late }: StagedEdit): Promise<readonly Change[]> {
    const text = exampleText(job);
    const after = Object.keys(used).length === 0 ? before : new ModelReader((catalogue, path) => edited(catalogue, used[path]));
    const [old] = await before.models(late.today ? rewrite(edited(text, edits)) : text, job, { today });
    const [now] = await after.models(rewrite(edited(text, edits)), job, { today: late.today ?? today });
    const changes = compare(old!, now!);
    expect(inverse(changes)).toEqual(compare(now!, old!));
    expect(applyChanges(old!, changes)).toEqual(now);
    return changes;
}

test.each(sameMeaning.map(edit => [edit.what, edit] as const))('no change of meaning: %s', async (_, edit) => {
    expect(exampleText(edit.job ?? 'birch-point.hotroom')).not.toBe('');
    expect((await changesOf(edit)).map(show)).toEqual([]);
});

const show = (change: Change): string => {
    const { subject, says, detail } = describeChange(change, { unit: 'in' });
    return `${change.consequence}: ${subject}: ${says}${detail === '' ? '' : `. ${detail}`}`;
};

test('what each edit that changes the meaning changes, and nothing else', async () => {
    const lines: string[] = [];
    for (const edit of otherMeaning) {
        const changes = await changesOf(edit);
        expect(changes, edit.what).not.toEqual([]);
        lines.push(`# ${edit.what}`, ...changes.map(show), '');
    }
    await expect(lines.join('\n')).toMatchFileSnapshot('staged-edits.md');
});
