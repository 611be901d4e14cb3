import fc from 'fast-check';
import { expect } from 'vitest';
import { formatText } from '../../language/src/editing/format.js';
import { applyChanges } from '../../language/src/editing/text-lines.js';
import { lexer, rawOf } from '../editing/sample.js';
import { JobReader } from './analysed.js';
import { canonicalBlock } from './canonical.js';
import { isBlockText, writeFile, writeValue, type BlockText } from './job-text.js';
import { fileOf, randomJob } from './random-job.js';

const format = (text: string, indent: string): string => applyChanges(text, formatText(rawOf(text), lexer, { indent }));

/** A job as a careless hand writes it: odd indents, semicolons and line ends, blank lines, remarks, one-line blocks. `pick` decides, given a count. */
function careless(block: BlockText, pick: (count: number) => number): string {
    const gap = (): string => [' ', '  ', '\t', '    '][pick(4)] ?? ' ';
    const remark = (): string => pick(6) === 0 ? `${gap()}// ${['as measured', 'ask the shop', 'see 34" "quoted" { }'][pick(3)] ?? ''}` : '';
    const end = (isLast: boolean): string => isLast && pick(2) === 0 ? gap() : pick(4) === 0 ? `${gap()};${gap()}` : `${remark()}${pick(5) === 0 ? '\r\n\r\n\n' : '\n'}`;
    const items = block.body.map((item, i) => {
        const isLast = i === block.body.length - 1;
        // A line end stands before a block and behind it.
        return isBlockText(item) ? `\n${gap()}${careless(item, pick)}${remark()}\n` : `${gap()}${item.key}${gap()}${writeValue(item.value, 'in')}${end(isLast)}`;
    });
    return `${writeValue(block.header, 'in')}${pick(2) === 0 ? '' : gap()}{${pick(3) === 0 ? gap() : `${remark()}\n`}${items.join('')}}`;
}

/** Formatting keeps what a job says, and what is formatted stays as it is. */
export async function checkLayout(numRuns: number, seed: number): Promise<void> {
    const reader = new JobReader();
    await fc.assert(fc.asyncProperty(randomJob, fc.infiniteStream(fc.nat({ max: 1_000_000 })), fc.constantFrom('    ', '  ', '\t'), async ({ job }, numbers, indent) => {
        const file = fileOf(job);
        const text = `${file.uses.map(path => `use   "${path}"`).join('\n\n')}\n${careless(job, count => (numbers.next().value ?? 0) % count)}`;
        const formatted = format(text, indent);
        expect(format(formatted, indent)).toBe(formatted);
        const [before, after, plain] = [await reader.analyse(text), await reader.analyse(formatted), await reader.analyse(writeFile(file))];
        expect(before.file.jobs.map(({ block }) => canonicalBlock(block))).toEqual(plain.file.jobs.map(({ block }) => canonicalBlock(block)));
        expect(after.file.jobs.map(({ block }) => canonicalBlock(block))).toEqual(before.file.jobs.map(({ block }) => canonicalBlock(block)));
        expect(after.findings.map(({ rule, message }) => `${rule}: ${message}`)).toEqual(before.findings.map(({ rule, message }) => `${rule}: ${message}`));
    }), { numRuns, seed });
}
