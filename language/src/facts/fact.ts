import type { Citation } from '../core/citation.js';
import { amount, inWords, lengthFigure, type Figure } from '../core/finding.js';
import type { Length } from '../core/length.js';
import type { Sourced, Span } from '../core/span.js';
import { ofWord, type Value } from '../core/value.js';
import type { FactEntry, FactProvider } from './facts-tree.js';

type Made = Omit<FactEntry, 'path'>;

/** What a fact is made of; spans of facts that are not written are left out. */
export interface Making {
    readonly how?: string | undefined;
    readonly because?: readonly (Sourced<unknown> | Span | undefined)[];
    readonly source?: Citation | undefined;
    /** The value exactly, for calculations, where the figure shown is rounded or in words. */
    readonly exact?: Value | undefined;
}

function made(title: string, value: Figure, { how, because = [], source, exact }: Making): Made {
    return {
        title, value, because: because.flatMap(item => item === undefined ? [] : ['span' in item ? item.span : item]),
        ...(how !== undefined && { how }), ...(source && { source }), ...(exact && { exact }),
    };
}

/** A fact that is a length. `length` is asked for when somebody reads the fact; nothing means the job does not give it. */
export const lengthFact = (path: string, title: string, length: () => Length | undefined, making: (length: Length) => Making = () => ({})): FactProvider =>
    ({ path, compute: () => { const value = length(); return value === undefined ? undefined : made(title, lengthFigure(value), making(value)); } });
export const amountFact = (path: string, title: string, unit: string, value: () => number | undefined, making: (value: number) => Making = () => ({})): FactProvider =>
    ({ path, compute: () => { const number = value(); return number === undefined ? undefined : made(title, amount(number, unit), making(number)); } });
/** A fact that is one word of the language, shown in other words. */
export const wordFact = <W extends string>(path: string, title: string, word: () => W | undefined, shown: (word: W) => string, making: () => Making = () => ({})): FactProvider =>
    ({ path, compute: () => { const one = word(); return one === undefined ? undefined : made(title, inWords(shown(one)), { ...making(), exact: ofWord(one) }); } });
export const wordsFact = (path: string, title: string, words: () => string | undefined, making: () => Making = () => ({})): FactProvider =>
    ({ path, compute: () => { const text = words(); return text === undefined ? undefined : made(title, inWords(text), making()); } });
export const flagFact = (path: string, title: string, flag: () => boolean | undefined, making: () => Making = () => ({})): FactProvider =>
    wordsFact(path, title, () => { const value = flag(); return value === undefined ? undefined : value ? 'yes' : 'no'; }, making);
