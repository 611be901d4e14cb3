import { OperationCancelled, interruptAndCheck, isOperationCancelled, Cancellation, type DocumentValidator, type LangiumDocument, type ValidationOptions } from 'langium';
import { DiagnosticSeverity, type Diagnostic } from 'vscode-languageserver';
import { analyze, release } from '../../../language/src/analyze.js';
import type { ReportedFinding, Severity } from '../../../language/src/core/finding.js';
import type { HotroomServerServices } from '../services.js';
import type { Places } from '../to-lsp.js';
import { ToldBefore } from './told-before.js';

/** What a diagnostic carries beyond its text: its rule, and the titles of its fixes. The fixes are worked out afresh when somebody asks for them. */
export interface DiagnosticData { readonly rule: string; readonly fixes: readonly string[] }

const severities: Readonly<Record<Severity, DiagnosticSeverity>> = {
    error: DiagnosticSeverity.Error, warning: DiagnosticSeverity.Warning, info: DiagnosticSeverity.Information, hint: DiagnosticSeverity.Hint,
};

/** A finding as the protocol has it. One whose place lies in another file stands at the head of this one and leads there. */
export function toDiagnostic(finding: ReportedFinding, uri: string, places: Places, handbook: (rule: string) => string | undefined): Diagnostic {
    const { rule, at, message, severity, related = [], fixes = [] } = finding;
    const isHere = at.uri === uri;
    const page = handbook(rule);
    const others = [...(isHere ? [] : [{ location: places.location(at), message: 'It is found here.' }]), ...related.map(other => ({ location: places.location(other.at), message: other.message }))];
    return {
        range: places.range(isHere ? at : { uri, start: 0, end: 0 }), severity: severities[severity], source: 'hotroom', code: rule, message,
        ...(page !== undefined && { codeDescription: { href: page } }),
        ...(others.length > 0 && { relatedInformation: others }),
        data: { rule, fixes: fixes.map(fix => fix.title) } satisfies DiagnosticData,
    };
}

/** Diagnostics are the findings of `analyze`. When that fails there is one diagnostic that says so, and the server lives. */
export class HotroomValidator implements DocumentValidator {
    private readonly toldBefore: ToldBefore;

    constructor(private readonly services: HotroomServerServices) {
        this.toldBefore = new ToldBefore(services.shared, services.editing.Places);
    }

    async validateDocument(document: LangiumDocument, _options?: ValidationOptions, token = Cancellation.CancellationToken.None): Promise<Diagnostic[]> {
        await interruptAndCheck(token);
        const { Places: places, handbook, log } = this.services.editing;
        const checkCancelled = (): void => { if (token.isCancellationRequested) throw OperationCancelled as unknown as Error; };
        try {
            const run = this.services.editing.analyze ?? analyze;
            const uri = document.uri.toString();
            const circumstances = this.services.editing.Reader.circumstances(document);
            const under = JSON.stringify([circumstances.today, circumstances.settings?.key]);
            const before = this.toldBefore.again(document, under);
            if (before) return before;
            const { file, findings } = run(document, this.services, { checkCancelled, ...circumstances });
            const diagnostics = findings.map(finding => toDiagnostic(finding, uri, places, handbook));
            this.toldBefore.keep(document, under, diagnostics);
            // Nobody looks at a closed file that holds jobs only: it has told what it had to tell, and is worked out again when it is opened.
            const isShared = file.catalogues.length > 0 || file.series.length > 0 || file.rules.length > 0;
            if (!isShared && this.services.shared.workspace.TextDocuments.get(document.uri) === undefined) release(document, this.services);
            return diagnostics;
        } catch (error) {
            if (isOperationCancelled(error)) throw error;
            log(`Checking ${document.uri.toString()} (version ${document.textDocument.version}) failed: ${error instanceof Error ? error.stack ?? error.message : String(error)}`);
            return [{
                range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, severity: DiagnosticSeverity.Error, source: 'hotroom', code: 'check-failed',
                message: `This file could not be checked: ${error instanceof Error ? error.message : String(error)}. Nothing else is known about it. The log has the details; please report them with the file.`,
            }];
        }
    }
}
