import { inches, mm, minus, plus, zero, type Length } from '../../../language/src/core/length.js';
import { divideRun, type Division, type RunInput } from '../../../language/src/engines/shell/division.js';
import type { Listed, Problem } from './enumerate.js';

export const inchModules: readonly Length[] = [inches(24), inches(18), inches(12)];
export const metricModules: readonly Length[] = [mm(600), mm(450), mm(300)];
export const inchRange = { from: inches(6), to: inches(23, 7, 8) };
export const metricRange = { from: mm(150), to: mm(599) };

/** The same question put to the engine. */
export const asRun = (problem: Problem): RunInput => ({
    run: problem.run,
    left: { covered: problem.leftCovered, least: problem.leftLeast },
    right: { covered: problem.rightCovered, least: problem.rightLeast },
    sections: problem.sections.map((section, index) => ({ name: `section ${index + 1}`, from: section.from, width: minus(section.to, section.from), measuredFrom: 'left' })),
    offer: { modules: problem.modules, ...(problem.toMeasure && { madeToMeasure: problem.toMeasure }) },
    softRules: problem.soft.map((zone, index) => ({ kind: 'fastening-zone', name: `zone ${index + 1}`, zone })),
});

/** The three kinds of run the corner schemes make of an outside dimension: through at both ends, between two through walls, and pinwheel. */
export function runsOf(outside: Length, wall: Length, cornerLining: Length, offer: Pick<Problem, 'modules' | 'toMeasure'>): readonly Problem[] {
    const least = plus(wall, cornerLining);
    const none = { sections: [], soft: [], ...offer };
    return [
        { ...none, run: outside, leftCovered: wall, leftLeast: least, rightCovered: wall, rightLeast: least },
        { ...none, run: minus(outside, plus(wall, wall)), leftCovered: zero, leftLeast: zero, rightCovered: zero, rightLeast: zero },
        { ...none, run: minus(outside, wall), leftCovered: wall, leftLeast: least, rightCovered: zero, rightLeast: zero },
    ];
}

/** What both sides say in the same words: widths left to right (made to measure negative) and the figures of preference. */
interface Said { readonly widths: readonly number[]; readonly figures: readonly number[] }
export const said = (listed: Listed | undefined): Said | undefined => listed && { widths: listed.fillings.flat(), figures: listed.figures };
export function saidByEngine(division: Division): Said | undefined {
    if (!division.closes) return undefined;
    const { madeToMeasure, panels, broken, narrowest, madeToMeasureAtEnds } = division.score;
    return {
        widths: division.pieces.flatMap(piece => piece.kind === 'section' ? [] : [piece.kind === 'made_to_measure' ? 0 - piece.width : piece.width]),
        figures: [madeToMeasure, panels, broken, narrowest ?? Infinity, madeToMeasureAtEnds],
    };
}
export const divided = (problem: Problem): Said | undefined => saidByEngine(divideRun(asRun(problem)));
