import { parseTree, type Node, type ParseError } from 'jsonc-parser';
import type { Fix, ReportedFinding } from '../core/finding.js';
import { nearestName } from '../core/nearest.js';
import { showList } from '../core/show.js';
import type { Sourced, Span } from '../core/span.js';
import { entriesOf, nodeAt, objectsIn, spanOf, valueOf, type Entry, type Path } from './json-tree.js';
import { jsonMistake } from './json-mistakes.js';
import { knownRules } from './may-be-lowered.js';
import { familyRefusals } from './names-in-settings.js';
import { patternMistake } from './pattern.js';
import { folderKeys, settingsSchema, topKeys } from './schema.js';
import { settingsRules, type SettingsRuleId } from './settings-rules.js';
import type { ChosenSeverity, FolderSettings, SettingsValues } from './settings.js';
import { valueMistake } from './value-mistakes.js';

/** One settings file, read as far as it can be. */
export interface SettingsFile {
    readonly uri: string;
    readonly text: string;
    readonly values: SettingsValues;
    readonly folders: readonly FolderSettings[];
    /** Every key of `severities` with its place, for the names only jobs know. */
    readonly names: readonly Sourced<string>[];
    readonly findings: readonly ReportedFinding[];
}

/**
 * Reads a settings file. Never fails: a key that cannot be read or has a wrong value is left out and reported at the very text, and every other key holds.
 * @param uri of the file, for places
 */
export function readSettings(text: string, uri: string): SettingsFile {
    if (text.length > mostCharacters) return unreadableSettings(uri, 'This file is too large for settings and was not read.', text);
    try {
        return new Reading(text, uri).read();
    } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        return unreadableSettings(uri, 'These settings are nested too deeply to be read. A settings file has four levels at most.', text);
    }
}
const mostCharacters = 1_000_000;

/** A settings file that says nothing, and why. */
export function unreadableSettings(uri: string, message: string, text = ''): SettingsFile {
    const finding: ReportedFinding = { rule: 'settings-unreadable', severity: 'error', at: { uri, start: 0, end: Math.min(1, text.length) }, message };
    return { uri, text, values: noValues, folders: [], names: [], findings: [finding] };
}

const noValues: SettingsValues = { severities: new Map() };

class Reading {
    private readonly errors: ParseError[] = [];
    private readonly root: Node | undefined;
    private readonly findings: ReportedFinding[] = [];
    /** Paths of what is left out, each as JSON. */
    private readonly broken = new Set<string>();

    constructor(private readonly text: string, private readonly uri: string) {
        this.root = parseTree(text, this.errors, { disallowComments: true });
    }

    read(): SettingsFile {
        const [first] = this.errors;
        // One cause, one message: what the schema would say of half a text is said when the text is whole.
        if (first) this.report('settings-unreadable', this.placeOf(first), this.text.trim() === '' ? 'This file is empty. Settings stand in braces, such as { "units": "mm" }.' : jsonMistake(first));
        this.checkRepeated();
        this.checkSchema(first !== undefined);
        const folders = this.isBroken(['folders']) ? [] : entriesOf(nodeAt(this.root, ['folders'])).flatMap(entry => this.folder(entry));
        const values = this.valuesAt([]);
        const names = [[], ...folders.map(({ pattern }) => ['folders', pattern])].flatMap(path => entriesOf(nodeAt(this.root, [...path, 'severities'])).map(({ key, keyNode }) => ({ value: key, span: spanOf(keyNode, this.uri) })));
        for (const one of [values, ...folders.map(folder => folder.values)]) for (const [name, { value, span }] of one.severities) {
            const words = familyRefusals(name, value);
            if (words !== undefined) this.findings.push({ rule: 'setting-not-allowed', severity: 'info', at: span, message: words });
        }
        return { uri: this.uri, text: this.text, values, folders, names, findings: this.findings.sort((a, b) => a.at.start - b.at.start || a.at.end - b.at.end) };
    }

    private report(rule: SettingsRuleId, at: Span, message: string, fixes?: readonly Fix[]): void {
        this.findings.push({ rule, severity: settingsRules[rule].severity, at, message, ...(fixes && { fixes }) });
    }
    private placeOf({ offset, length }: ParseError): Span {
        const start = Math.min(offset, Math.max(0, this.text.trimEnd().length - 1));
        return { uri: this.uri, start, end: offset > start ? start + 1 : start + Math.max(1, length) };
    }

