import type { AstNode } from 'langium';
import type { Finding, Fix } from '../core/finding.js';
import type { Span } from '../core/span.js';
import type { LanguageRuleId } from './language-rules.js';
import { noNames, type Names } from './names.js';

export interface LanguageFinding extends Finding { readonly rule: LanguageRuleId }

/** Where lowering of one document reports to, and how a node finds its place in the text. */
export class Reading {
    readonly findings: LanguageFinding[] = [];
    /**
     * @param names what expressions of this text can see
     * @param isMuted whether mistakes are left to another reading of the same text
     * @param letsOver the `let`s in sight of this text, worked out anew over other names: for what is asked of every job
     */
    constructor(readonly uri: string, private readonly text: string, readonly names: Names = noNames, private readonly isMuted = false, readonly letsOver?: (others: Names) => Names) {}

    /** The same text, seen with other names. */
    withNames(names: Names, isMuted: boolean): Reading { return new Reading(this.uri, this.text, names, isMuted); }

    report(rule: LanguageRuleId, at: AstNode | Span, message: string, more: Partial<Pick<Finding, 'related' | 'fixes' | 'severity' | 'origin'>> = {}): void {
        if (this.isMuted) return;
        this.findings.push({ rule, at: '$type' in at ? this.spanOf(at) : at, message, ...more });
    }

    /** Place of a node. A node without text has been put in by the tidying, and then so has the problem that explains it. */
    spanOf(node: AstNode): Span {
        const cst = node.$cstNode;
        return cst ? { uri: this.uri, start: cst.offset, end: Math.max(cst.end, cst.offset) } : { uri: this.uri, start: 0, end: 0 };
    }
    textOf(node: AstNode): string {
        const { start, end } = this.spanOf(node);
        return this.text.slice(start, end).replace(/\s+/g, ' ');
    }
    /** Whether a sign comes next behind a place, after blanks. */
    followedBy({ end }: Span, sign: string): boolean { return this.text.slice(end, end + 40).trimStart().startsWith(sign); }
    replace(title: string, at: AstNode | Span, newText: string, safety: Fix['safety'] = 'safe'): Fix {
        return { title, safety, edits: [{ span: '$type' in at ? this.spanOf(at) : at, newText }] };
    }
}
