import type * as ast from '../syntax/generated/ast.js';
import { baseTermOf, nameWord } from '../syntax/words.js';
import { sharedNamed, type NameLibrary, type TextLayer } from './name-texts.js';

/** A series or a job with the places at which one is made from another: offsets in the text of the one that is made. */
export interface SeriesCall { readonly other: TextLayer; readonly from: { readonly start: number; readonly end: number } }

/** The series or job whose name stands at an offset; where a job says what it is made from, that series. */
export function callableAt(uri: string, offset: number, library: NameLibrary): TextLayer | undefined {
    for (const fact of makersIn(library.root(uri))) {
        const base = baseTermOf(fact);
        if (base && touches(base.word, offset)) return sharedNamed(library, uri, base.word.ref.$refText, ['series']);
        if (touches(nameWord(fact), offset)) return { fact, uri };
    }
    return undefined;
}
/** The series or job that starts at an offset. */
export const callableFrom = (uri: string, start: number, library: NameLibrary): TextLayer | undefined => {
    const fact = makersIn(library.root(uri)).find(({ $cstNode: at }) => at?.offset === start);
    return fact && { fact, uri };
};
const touches = (word: ast.Word | undefined, offset: number): boolean => word?.$cstNode !== undefined && word.$cstNode.offset <= offset && offset <= word.$cstNode.offset + word.ref.$refText.length;
const makersIn = (root: ast.File | undefined): readonly ast.Fact[] => root?.items.filter(({ key }) => key === 'job' || key === 'series') ?? [];

/** Jobs and series made from a series, in all files. */
export function madeFrom(series: ast.Fact, all: readonly string[], library: NameLibrary): readonly SeriesCall[] {
    return all.flatMap(uri => makersIn(library.root(uri)).flatMap((fact): SeriesCall[] => {
        const call = callOf(fact, uri, library);
        return call?.other.fact === series ? [{ other: { fact, uri }, from: call.from }] : [];
    }));
}
/** What a job or a series is made from; nothing when it is made from nothing, or that is not in sight. */
export function callOf(fact: ast.Fact, uri: string, library: NameLibrary): SeriesCall | undefined {
    const base = baseTermOf(fact);
    const at = base?.term.$cstNode;
    const other = base && sharedNamed(library, uri, base.word.ref.$refText, ['series']);
    return other && at && { other, from: { start: at.offset, end: at.end } };
}

/** How many jobs are made from a series, directly or through other series. */
export function countJobsFrom(series: ast.Fact, all: readonly string[], library: NameLibrary, seen = new Set<ast.Fact>()): number {
    if (seen.has(series)) return 0;
    seen.add(series);
    return madeFrom(series, all, library).reduce((count, { other: { fact } }) => count + (fact.key === 'job' ? 1 : countJobsFrom(fact, all, library, seen)), 0);
}
