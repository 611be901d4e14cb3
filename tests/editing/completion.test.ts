import { describe, expect, test } from 'vitest';
import { completionsAt } from '../../language/src/editing/complete.js';
import { rawOf, sightOf, withCursor } from './sample.js';

const sight = sightOf({ door_model: ['Leaf24', 'Wide36'], bench: ['upper', 'lower'], stock: ['alder_1x4', 'alder_2x4'], panel_system: ['Skerry'], heater: ['stove'] }, ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom']);
const labelsAt = (marked: string): string[] => { const { text, offset } = withCursor(marked); return completionsAt(rawOf(text), offset, sight).map(({ label }) => label); };
const offerAt = (marked: string, label: string): { text: string; from: string } => {
    const { text, offset } = withCursor(marked);
    const offer = completionsAt(rawOf(text), offset, sight).find(candidate => candidate.label === label);
    if (!offer) throw new Error(`${label} is not offered`);
    return { text: offer.text, from: text.slice(offer.start, offer.end) };
};
const inJob = (body: string): string => `job a {\n    ${body}\n}\n`;
const inBench = (body: string): string => inJob(`bench upper on back {\n        ${body}\n    }`);

describe('facts and blocks', () => {
    test('what the block needs comes first, then what it may have', () => {
        const labels = labelsAt(inBench('<|>'));
        expect(labels.slice(0, 3)).toEqual(['build', 'top', 'depth']);
        expect(labels).toContain('head_rest');
        expect(labels).not.toContain('heater');
    });
    test('what is written is not offered again, whether it stands before or behind', () => {
        const labels = labelsAt(inBench('top 37"\n<|>\ndepth 20"'));
        expect(labels).not.toContain('top');
        expect(labels).not.toContain('depth');
        expect(labels).toContain('build');
    });
    test('another spelling of a fact counts as the fact', () => expect(labelsAt(inJob('site { height 7\'6"; <|> }'))).not.toContain('ceiling'));
    test('a block that may stand once is offered once', () => {
        expect(labelsAt(inJob('<|>'))).toContain('room');
        expect(labelsAt(inJob('room { width 72" }\n    <|>'))).not.toContain('room');
        expect(labelsAt(inJob('bench upper on back { top 37" }\n    <|>'))).toContain('bench');
    });
    test('the word under the cursor is what an offer replaces', () => {
        expect(offerAt(inBench('to<|>p 37"'), 'top')).toEqual({ text: 'top', from: 'top' });
        expect(offerAt(inBench('de<|>'), 'depth')).toEqual({ text: 'depth     ${1:34 3/4"}', from: 'de' });
    });
    test('a metric text gets metric samples', () => expect(offerAt(inJob('bench upper on back {\n        top 940 mm\n        <|>\n    }'), 'depth').text).toBe('depth     ${1:885 mm}'));
    test('on one line a fact is not padded', () => expect(offerAt(inJob('sensor on right { <|> }'), 'below_ceiling').text).toBe('below_ceiling ${1:34 3/4"}'));
    test('a reference brings the names in sight', () => expect(offerAt(inJob('door entry on front {\n        <|>\n    }'), 'model').text).toBe('model     ${1|Leaf24,Wide36|}'));
    test('a new block does not take a name that is there', () => {
        expect(offerAt(inJob('bench upper on back { top 37" }\n    <|>'), 'bench').text).toMatch(/^bench \$\{1:upper_2\} on/);
        expect(offerAt(inJob('<|>'), 'bench').text).toMatch(/^bench \$\{1:upper\} on/);
    });
    test('a block without a sample of its own has its header and what it needs', () => {
        expect(offerAt('catalogue c {\n    <|>\n}', 'material').text).toBe('material ${1:name} {\n\tkind      ${2|wood,insulation,barrier,board,metal,other|}\n}');
    });
    test('at the top of a file', () => expect(labelsAt('<|>')).toEqual(['use', 'job', 'series', 'rule', 'catalogue', 'let']));
    test.each([
        ['before another fact of the line', inBench('  <|>  top 37"')],
        ['behind a closed block', inJob('room { width 72" } <|>')],
        ['in a remark', inBench('top 37" // <|>')],
        ['in a text', inJob('number "<|>"')],
        ['in an open text', inJob('number "24<|>')],
        ['in a figure', inBench('top 3<|>7"')],
        ['in a block that is not known', inJob('sofa a {\n <|>\n}')],
    ])('nothing %s', (_, marked) => expect(labelsAt(marked)).toEqual([]));
});

describe('half-typed text', () => {
    test('a block without its closing brace', () => expect(labelsAt('job a {\n    bench upper on back {\n        top 37"\n        <|>\n').slice(0, 2)).toEqual(['build', 'depth']));
    test('a block not closed before this one', () => {
        expect(labelsAt('job a {\n    site {\n        width 96"\n    room {\n        width 72"\n        <|>\n    }\n}\n')).toContain('system');
    });
    test('a word alone', () => expect(labelsAt(inJob('ben<|>'))).toContain('bench'));
    test('the brace on a line of its own', () => expect(labelsAt('job a\n{\n    <|>\n}')).toContain('room'));
    test('behind a line that cannot be read', () => expect(labelsAt(inBench('= ? 37\n        <|>'))).toContain('top'));
});

describe('values', () => {
    test.each([
        ['words of a choice', inJob('site { floor <|> }'), ['tile', 'concrete', 'vinyl', 'stone', 'other_waterproof', 'wood', 'carpet']],
        ['a choice half typed', inJob('site { floor ti<|> }'), ['tile', 'concrete', 'vinyl', 'stone', 'other_waterproof', 'wood', 'carpet']],
        ['yes or no', inBench('fascia <|>'), ['yes', 'no']],
        ['names of a kind', inJob('door entry on front { model <|> }'), ['Leaf24', 'Wide36']],
        ['not the block itself', inJob('bench lower on back {\n in_front_of <|>\n}'), ['upper']],
        ['a list without what it has', inJob('rules us_dwelling, <|>'), ['us_commercial', 'us_accessible', 'california_accessible', 'ca_electrical', 'iec', 'good_practice']],
        ['walls without those named', inJob('site { free front, <|> }'), ['left', 'back', 'right']],
        ['walls next to its own', inJob('heater stove on right { from <|> }'), ['front', 'back']],
        ['a wall before a distance that stands', inJob('heater stove on right { from <|> 8" }'), ['front', 'back']],
        ['the middle of a thing', inJob('heater stove on right { centre <|> }'), ['from']],
        ['phases behind a voltage', inJob('site { supply 240 V <|> }'), ['single_phase', 'three_phase']],
        ['how a price counts', 'catalogue c { stock s { price 1.20 USD <|> } }', ['per', 'each']],
        ['what a price is per', 'catalogue c { stock s { price 1.20 USD per <|> } }', ['ft', 'm', 'ft2', 'm2', 'each']],
        ['the stock of a layer', 'catalogue c { panel_system p { lining <|> } }', ['alder_1x4', 'alder_2x4']],
        ['units of a length', inBench('top 37 <|>'), ['in', 'ft', 'mm', 'cm', 'm']],
        ['marks where they touch', inBench('top 37<|>'), ['"', '\'', 'in', 'ft', 'mm', 'cm', 'm']],
        ['units of a power', 'catalogue c { heater_model h { power 6 <|> } }', ['kW', 'W']],
        ['the second figure of a size', inJob('site { doorway 32" <|> }'), ['x']],
        ['the end of a range', 'catalogue c { bench_build b { slat_gap 1/4" <|> } }', ['to']],
        ['what a calculation goes on with', inBench('top 37" - <|>'), ['upper', 'min', 'max', 'sum', 'round_down', 'round_up']],
        ['no wall twice', inJob('heater stove on right { from front <|> }'), ['stove', 'min', 'max', 'round_down', 'round_up', 'if … then … else …']],
    ])('%s', (_, marked, labels) => expect(labelsAt(marked)).toEqual(labels));
    test.each([
        ['a second value', inBench('top 37" <|>')],
        ['a value before one that stands', inJob('site { floor <|> tile }')],
        ['a text', inJob('number <|>')],
        ['a third figure', inJob('site { doorway 32" x 80" <|> }')],
    ])('not %s', (_, marked) => expect(labelsAt(marked)).toEqual([]));
});

describe('headers and uses', () => {
    test.each([
        ['on behind a name', inJob('bench upper <|>'), ['on']],
        ['on without a name where none is needed', inJob('sensor <|>'), ['on']],
        ['walls behind on', inJob('door entry on <|>'), ['front', 'left', 'back', 'right']],
        ['another wall where several may stand', inJob('bench upper on back, <|> {'), ['front', 'left', 'right']],
        ['the other files', 'use <|>', ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom']],
        ['the other files in open quotes', 'use "cat<|>', ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom']],
        ['not what is used already', 'use "catalogue/skerry.hotroom"\nuse "<|>"', ['catalogue/heaters.hotroom']],
    ])('%s', (_, marked, labels) => expect(labelsAt(marked)).toEqual(labels));
    test.each([
        ['a name', inJob('bench <|>')],
        ['a second wall where one stands', inJob('door entry on front, <|>')],
        ['a wall where none belongs', inJob('circuit feed <|>')],
        ['a wall before one that stands', inJob('door entry on <|> front {')],
    ])('not %s', (_, marked) => expect(labelsAt(marked)).toEqual([]));
    test('a path takes its quotes with it', () => {
        expect(offerAt('use "cat<|>\njob a { }', 'catalogue/skerry.hotroom')).toEqual({ text: '"catalogue/skerry.hotroom"', from: '"cat' });
        expect(offerAt('use "<|>"', 'catalogue/skerry.hotroom')).toEqual({ text: '"catalogue/skerry.hotroom"', from: '""' });
    });
});
