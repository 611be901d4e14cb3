import type { JobAnalysis } from '../../language/src/analyze.js';
import type { Figure } from '../../language/src/core/finding.js';
import { showLength, showNumber, type LengthUnit } from '../../language/src/core/show.js';
import type { Part } from '../../language/src/engines/parts/part.js';
import { showEnds, showNotches } from '../../language/src/renderings/cut-list.js';
import { showGoesTo } from '../../language/src/renderings/part-place.js';
import { showCut, showSection } from '../../language/src/renderings/show-figures.js';

/** Everything computed for one job as lines of text: the facts by path, then the parts in the order of the job. Figures are rounded only as a user sees them. */
export function listFacts({ job, facts, results }: JobAnalysis): string {
    const lines = facts.under().map(({ path, value, how }) => `${path} = ${showFigure(value, job.unit)}${how === undefined ? '' : ` (${how})`}`).sort(byText);
    return [`job ${job.block.name?.value ?? ''}`, '', ...lines, '', 'parts: mark | what | count | stock | section | length | ends | cut | goes to', ...results.parts.map(part => listPart(part, job.unit)), ''].join('\n');
}

const byText = (a: string, b: string): number => a < b ? -1 : a > b ? 1 : 0;

function showFigure(figure: Figure, unit: LengthUnit): string {
    switch (figure.kind) {
        case 'length': return showLength(figure.length, unit);
        case 'amount': return `${showNumber(figure.value, 3)} ${figure.unit}`.trimEnd();
        case 'words': return figure.words;
    }
}

function listPart(part: Part, unit: LengthUnit): string {
    const { mark, what, count, material, section, length, allowance, ends, cut, notches, measure } = part;
    return [
        mark, what, String(count), material.stock ?? 'no stock', showSection(section, unit), showCut(length, unit), showEnds(ends), cut, showGoesTo(part, unit),
        ...(allowance === undefined ? [] : [`allowance: ${showCut(allowance, unit)}`]),
        ...(notches.length > 0 ? [`notches: ${showNotches(part, unit)}`] : []), ...(measure === undefined ? [] : [`measure: ${measure}`]),
    ].join(' | ');
}
