import type { ReportedFinding, Severity } from '../core/finding.js';
import type { Span } from '../core/span.js';
import { escapeMarkdown } from './markdown.js';
import type { Places } from './findings-text.js';
import { allRuleHelp, ruleHelpMarkdown, ruleHelpText, type RuleHelp } from './rule-help.js';

/**
 * Findings as a log of the Static Analysis Results Interchange Format, which code hosts and editors read.
 * Source of the format: OASIS SARIF 2.1.0 with errata 01; columns are UTF-16 code units counted from 1 (its 3.30), file names are relative
 * references under `%SRCROOT%` (its 3.4); clause numbers are from memory.
 */
export interface SarifLog {
    readonly $schema: string;
    readonly version: '2.1.0';
    readonly runs: readonly SarifRun[];
}
interface SarifRun {
    readonly tool: { readonly driver: { readonly name: string; readonly version: string; readonly rules: readonly SarifRule[] } };
    readonly columnKind: 'utf16CodeUnits';
    readonly artifacts: readonly { readonly location: ArtifactLocation }[];
    readonly results: readonly SarifResult[];
}
interface SarifRule {
    readonly id: string;
    readonly shortDescription: SarifText;
    readonly fullDescription: SarifText;
    readonly help: SarifText & { readonly markdown: string };
    readonly defaultConfiguration: { readonly level: Level };
    readonly properties: { readonly tags: readonly string[] };
}
interface SarifResult {
    readonly ruleId: string;
    readonly ruleIndex?: number;
    readonly level: Level;
    readonly message: SarifText;
    readonly locations: readonly SarifLocation[];
    readonly relatedLocations?: readonly SarifLocation[];
    readonly suppressions?: readonly { readonly kind: 'inSource' | 'external'; readonly status: 'accepted'; readonly location: SarifLocation; readonly justification: string }[];
    /** What the severity is by itself, where the settings of the project chose another. */
    readonly properties?: { readonly usualSeverity: Severity; readonly chosenSeverity: Severity | 'off' };
    readonly fixes?: readonly { readonly description: SarifText; readonly artifactChanges: readonly ArtifactChange[] }[];
}
interface SarifText { readonly text: string }
interface ArtifactLocation { readonly uri: string; readonly uriBaseId: '%SRCROOT%'; readonly index?: number }
interface Region { readonly startLine: number; readonly startColumn: number; readonly endLine: number; readonly endColumn: number }
interface SarifLocation {
    readonly id?: number;
    readonly physicalLocation: { readonly artifactLocation: ArtifactLocation; readonly region?: Region };
    readonly message?: SarifText;
}
interface ArtifactChange {
    readonly artifactLocation: ArtifactLocation;
    readonly replacements: readonly { readonly deletedRegion: Region; readonly insertedContent: SarifText }[];
}
type Level = 'error' | 'warning' | 'note';

const levels: Readonly<Record<Severity, Level>> = { error: 'error', warning: 'warning', info: 'note', hint: 'note' };

/**
 * @param files names of the checked files, relative and with `/`
 * @param tool version of the program that checked
 */
export function sarifLog(findings: readonly ReportedFinding[], files: readonly string[], places: Places, tool: { readonly version: string }, leftOut: readonly ReportedFinding[] = []): SarifLog {
    const rules = allRuleHelp();
    const ruleIndexes = new Map(rules.map(({ id }, index) => [id, index]));
    const fileIndexes = new Map(files.map((file, index) => [file, index]));
    const artifact = (uri: string): ArtifactLocation => {
        const name = places.sources.nameOf(uri);
        const index = fileIndexes.get(name);
        return { ...artifactOf(name), ...(index !== undefined && { index }) };
    };
    const region = (span: Span): Region | undefined => {
        const [start, end] = [places.start(span), places.end(span)];
        return start && end && { startLine: start.line + 1, startColumn: start.character + 1, endLine: end.line + 1, endColumn: end.character + 1 };
    };
    const location = (span: Span): SarifLocation => {
        const place = region(span);
        return { physicalLocation: { artifactLocation: artifact(span.uri), ...(place && { region: place }) } };
    };
    const result = ({ rule, severity, message, at, related = [], fixes = [], waived, changed }: ReportedFinding): SarifResult => {
        const ruleIndex = ruleIndexes.get(rule);
        const suppressions = [
            ...(waived ? [{ kind: 'inSource' as const, status: 'accepted' as const, location: location(waived.at), justification: escapeMessage(`${waived.because} (${waived.by}, until ${waived.until})`) }] : []),
            ...(changed?.to === 'off' ? [{ kind: 'external' as const, status: 'accepted' as const, location: location(changed.at), justification: 'Turned off by the settings of the project.' }] : []),
        ];
        return {
            ruleId: rule, ...(ruleIndex !== undefined && { ruleIndex }), level: levels[severity], message: { text: escapeMessage(message) }, locations: [location(at)],
            ...(related.length > 0 && { relatedLocations: related.map((one, index) => ({ id: index + 1, ...location(one.at), message: { text: escapeMessage(one.message) } })) }),
            ...(suppressions.length > 0 && { suppressions }), ...(changed && { properties: { usualSeverity: changed.from, chosenSeverity: changed.to } }),
            ...(fixes.length > 0 && { fixes: fixes.map(({ title, edits }) => ({ description: { text: escapeMessage(title) }, artifactChanges: changes(edits) })) }),
        };
    };
    const changes = (edits: readonly { readonly span: Span; readonly newText: string }[]): ArtifactChange[] =>
        [...new Set(edits.map(({ span }) => span.uri))].map(uri => ({
            artifactLocation: artifact(uri),
            replacements: edits.filter(({ span }) => span.uri === uri).flatMap(({ span, newText }) => {
                const deletedRegion = region(span);
                return deletedRegion ? [{ deletedRegion, insertedContent: { text: newText } }] : [];
            }),
        }));
    return {
        $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
        version: '2.1.0',
        runs: [{
            tool: { driver: { name: 'hotroom', version: tool.version, rules: rules.map(sarifRule) } },
            columnKind: 'utf16CodeUnits',
            artifacts: files.map(file => ({ location: artifactOf(file) })),
            results: [...findings, ...leftOut].map(result),
        }],
    };
}

function sarifRule(help: RuleHelp): SarifRule {
    const { id, title, why, severity, family } = help;
    return {
        id, shortDescription: { text: title }, fullDescription: { text: why }, help: { text: ruleHelpText(help, 100), markdown: `# ${escapeMarkdown(title)}\n\n${ruleHelpMarkdown(help)}` },
        defaultConfiguration: { level: levels[severity] }, properties: { tags: [family] },
    };
}

/** A relative reference: what a URI reserves is percent-encoded, the slashes stay. A first segment with a colon would read as a scheme. */
const artifactOf = (file: string): ArtifactLocation => ({ uri: file.split('/').map(encodeURIComponent).join('/'), uriBaseId: '%SRCROOT%' });

/** Doubled braces are braces and not placeholders, and `[text](1)` would be a link to a related place (3.11.5 and 3.11.6, from memory). */
const escapeMessage = (text: string): string => text.replaceAll(/[{}]/g, '$&$&').replaceAll(/\[(?=[^[\]]*\]\()/g, '\\[');
