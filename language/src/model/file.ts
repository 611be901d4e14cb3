import { AstUtils, UriUtils, type LangiumDocument } from 'langium';
import { showList, type LengthUnit } from '../core/show.js';
import { nearestName } from '../core/nearest.js';
import * as ast from '../syntax/generated/ast.js';
import { isReadingReport } from '../syntax/lexer.js';
import type { HotroomServices } from '../syntax/module.js';
import { blocksIn, definitionOf, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import { isKind, type Block, type Given } from './block.js';
import type { HotroomFile, Job } from './job.js';
import { keySpan, lowerBlock, type LoweringContext } from './lower.js';
import { helpForPath } from './nearby-files.js';
import { Reading, type LanguageFinding } from './reading.js';
import { UnknownNames } from './unknown-names.js';

/** A file as a model, with what was wrong with its text. */
export interface LoweredFile {
    readonly file: HotroomFile;
    readonly findings: readonly LanguageFinding[];
    /** The lowered block of a fact of this file's tree, for references from other files. */
    readonly blockOf: (fact: ast.Fact) => Block | undefined;
}

const lowered = new WeakMap<ast.File, LoweredFile>();

/**
 * Lowers a document that has been linked. Kept for as long as its tree lives; `forget` drops it when the files it uses have changed.
 */
export function lowerFile(document: LangiumDocument, services: HotroomServices): LoweredFile {
    const root = document.parseResult.value;
    if (!ast.isFile(root)) throw new Error(`Not a job file: ${document.uri.toString()}`);
    let result = lowered.get(root);
    if (!result) lowered.set(root, result = lower(document, root, services));
    return result;
}
export function forgetLowered(document: LangiumDocument): void {
    const root = document.parseResult.value;
    if (ast.isFile(root)) lowered.delete(root);
}

function lower(document: LangiumDocument, root: ast.File, services: HotroomServices): LoweredFile {
    const uri = document.uri.toString();
    const reading = new Reading(uri, document.textDocument.getText());
    const report = document.parseResult.lexerReport;
    const damaged: ReadonlySet<number> = isReadingReport(report) ? report.damaged : new Set<number>();
    if (isReadingReport(report)) for (const { id, message, start, end, fix } of report.problems) {
        reading.report(id, { uri, start, end }, message, fix ? { fixes: [{ title: fix.title, safety: 'safe', edits: fix.edits.map(edit => ({ span: { uri, start: edit.start, end: edit.end }, newText: edit.newText })) }] } : {});
    }
    // Cannot happen while the tidying does its work; if it does, the designer still gets one message and a model.
    const [error] = document.parseResult.parserErrors;
    if (error && reading.findings.length === 0) {
        const start = Number.isFinite(error.token.startOffset) ? error.token.startOffset : 0;
        reading.report('reading-failed', { uri, start, end: start + Math.max(1, error.token.image.length) }, 'This line cannot be read. Write a word and its value, such as top 37".');
    }
    const blocks = new WeakMap<ast.Fact, Block>();
    const unknown = new UnknownNames(services);
    const context: LoweringContext = {
        reading, damaged,
        resolve: word => {
            const target = word.ref.ref;
            if (!target) return 'unknown';
            const home = AstUtils.getDocument(target);
            return () => home === document ? blocks.get(target) : lowerFile(home, services).blockOf(target);
        },
        unknownName: (word, kinds) => { unknown.add(word, kinds); },
    };
    const top: Block[] = [];
    let isFileWhole = !damaged.has(-1) && lowerUses(document, root, reading, services, damaged);
    for (const item of root.items) {
        if (item.key === 'use') continue;
        if (!isBlockKind(item.key) || !blocksIn('file').includes(item.key)) {
            isFileWhole = false;
            const nearest = nearestName(item.key, [...blocksIn('file'), 'use']);
            reading.report('unknown-word', keySpan(item, reading), `‘${item.key}’ does not stand at the top of a file; ${blocksIn('file').join(', ')} and use do.${nearest ? ` Is ${nearest} meant?` : isBlockKind(item.key) ? ` It belongs in a ${showList(definitionOf(item.key).standsIn, 'or').replaceAll('_', ' ')}: put it between the braces of one.` : ''}`,
                nearest ? { fixes: [reading.replace(`Write ${nearest}`, keySpan(item, reading), nearest)] } : {});
            continue;
        }
        const block = lowerBlock(item, item.key, context);
        remember(item, block, blocks);
        top.push(block);
    }
    reportNamesTaken(top, reading);
    unknown.report(reading, isFileWhole);
    const findings = oneForEachPlace(reading.findings);
    return {
        file: { uri, jobs: top.filter(block => isKind(block, 'job')).map(toJob), catalogues: top.filter(block => isKind(block, 'catalogue')) },
        findings,
        blockOf: fact => blocks.get(fact),
    };
}

/** Pairs each fact with its block, walking both trees in step. */
function remember(fact: ast.Fact, block: Block, blocks: WeakMap<ast.Fact, Block>): void {
    blocks.set(fact, block);
    const inside = fact.body.filter(item => isBlockKind(item.key) && blocksIn(block.kind).includes(item.key) && !(propertiesOf(block.kind).has(item.key) && !item.braced));
    inside.forEach((item, i) => { const child = block.children[i]; if (child) remember(item, child, blocks); });
}

/** @returns whether every `use` leads to a file */
function lowerUses(document: LangiumDocument, root: ast.File, reading: Reading, services: HotroomServices, damaged: ReadonlySet<number>): boolean {
    let isWhole = true;
    for (const item of root.items) {
        if (item.key !== 'use') continue;
        if (damaged.has(item.$cstNode?.offset ?? -2)) { isWhole = false; continue; }
        const [term] = item.phrases[0]?.terms ?? [];
        if (!term || !ast.isText(term)) {
            isWhole = false;
            reading.report('use-not-a-path', term ?? item, 'A path in quotes stands behind use, such as use "../catalogue/tidewater.hotroom".');
        }
    }
    const imports = services.shared.workspace.Imports;
    const seen = new Map<string, { first: ast.Text; names: ReadonlyMap<string, unknown> }>();
    for (const { node, written, target } of imports.uses(document)) {
        if (textIn(node).includes('\\')) {
            isWhole = false;
            reportBackslashes(node, reading);
            continue;
        }
        switch (target.kind) {
            case 'not-a-path':
                isWhole = false;
                reading.report('use-not-a-path', node, `"${written}" is not a path to a job file. Write a path from this file, with / and ending in .hotroom.`);
                break;
            case 'outside':
                isWhole = false;
                reading.report('use-outside-workspace', node, `"${written}" lies outside ${showRoots(services)}; a file may use files inside that only. Open a folder that holds both, or copy the file in.`);
                break;
            case 'file': {
                const key = target.uri.toString();
                if (!services.shared.workspace.LangiumDocuments.hasDocument(target.uri)) {
                    isWhole = false;
                    const { words, nearest } = helpForPath(written, target.uri, document, services);
                    reading.report('use-not-found', node, `There is no file "${written}". ${words}`,
                        nearest !== undefined ? { fixes: [reading.replace(`Use "${nearest}"`, node, `"${nearest}"`)] } : {});
                    break;
                }
                const names = imports.exportsOf(target.uri);
                for (const [other, { first, names: theirs }] of seen) {
                    const both = [...names.keys()].find(name => theirs.has(name));
                    if (both !== undefined && other !== key) reading.report('name-from-two-files', node, `This file and "${textIn(first)}" both give the name ${both}. Use one of them, or rename one.`, { related: [{ at: reading.spanOf(first), message: 'The other file is used here.' }] });
                }
                seen.set(key, { first: node, names });
                break;
            }
        }
    }
    return isWhole;
}
const textIn = (node: ast.Text): string => node.text.slice(1, -1);

/** A text takes a backslash for an escape, so such a path would lead elsewhere than was meant. */
function reportBackslashes(node: ast.Text, reading: Reading): void {
    const typed = textIn(node);
    const turned = typed.replaceAll(/\\+/g, '/');
    const isPath = !turned.startsWith('/') && !turned.includes(':') && turned.endsWith('.hotroom');
    reading.report('use-not-a-path', node, `"${typed}" has backslashes. ${isPath ? `A path is written with /: "${turned}".` : 'Write a path from this file, with / and ending in .hotroom.'}`,
        isPath ? { fixes: [reading.replace(`Write "${turned}"`, node, `"${turned}"`)] } : {});
}

/** The folder a `use` may not leave, by its own name: where it lies is known to whoever opened it. */
function showRoots(services: HotroomServices): string {
    const { roots } = services.shared.workspace.Imports;
    if (roots.length === 0) return 'the folder of this file';
    return `the folder ${showList(roots.map(root => UriUtils.basename(root) || root.path), 'or')}`;
}

function reportNamesTaken(top: readonly Block[], reading: Reading): void {
    const jobs = new Map<string, Block>();
    const entries = new Map<string, Block>();
    const check = (names: Map<string, Block>, block: Block): void => {
        if (!block.name) return;
        const same = names.get(block.name.value);
        if (same && same.span.start !== block.span.start) reading.report('name-taken', block.name.span, `The name ${block.name.value} is taken; give this ${block.kind.replaceAll('_', ' ')} another.`, { related: [{ at: same.name?.span ?? same.head, message: `It names this ${same.kind.replaceAll('_', ' ')}.` }] });
        else names.set(block.name.value, block);
    };
    for (const block of top) {
        check(jobs, block);
        if (block.kind !== 'catalogue') continue;
        // Two entries of one catalogue were compared where the catalogue was read.
        for (const entry of block.children) if (entry.name && !entries.has(entry.name.value)) entries.set(entry.name.value, entry); else if (entry.name && entries.get(entry.name.value) && !block.children.includes(entries.get(entry.name.value) as Block)) check(entries, entry);
    }
}

/** Two findings about the language at one place have one cause; the first stays. */
function oneForEachPlace(findings: readonly LanguageFinding[]): LanguageFinding[] {
    const kept: LanguageFinding[] = [];
    for (const finding of [...findings].sort((a, b) => a.at.start - b.at.start || a.at.end - b.at.end)) {
        if (!kept.some(other => other.at.start === finding.at.start && other.at.end === finding.at.end)) kept.push(finding);
    }
    return kept;
}

function toJob(block: Block<'job'>): Job {
    const all = <K extends Block['kind']>(kind: K): readonly Block<K>[] => block.children.filter(child => isKind(child, kind));
    const one = <K extends Block['kind']>(kind: K): Block<K> | undefined => all(kind)[0];
    const site = one('site');
    const room = one('room');
    const thermometer = one('thermometer');
    return {
        block,
        ...(site && { site }), ...(room && { room }), ...(thermometer && { thermometer }),
        obstructions: (site?.children ?? []).filter(child => isKind(child, 'obstruction')),
        doors: all('door'), windows: all('window'), benches: all('bench'), heaters: all('heater'), circuits: all('circuit'), sensors: all('sensor'),
        controls: all('control'), vents: all('vent'), lights: all('light'), signs: all('sign'), receptacles: all('receptacle'), fittings: all('fitting'),
        duckboards: all('duckboard'),
        unit: unitOf(block),
        isWhole: block.isWhole,
    };
}

/** The unit of the room's width, else of the first length in the job; inches when there is none. */
function unitOf(job: Block): LengthUnit {
    const units: readonly LengthUnit[] = ['in', 'ft_in', 'ft', 'mm', 'cm', 'm'];
    const isUnit = (unit: string | undefined): unit is LengthUnit => units.includes(unit as LengthUnit);
    const room = job.children.find(child => isKind(child, 'room'));
    const ofRoom = (room as Block<'room'> | undefined)?.values.width?.unit;
    if (isUnit(ofRoom)) return ofRoom;
    for (const block of job.children) for (const unit of unitsIn(block)) if (isUnit(unit)) return unit;
    return 'in';
}

const unitsIn = (block: Block): readonly (string | undefined)[] => Object.values<Given<unknown>>(block.values as Readonly<Record<string, Given<unknown>>>).map(({ unit }) => unit);