    private checkRepeated(): void {
        for (const { path, entries } of objectsIn(this.root)) {
            for (const [i, { key, keyNode }] of entries.entries()) {
                const first = entries.slice(0, i).find(other => other.key === key);
                if (!first) continue;
                this.leaveOut([...path, key]);
                this.findings.push({
                    rule: 'setting-repeated', severity: 'error', at: spanOf(keyNode, this.uri), message: `${key} is written twice; one of the two has to go.`,
                    related: [{ at: spanOf(first.keyNode, this.uri), message: 'It is written here first.' }],
                });
            }
        }
    }

    /** @param isSilent whether mistakes are only left out, and told when the text is whole */
    private checkSchema(isSilent: boolean): void {
        const checked = settingsSchema.safeParse(this.root ? valueOf(this.root) : {});
        for (const issue of checked.error?.issues ?? []) {
            if (issue.code === 'unrecognized_keys') {
                for (const key of issue.keys) { this.leaveOut([...issue.path, key]); if (!isSilent) this.unknownKey(issue.path, key); }
                continue;
            }
            this.leaveOut(issue.path);
            const node = nodeAt(this.root, issue.path);
            if (isSilent || !node) continue;
            const { rule, message, meant } = valueMistake(issue.path, valueOf(node));
            const at = spanOf(node, this.uri);
            this.report(rule, at, message, meant === undefined ? undefined : [{ title: `Write ${meant}`, safety: 'safe', edits: [{ span: at, newText: JSON.stringify(meant) }] }]);
        }
    }

    private unknownKey(path: Path, key: string): void {
        const entry = entriesOf(nodeAt(this.root, path)).findLast(other => other.key === key);
        if (!entry) return;
        const keys = path.length === 0 ? topKeys : folderKeys;
        const nearest = nearestName(key, keys);
        const isRule = knownRules.some(({ id }) => id === key);
        const at = spanOf(entry.keyNode, this.uri);
        const help = nearest !== undefined ? `Is ${nearest} meant?` : isRule ? 'Severities of rules stand in severities.' : `There are ${showList(keys)}.`;
        this.report('setting-unknown', at, `There is no setting ${key}${path.length === 0 ? '' : ' for a folder'}. ${help}`,
            nearest === undefined ? undefined : [{ title: `Write ${nearest}`, safety: 'safe', edits: [{ span: at, newText: JSON.stringify(nearest) }] }]);
    }

    private folder({ key, keyNode }: Entry): FolderSettings[] {
        const path = ['folders', key];
        const span = spanOf(keyNode, this.uri);
        const mistake = patternMistake(key);
        if (mistake !== undefined) this.report('setting-value-wrong', span, `"${key}" ${mistake}.`);
        if (mistake !== undefined || this.isBroken(path)) return [];
        return [{ pattern: key, span, values: this.valuesAt(path) }];
    }

    private valuesAt(path: Path): SettingsValues {
        if (path.length === 0 && this.isBroken([])) return noValues;
        const at = <T>(key: string): Sourced<T> | undefined => this.sound<T>([...path, key]);
        const [rules, units, rounding] = [at<NonNullable<SettingsValues['rules']>['value']>('rules'), at<NonNullable<SettingsValues['units']>['value']>('units'), at<NonNullable<SettingsValues['rounding']>['value']>('rounding')];
        const names = this.isBroken([...path, 'severities']) ? [] : entriesOf(nodeAt(this.root, [...path, 'severities']));
        return {
            ...(rules && { rules: { ...rules, value: [...new Set(rules.value)] } }), ...(units && { units }), ...(rounding && { rounding }),
            severities: new Map(names.flatMap(({ key }) => { const chosen = this.sound<ChosenSeverity>([...path, 'severities', key]); return chosen ? [[key, chosen] as const] : []; })),
        };
    }

    /** A value that passed the schema, with its place; nothing for one that did not or that has a mistake of the text in it. */
    private sound<T>(path: Path): Sourced<T> | undefined {
        const node = nodeAt(this.root, path);
        if (!node || this.isBroken(path)) return undefined;
        const { start, end } = spanOf(node.parent ?? node, this.uri);
        if (this.errors.some(({ offset, length }) => offset <= end && start <= offset + length)) return undefined;
        return { value: valueOf(node) as T, span: spanOf(node, this.uri) };
    }

    private leaveOut(path: Path): void { this.broken.add(JSON.stringify(path)); }
    /** Whether a value, or one of the members of a list, is left out. */
    private isBroken(path: Path): boolean {
        const [own, list] = [JSON.stringify(path), JSON.stringify([...path, 0]).slice(0, -2)];
        return [...this.broken].some(one => one === own || (one.startsWith(list) && /^\d+\]$/.test(one.slice(list.length))));
    }
}
