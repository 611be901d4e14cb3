import type { LangiumDocument } from 'langium';
import * as ast from '../syntax/generated/ast.js';
import { isReadingReport } from '../syntax/lexer.js';
import { LetValues, letsIn, namesOver, type PlacedLet } from './lets.js';
import { noNames, type Names } from './names.js';
import { keyOffset } from './places.js';
import { Reading } from './reading.js';

/** One document as lowering sees it: its facts, what the reading of the text found damaged, and the `let`s at its top. */
export class DocumentText {
    readonly uri: string;
    readonly text: string;
    readonly items: readonly ast.Fact[];
    readonly damaged: ReadonlySet<number>;

    constructor(readonly document: LangiumDocument) {
        const root = document.parseResult.value;
        if (!ast.isFile(root)) throw new Error(`Not a job file: ${document.uri.toString()}`);
        const report = document.parseResult.lexerReport;
        this.uri = document.uri.toString();
        this.text = document.textDocument.getText();
        this.items = root.items;
        this.damaged = isReadingReport(report) ? report.damaged : new Set<number>();
    }

    reading(names: Names = noNames, isMuted = false, letsOver?: (others: Names) => Names): Reading { return new Reading(this.uri, this.text, names, isMuted, letsOver); }
    /** Whether the reading found something wrong between the ends of a node. */
    isBrokenIn({ $cstNode: place }: ast.Expr): boolean {
        const report = this.document.parseResult.lexerReport;
        return place !== undefined && isReadingReport(report) && report.problems.some(({ start }) => start >= place.offset && start <= place.end);
    }
    isDamaged(fact: ast.Fact): boolean { return this.damaged.has(keyOffset(fact)); }

    /** The `let`s among some facts of this document, whole ones only. */
    letsAmong(facts: readonly ast.Fact[], reading: () => Reading): ReadonlyMap<string, PlacedLet> {
        return new Map(letsIn(facts).filter(({ fact }) => !this.isDamaged(fact)).map(item => [item.name.ref.$refText, { item, reading }]));
    }
    /** The `let`s at the top of the file, with a reading that reports when asked to. */
    fileLets(reading: () => Reading): LetValues {
        return new LetValues(this.letsAmong(this.items, reading), (_owner, _reading, _at, work) => work());
    }

    /** The `let`s among some facts, the nearest first, over the names of whoever asks. Their mistakes are told where they stand, not by who asks. */
    letsOver(scopes: readonly (readonly ast.Fact[])[]): (others: Names) => Names {
        return others => {
            const lets = scopes.map(facts => new LetValues(this.letsAmong(facts, () => muted), (_owner, _reading, _at, work) => work()));
            const names = namesOver(lets, others);
            const muted = this.reading(names, true);
            return names;
        };
    }
}
