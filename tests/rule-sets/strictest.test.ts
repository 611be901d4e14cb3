import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches } from '../../language/src/core/length.js';
import {
    clause, clauseKeys, findRuleSet, length, magnitude, ruleSetIds, ruleSets, showConflict, strictest, type AnyClause, type ClauseKey, type RuleSet, type RuleSetId,
} from '../../language/src/rule-sets/index.js';

const sets = (...ids: readonly RuleSetId[]): readonly RuleSet[] => ids.map(id => findRuleSet(id)!);
const conflictsOf = (key: ClauseKey, ...ids: readonly RuleSetId[]): readonly string[] => strictest(sets(...ids), key)!.conflicts.map(each => showConflict(each));
const made = (id: string, ...clauses: readonly AnyClause[]): RuleSet => ({ id, title: id, family: 'any', scope: '', documents: [], clauses, notChecked: [] });
const published = { kind: 'standard', document: 'Test code', edition: '1', clause: '1', text: '' } as const;

test('says nothing about a key no set speaks of', () => {
    expect(strictest(sets('ca_electrical'), 'bench.length')).toBeUndefined();
    expect(strictest([], 'bench.length')).toBeUndefined();
});

test('the longer of two least lengths governs, whichever set is named first', () => {
    for (const order of [sets('us_accessible', 'california_accessible'), sets('california_accessible', 'us_accessible')]) {
        const found = strictest(order, 'bench.length')!;
        expect(found.ruleSet.id).toBe('california_accessible');
        expect(found.figure).toEqual(length(inches(48)));
        expect(found.conflicts).toEqual([]);
        expect(found.others.map(({ ruleSet }) => ruleSet.id)).toEqual(['us_accessible']);
    }
});

test('the shorter of two longest times governs: an hour in Canada against six of a product standard', () => {
    expect(strictest(sets('iec', 'ca_electrical'), 'timer.duration')!.ruleSet.id).toBe('ca_electrical');
});

test('a published clause governs over practice, and practice that aims elsewhere is a conflict', () => {
    const found = strictest(sets('good_practice', 'us_dwelling'), 'sensor.below-ceiling')!;
    expect(found.ruleSet.id).toBe('us_dwelling');
    expect(conflictsOf('sensor.below-ceiling', 'good_practice', 'us_dwelling')).toEqual([
        'Distance of a remote sensing element below the ceiling lining: 6" (IRC 2018, M1902.4) governs; 12" (common practice, no source) yields to it.',
    ]);
});

test('practice governs where no document speaks', () => {
    const found = strictest(sets('us_dwelling', 'good_practice'), 'bench.head-clearance')!;
    expect(found.ruleSet.id).toBe('good_practice');
    expect(found.clause.citation.kind).toBe('practice');
});

test('the place of the exhaust: the code governs and the practice is shown beside it', () => {
    const found = strictest(sets('us_commercial', 'good_practice'), 'vent.opening-place')!;
    expect(found.figure.value).toBe('near_top_of_door');
    expect(found.conflicts.map(({ kind, other }) => [kind, other.clause.figure])).toEqual([['practice', { kind: 'word', value: 'across_the_room_low' }]]);
});

test('an older edition never governs and is listed as a conflict of editions', () => {
    const found = strictest(sets('iec'), 'equipment.ingress')!;
    expect(found.figure.value).toBe('IPX4');
    expect(found.conflicts.map(({ kind, other }) => [kind, other.clause.figure])).toEqual([['edition', { kind: 'word', value: 'IP24' }]]);
});

test('an older edition that asked for less is shown as well', () => {
    const editions = made('test', clause('bench.length', length(inches(42)), published), clause('bench.length', length(inches(36)), published, { isSuperseded: true }));
    const found = strictest([editions], 'bench.length')!;
    expect(found.figure.value).toBe(inches(42));
    expect(found.conflicts.map(({ kind }) => kind)).toEqual(['edition']);
    const stricter = made('test', clause('bench.length', length(inches(48)), published, { isSuperseded: true }), clause('bench.length', length(inches(42)), published));
    expect(strictest([stricter], 'bench.length')!.figure.value).toBe(inches(42));
});

test('two codes at odds on a yes or no are a disagreement for the local authority', () => {
    expect(conflictsOf('notice.required', 'us_dwelling', 'us_commercial')).toEqual([
        expect.stringMatching(/disagree; the local authority decides\.$/),
    ]);
});

test('clauses that depend on what the job has not are left out', () => {
    expect(strictest(sets('us_dwelling'), 'vent.opening-size', { without: ['gas_heater'] })).toBeUndefined();
    expect(strictest(sets('us_dwelling'), 'vent.opening-size')!.clause.when).toBe('gas_heater');
    expect(strictest(sets('us_commercial'), 'vent.opening-size', { without: ['gas_heater'] })!.ruleSet.id).toBe('us_commercial');
});

test('an uncertain clause yields to a certain one even when it is stricter', () => {
    const unsure = made('unsure', clause('bench.length', length(inches(60)), published, { isUncertain: true }));
    expect(strictest([unsure, ...sets('us_accessible')], 'bench.length')!.ruleSet.id).toBe('us_accessible');
    expect(strictest([unsure], 'bench.length')!.clause.isUncertain).toBe(true);
});

test('adding a set never makes a limit laxer', () => {
    fc.assert(fc.property(fc.subarray([...ruleSetIds]), fc.constantFrom(...ruleSetIds), fc.constantFrom(...Object.keys(clauseKeys) as ClauseKey[]), (some, more, key) => {
        const isCertainlyPublished = (found: ReturnType<typeof strictest>): boolean => found?.clause.citation.kind === 'standard' && !found.clause.isUncertain;
        const [before, after] = [strictest(sets(...some), key), strictest(sets(...some, more), key)];
        if (!before || !after || !isCertainlyPublished(before)) return;
        const [a, b] = [magnitude(before.figure), magnitude(after.figure)];
        if (a === undefined || b === undefined) return;
        if (clauseKeys[key].sense === 'minimum') expect(b >= a).toBe(true);
        if (clauseKeys[key].sense === 'maximum') expect(b <= a).toBe(true);
    }), { numRuns: 500 });
});

test('the strictest of made-up limits is their largest minimum', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 1, maxLength: 6 }), sizes => {
        const all = sizes.map((size, i) => made(`set ${i}`, clause('bench.length', length(inches(size)), published)));
        const found = strictest(all, 'bench.length')!;
        expect(found.figure.value).toBe(inches(Math.max(...sizes)));
        expect(found.ruleSet.id).toBe(`set ${sizes.indexOf(Math.max(...sizes))}`);
        expect(found.conflicts).toEqual([]);
    }));
});

test('every set is found by its id', () => {
    for (const set of ruleSets) expect(findRuleSet(set.id)).toBe(set);
    expect(findRuleSet('us_dwellings')).toBeUndefined();
});
