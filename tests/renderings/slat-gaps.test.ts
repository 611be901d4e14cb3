import { expect, test } from 'vitest';
import { TICKS_PER_INCH, TICKS_PER_MM, inches } from '../../language/src/core/length.js';
import { multiply, rational } from '../../language/src/core/rational.js';
import { cutListDocument } from '../../language/src/renderings/cut-list-document.js';
import { cutListExport } from '../../language/src/renderings/cut-list-json.js';
import { showGap, showSlatGap, slatGaps } from '../../language/src/renderings/slat-gaps.js';
import { analyzeText, exampleText } from '../support/workspace.js';

const inch = (n: bigint, d = 1n) => multiply(rational(n, d), rational(BigInt(TICKS_PER_INCH)));
const mmOf = (n: bigint, d = 1n) => multiply(rational(n, d), rational(BigInt(TICKS_PER_MM)));

// 2/3" is 85.33 of 128; 13 1/3 mm is 133.33 tenths
test.each([
    ['5/8"', inch(5n, 8n), 'in'], ['1 5/8"', inch(13n, 8n), 'in'], ['1"', inch(1n), 'in'], ['83/128"', inch(83n, 128n), 'ft_in'], ['≈85/128" (exactly 2/3")', inch(2n, 3n), 'in'],
    ['12 mm', mmOf(12n), 'mm'], ['12.5 mm', mmOf(25n, 2n), 'm'], ['≈13.3 mm (exactly 13 1/3 mm)', mmOf(40n, 3n), 'mm'], ['0"', rational(0n), 'in'], ['≈85/128"', rational(1_354_667n), 'in'],
] as const)('a gap of %s', (text, gap, unit) => { expect(showGap(gap, unit)).toBe(text); });

test('slats and their gaps fill the depth exactly, in notes and export', async () => {
    for (const name of ['otter-cove', 'gull-watch', 'fulmar-ferry']) {
        const [job] = (await analyzeText(exampleText(`${name}.hotroom`))).jobs;
        const gaps = slatGaps(job!);
        expect(gaps.length).toBeGreaterThan(0);
        for (const { slats, slatWidth, depth, gap } of gaps) expect(BigInt(slats * slatWidth) * gap.d + BigInt(slats - 1) * gap.n).toBe(BigInt(depth) * gap.d);
        const { notes } = cutListDocument(job!);
        const { slats, practice } = cutListExport([{ analysis: job! }]).jobs[0]!;
        for (const { text } of slats!) expect(notes).toContain(text);
        expect(slats!.map(({ of, count, gap: { ticks } }) => [of, count, ticks.numerator / ticks.denominator])).toEqual(gaps.map(({ kind, slats: count, gap }) => [kind, count, Number(gap.n) / Number(gap.d)]));
        for (const text of practice!) { expect(notes).toContain(text); expect(text).toContain('common practice'); }
        expect(practice).toHaveLength(1);
    }
});

test('a duckboard has gaps too, and one slat has none', async () => {
    const text = exampleText('otter-cove.hotroom').replace('    light lamp', '    duckboard mat { from_left 10"; from_front 4"; width 24"; depth 24"; slat alder_1x4 }\n    light lamp');
    const [job] = (await analyzeText(text)).jobs;
    // 6 slats of 3 1/2" in 24" leave 3" for 5 gaps
    expect(slatGaps(job!).map(one => showSlatGap(one, 'in')).at(-1)).toBe('Duckboard mat: 6 slats 3 1/2" wide make its depth of 24", the first and the last flush with its edges, with 5 equal gaps of ≈77/128" (exactly 3/5").');
    expect(showSlatGap({ kind: 'bench', name: 'step', slats: 1, slatWidth: inches(3, 1, 2), depth: inches(3, 1, 2), gap: rational(0n) }, 'in')).toBe('Bench step: 1 slat 3 1/2" wide, flush with both edges of its depth of 3 1/2".');
});

test('the head rest of a bench follows it', async () => {
    const [job] = (await analyzeText(exampleText('otter-cove.hotroom').replace('top       37"', 'top       37"\n        head_rest yes'))).jobs;
    const gaps = slatGaps(job!);
    expect(gaps.map(({ kind, name }) => `${kind} ${name}`)).toEqual(['bench upper', 'head rest upper', 'bench lower']);
    // three slats with the least gap the bench build allows, 1/4": 3 x 3 1/2 + 2 x 1/4 is 11
    expect(showSlatGap(gaps[1]!, 'in')).toBe('Head rest of bench upper: 3 slats 3 1/2" wide make its depth of 11", the first and the last flush with its edges, with 2 equal gaps of 1/4".');
});
