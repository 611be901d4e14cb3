import { describe, expect, test } from 'vitest';
import { clauseKeys, decide, keyOfWord, keyWord, mayBeDecided, ruleSets, settlementOf, showConflict, strictest, type ClauseKey, type RuleSet } from '../../language/src/rule-sets/index.js';
import { decidedWords } from '../../language/src/vocabulary/blocks/job.js';
import { analyzeText } from '../support/workspace.js';
import { withStandardJob } from '../support/standard-job.js';
import { documentNotes } from '../../language/src/renderings/document-notes.js';

const sets = (...ids: readonly string[]): readonly RuleSet[] => ruleSets.filter(({ id }) => ids.includes(id));
const commercial = sets('us_commercial', 'good_practice');

test('the words of the language are the keys in dispute that no figure can settle', () => {
    const disputed = (Object.keys(clauseKeys) as ClauseKey[]).filter(key => ['choice', 'requirement'].includes(clauseKeys[key].sense)
        && strictest(ruleSets, key)?.conflicts.some(({ kind }) => kind !== 'edition'));
    expect(disputed.map(keyWord).sort()).toEqual([...decidedWords].sort());
    for (const word of decidedWords) expect(keyWord(keyOfWord(word) ?? '')).toBe(word);
    expect(keyOfWord('nothing_at_all')).toBeUndefined();
});

describe('a decision', () => {
    const toPractice = { about: 'vent.opening-place', follows: 'common practice' } as const;
    test('makes the text that is followed govern, and shows the other as set aside', () => {
        const decided = strictest(decide(commercial, [toPractice]), 'vent.opening-place');
        expect(decided?.figure).toEqual({ kind: 'word', value: 'across_the_room_low' });
        expect(decided?.conflicts.map(conflict => showConflict(conflict))).toEqual([
            'Place of the ventilation opening: the job follows across the room low (common practice, no source) and sets near top of door (IMC 2018, 914.5) aside.',
        ]);
        // Without it the published text governs.
        expect(strictest(commercial, 'vent.opening-place')?.figure).toEqual({ kind: 'word', value: 'near_top_of_door' });
    });
    test('leaves every other key as it was', () => {
        const decided = decide(commercial, [toPractice]);
        for (const key of Object.keys(clauseKeys) as ClauseKey[]) if (key !== 'vent.opening-place') expect(strictest(decided, key)?.figure, key).toEqual(strictest(commercial, key)?.figure);
    });
    test('never sets aside what nobody may waive', () => {
        const remote = sets('us_dwelling', 'good_practice');
        const against = { about: 'sensor.below-ceiling', follows: 'common practice' } as const;
        expect(settlementOf(remote, against).followed).toHaveLength(1);
        expect(mayBeDecided(remote, against)).toBe(false);
        expect(decide(remote, [against])).toBe(remote);
    });
    test('of a text there is not, or of what is not in dispute, changes nothing', () => {
        expect(decide(commercial, [{ about: 'vent.opening-place', follows: 'IRC 2018' }])).toBe(commercial);
        expect(decide(commercial, [{ about: 'vent.opening-place', follows: ' ' }])).toBe(commercial);
        expect(decide(commercial, [{ about: 'notice.required', follows: 'IMC' }])).toBe(commercial);
    });
});

test('stands in the documents with who decided it and why', async () => {
    const { jobs } = await analyzeText(withStandardJob(`
        rules us_commercial, good_practice
        decision { about vent_opening_place; follows "common practice"; because "letter of the authority"; by "design office" }
    `));
    const [job] = jobs;
    expect(job && documentNotes(job).find(note => note.includes('Decided by'))).toBe('Place of the ventilation opening: the job follows across the room low (common practice, no source) and sets near top of door (IMC 2018, 914.5) aside. Decided by design office: letter of the authority.');
});
test('a dispute of rule sets that are both in force is settled for the rules that read it', async () => {
    const text = (decision: string): string => withStandardJob(`
        rules us_dwelling, us_commercial
        ${decision}
        // without sign caution
    `);
    const missing = async (source: string): Promise<boolean> => (await analyzeText(source)).findings.some(({ rule }) => rule === 'warning-sign-missing');
    expect(await missing(text(''))).toBe(true);
    expect(await missing(text('decision { about notice_required; follows "IMC 2018, 914.5.1, exception"; because "a dwelling"; by "design office" }'))).toBe(false);
});
