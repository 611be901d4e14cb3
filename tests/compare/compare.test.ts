import { describe, expect, test } from 'vitest';
import { consequenceOfComputed } from '../../language/src/compare/consequences.js';
import { declaredFacts } from '../../language/src/facts/declared.js';
import { comparisonJsonSchema } from '../../language/src/compare/comparison-json.js';
import { ModelReader } from '../exports/model-reader.js';
import { exampleText } from '../support/workspace.js';
import { checkLaws, checkPairs, checkRenames } from './laws.js';

describe('two jobs', () => {
    test('any two: applying the changes to one gives the other, and the changes back are the inverse', async () => {
        await checkPairs(40, 31);
    });
    test('the same with blocks that have other names', async () => {
        await checkRenames(40, 32);
    });
    test('examples among each other', async () => {
        const reader = new ModelReader();
        const models = [];
        for (const name of ['birch-point', 'birch-point-mirrored', 'gull-watch', 'heron-clinic', 'fulmar-ferry']) models.push(...await reader.models(exampleText(`${name}.hotroom`)));
        for (const a of models) for (const b of models) checkLaws(a, b);
    });
});

test('every computed figure has a consequence, and no other', () => {
    const declared = Object.entries(declaredFacts).flatMap(([kind, facts]) => facts.map(({ path }) => `${kind}.${path}`));
    expect(Object.keys(consequenceOfComputed).sort()).toEqual(declared.sort());
});

test('a comparison has a JSON Schema', () => { expect(JSON.stringify(comparisonJsonSchema())).toContain('hotroom-comparison'); });
