import { UriUtils, type LangiumDocument } from 'langium';
import { showList } from '../core/show.js';
import * as ast from '../syntax/generated/ast.js';
import { isReadingReport } from '../syntax/lexer.js';
import type { HotroomServices } from '../syntax/module.js';
import { helpForPath } from './nearby-files.js';
import type { Reading } from './reading.js';

/** @returns whether every `use` leads to a file */
export function lowerUses(document: LangiumDocument, root: { readonly items: readonly ast.Fact[] }, reading: Reading, services: HotroomServices, damaged: ReadonlySet<number>): boolean {
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
    const missing = new Set<string>();
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
                const used = services.shared.workspace.LangiumDocuments.getDocument(target.uri);
                if (!used) {
                    isWhole = false;
                    if (missing.has(key)) break;
                    missing.add(key);
                    const { words, nearest } = helpForPath(written, target.uri, document, services);
                    reading.report('use-not-found', node, `There is no file "${written}". ${words}`,
                        nearest !== undefined ? { fixes: [reading.replace(`Use "${nearest}"`, node, `"${nearest}"`)] } : {});
                    break;
                }
                // A file beyond what is read has its own message, and what it gives is not called missing here.
                if (isUnread(used)) isWhole = false;
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
const isUnread = ({ parseResult: { lexerReport } }: LangiumDocument): boolean => isReadingReport(lexerReport) && lexerReport.isUnread === true;
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
