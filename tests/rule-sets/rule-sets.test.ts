import { expect, test } from 'vitest';
import { clauseKeys, electricalFamily, findRuleSet, notCheckedBy, ruleSetIds, ruleSets, showFigure, type RuleSet, type RuleSetId } from '../../language/src/rule-sets/index.js';

const sets = (...ids: readonly RuleSetId[]): readonly RuleSet[] => ids.map(id => findRuleSet(id)!);

test('ids are unique words of the language', () => {
    expect(new Set(ruleSetIds).size).toBe(ruleSetIds.length);
    for (const id of ruleSetIds) expect(id).toMatch(/^[a-z][a-z0-9_]*$/);
});

test('good practice is never shown as a code, and codes are never shown as practice', () => {
    for (const set of ruleSets) for (const { citation, key } of set.clauses) {
        expect(citation.kind, `${set.id} ${key}`).toBe(set.id === 'good_practice' ? 'practice' : 'standard');
    }
});

test('every clause has a text, every standard one a document, an edition and a clause', () => {
    for (const set of ruleSets) for (const { citation, key } of set.clauses) {
        expect(citation.text, `${set.id} ${key}`).not.toBe('');
        if (citation.kind === 'standard') for (const part of [citation.document, citation.edition, citation.clause]) expect(part, `${set.id} ${key}`).not.toBe('');
    }
});

test('an uncertain clause says it comes from memory', () => {
    for (const set of ruleSets) for (const { citation, isUncertain, key } of set.clauses) {
        if (isUncertain) expect(citation, `${set.id} ${key}`).toMatchObject({ kind: 'standard', fromMemory: true });
    }
});

test('every figure is of its key\'s kind and a choice is one of its words', () => {
    for (const set of ruleSets) for (const { key, figure } of set.clauses) {
        const { figure: kind, ...rest } = clauseKeys[key];
        expect(figure.kind, `${set.id} ${key}`).toBe(kind);
        if (figure.kind === 'word' && 'words' in rest) expect(rest.words).toContain(figure.value);
        expect(showFigure(figure), `${set.id} ${key}`).not.toMatch(/NaN|undefined|_/);
    }
});

test('every key is spoken of by some set, and every set says what is not checked', () => {
    const spoken = new Set<string>(ruleSets.flatMap(set => set.clauses.map(({ key }) => key)));
    expect(Object.keys(clauseKeys).filter(key => !spoken.has(key))).toEqual([]);
    for (const set of ruleSets) expect(set.notChecked.length, set.id).toBeGreaterThan(0);
});

test('least ends of a range are not above their most ends', () => {
    for (const set of ruleSets) for (const low of set.clauses) {
        if (!low.key.endsWith('-minimum')) continue;
        const high = set.clauses.find(({ key }) => key === low.key.replace(/-minimum$/, '-maximum'));
        const [a, b] = [low.figure, high?.figure];
        if (a.kind === 'length' && b?.kind === 'length') expect(a.value, `${set.id} ${low.key}`).toBeLessThanOrEqual(b.value);
    }
});

test.each([
    [[], undefined], [['good_practice'], undefined], [['us_dwelling'], 'us'], [['us_commercial', 'us_accessible', 'good_practice'], 'us'], [['iec', 'good_practice'], 'iec'], [['us_dwelling', 'iec'], 'both'],
] as const)('electrical rules of %j: %s', (ids, family) => {
    expect(electricalFamily(sets(...ids))).toBe(family);
});

test('what is not checked is listed once however many sets name it', () => {
    const both = notCheckedBy(sets('us_dwelling', 'us_commercial'));
    expect(new Set(both).size).toBe(both.length);
    expect(both.some(item => item.includes('egress'))).toBe(true);
    expect(both.some(item => item.includes('sprinklers'))).toBe(true);
});

test.each([
    [{ kind: 'current', amperes: 0.03 }, '30 mA'], [{ kind: 'current', amperes: 48 }, '48 A'], [{ kind: 'temperature', celsius: 90 }, '194 °F (90 °C)'],
    [{ kind: 'duration', minutes: 90 }, '90 min'], [{ kind: 'duration', minutes: 60 }, '1 h'], [{ kind: 'power', watts: 20_000 }, '20 kW'],
    [{ kind: 'ratio', value: 1.25 }, '125 %'], [{ kind: 'yes_no', value: false }, 'no'],
] as const)('%j is shown as %s', (figure, text) => {
    expect(showFigure(figure)).toBe(text);
});
