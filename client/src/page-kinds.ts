/** The kinds of page the extension shows. Each is one document of tables, asked of the server by one command. */
import { comparisonSubjectSchema, subjectSchema, type ComparisonSubject, type Subject } from './tables-document.js';

export interface PageKind {
    readonly viewType: string;
    /** Name of its script and style sheet in `dist/page`, and of its icon. */
    readonly file: string;
    /** What its tab and the page are called until there is a document. */
    readonly title: string;
    readonly serverCommand: string;
    /** In the middle of a sentence. */
    readonly what: string;
    readonly working: string;
    /** When the file has no such job. */
    readonly nothing: string;
    /** The setting that says when it is made again. */
    readonly refreshSetting: string;
    /** Reads back what a page shows, from what the page kept across a reload. */
    readonly readSubject: (state: unknown) => PageSubject | undefined;
}
export type PageSubject = Subject | ComparisonSubject;
export interface Asked { readonly kind: PageKind; readonly subject: PageSubject }

export const cutListKind: PageKind = {
    viewType: 'hotroom.cutList', file: 'cut-list', title: 'Cut List', serverCommand: 'hotroom.server.cutList', what: 'cut list',
    working: 'Working out the cut list', nothing: 'This file has no job to make a cut list of.', refreshSetting: 'cutList.refresh',
    readSubject: state => subjectSchema.safeParse(state).data,
};

export const comparisonKind: PageKind = {
    viewType: 'hotroom.comparison', file: 'comparison', title: 'Comparison', serverCommand: 'hotroom.server.compare', what: 'comparison',
    working: 'Comparing', nothing: 'This file has no job to compare.', refreshSetting: 'comparison.refresh',
    readSubject: state => comparisonSubjectSchema.safeParse(state).data,
};

export const pageKinds: readonly PageKind[] = [cutListKind, comparisonKind];

/** Two pages of one key are one page. */
export const keyOf = ({ kind, subject }: Asked): string => JSON.stringify([kind.viewType, subject.uri, subject.job ?? null, 'with' in subject ? subject.with : null]);
