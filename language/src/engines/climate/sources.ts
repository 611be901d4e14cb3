import type { Citation } from '../../core/citation.js';

const standard = (document: string, edition: string) => (clause: string, text: string): Citation => ({ kind: 'standard', document, edition, clause, text, fromMemory: true });

/** Documents the climate engine takes its equations and tables from; every figure was written down from memory of them or from public copies. */
export const iso6946 = standard('ISO 6946', '2017');
export const iso10456 = standard('ISO 10456', '2007');
export const en673 = standard('EN 673', '2011');
export const ashrae = standard('ASHRAE Handbook, Fundamentals', '2017');
export const psychrometrics: Citation = ashrae('chapter 1', 'Moist air as a mixture of ideal gases.');
export const woodHandbook = standard('Wood Handbook, FPL-GTR-282', '2021');
export const fluidFlow = standard('ASHRAE Handbook, Fundamentals', '1997');
export const practice = (text: string): Citation => ({ kind: 'practice', text });

/** A figure with where it comes from; `isDefault` when nobody wrote it and a published or customary one stands in. */
export interface SourcedFigure {
    readonly value: number;
    readonly citation: Citation;
    readonly isDefault?: true;
}
