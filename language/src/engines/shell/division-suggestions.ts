import { feet, longest, negate, plus, shortest, ticks, times, zero, type Length } from '../../core/length.js';
import { divideRun, longestRun, sectionsLeftToRight, soundOffer, stretchesOf, type Division, type FixedSection, type RunInput } from './division.js';
import { hasTooManyMixtures } from './mixtures.js';
import { changeFinder, type VaryingStretch } from './nearest-change.js';

/** A change that helps, with its sign: a run longer (above zero) or shorter, a section further right or left as seen from inside. */
export interface Suggestion {
    readonly change: Length;
    /** Most panels made to measure after it. */
    readonly madeToMeasure: number;
}
/** A section moved by `change`. */
export interface MoveSuggestion extends Suggestion {
    readonly section: string;
}

export interface Suggestions {
    /** Nearest longer and shorter run that closes, openings keeping their distance from the end they are measured from. Empty when the run closes. */
    readonly sizesThatClose: readonly Suggestion[];
    /** Nearest places of one opening, the others standing still, with which the run closes. Empty when the run closes. */
    readonly placesThatClose: readonly MoveSuggestion[];
    readonly sizesThatSave: readonly Suggestion[];
    readonly placesThatSave: readonly MoveSuggestion[];
}

/** True when no small change can help: there is no run, or nothing to fill it with. */
export const isHopeless = (division: Division): boolean => !division.closes
    && division.faults.some(({ kind }) => kind === 'run-has-no-length' || kind === 'run-too-long' || kind === 'no-panels-offered' || kind === 'too-many-mixtures');

/** How the stretches of a run change with its length: only those between an opening held from the left and the next held from the right. */
export function varyingWithSize(input: RunInput): readonly VaryingStretch[] {
    const sections = sectionsLeftToRight(input);
    const moves = (end: FixedSection | undefined, otherwise: 0 | 1): 0 | 1 => end === undefined ? otherwise : end.measuredFrom === 'right' ? 1 : 0;
    return stretchesOf(input).map((stretch, index) => ({
        ends: stretch, offer: soundOffer(input.offer), length: stretch.length,
        grows: (moves(sections[index], 1) - moves(sections[index - 1], 0)) as 1 | 0 | -1,
    }));
}

/** How the stretches change when one section moves to the right. */
export function varyingWithPlace(input: RunInput, moved: FixedSection): readonly VaryingStretch[] {
    const sections = sectionsLeftToRight(input);
    const place = sections.indexOf(moved);
    return stretchesOf(input).map((stretch, index) => ({
        ends: stretch, offer: soundOffer(input.offer), length: stretch.length, grows: index === place ? 1 : index === place + 1 ? -1 : 0,
    }));
}

/** Largest change worth naming: twice the widest panel offered, at most 8 ft; a change beyond that is another room. */
export function changeLimit({ offer }: Pick<RunInput, 'offer'>): Length {
    return shortest(times(longest(offer.madeToMeasure?.to ?? zero, ...offer.modules), 2), feet(8));
}

/**
 * Nearest sizes of the run and places of its openings that close it, and those that save a panel made to measure.
 * Openings keep their order along the wall.
 * A saving is one panel fewer than now, or than the nearest change that closes when the run does not close.
 * @param division the run's own division, when it is known already
 */
export function suggestForRun(input: RunInput, division: Division = divideRun(input)): Suggestions {
    if (isHopeless(division)) return { sizesThatClose: [], placesThatClose: [], sizesThatSave: [], placesThatSave: [] };
    const limit = changeLimit(input);
    const size = suggester(varyingWithSize(input), limit);
    const places = input.sections.map(section => ({ section: section.name, suggest: suggester(varyingWithPlace(input, section), limit) }));
    const any = input.sections.length + 1;
    const byPlace = (most: number): readonly MoveSuggestion[] => places.flatMap(({ section, suggest }) => suggest(most).map(found => ({ section, ...found })));
    const sizesThatClose = division.closes ? [] : size(any);
    const placesThatClose = division.closes ? [] : byPlace(any);
    const now = division.closes ? division.score.madeToMeasure : Math.min(...[...sizesThatClose, ...placesThatClose].map(found => found.madeToMeasure));
    const canSave = Number.isFinite(now) && now > 0;
    return { sizesThatClose, placesThatClose, sizesThatSave: canSave ? size(now - 1) : [], placesThatSave: canSave ? byPlace(now - 1) : [] };
}

/** Suggests the nearest change upwards and the nearest downwards, each with the fewest panels made to measure that it needs. */
export function suggester(stretches: readonly VaryingStretch[], limit: Length): (most: number) => readonly Suggestion[] {
    // An opening far outside its wall leaves a stretch longer than any run: no small change is near.
    const isBeyondSearch = stretches.some(({ length, offer }) => length > longestRun || hasTooManyMixtures(offer, plus(length, limit)));
    if (isBeyondSearch) return () => [];
    const find = changeFinder(stretches, limit);
    return most => ([1, -1] as const).flatMap(direction => {
        const size = find(direction, most);
        if (size === undefined) return [];
        let madeToMeasure = Math.min(most, stretches.length);
        while (madeToMeasure > 0 && find(direction, madeToMeasure - 1) === size) madeToMeasure -= 1;
        return [{ change: direction === 1 ? size : negate(size), madeToMeasure }];
    });
}

/** The run after a suggestion, for showing what it would give. */
export function runAfter(input: RunInput, change: Length): RunInput {
    return {
        ...input, run: plus(input.run, change),
        sections: input.sections.map(section => section.measuredFrom === 'right' ? { ...section, from: ticks(section.from + change) } : section),
    };
}
export function runWithMoved(input: RunInput, name: string, change: Length): RunInput {
    return { ...input, sections: input.sections.map(section => section.name === name ? { ...section, from: plus(section.from, change) } : section) };
}
