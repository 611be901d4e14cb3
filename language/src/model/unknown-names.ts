import { AstUtils, UriUtils, type LangiumDocument } from 'langium';
import { nearestName } from '../core/nearest.js';
import { showList, spoken } from '../core/show.js';
import * as ast from '../syntax/generated/ast.js';
import type { HotroomServices } from '../syntax/module.js';
import { baseTermOf, nameOf, parentOf } from '../syntax/words.js';
import { definitionOf, isBlockKind, isShared } from '../vocabulary/index.js';
import { listNames } from './list-names.js';
import { filesNear } from './nearby-files.js';
import type { Reading } from './reading.js';

/** Names nothing answers to: one message a name, at its first use, with the others as related places. */
export class UnknownNames {
    private readonly names = new Map<string, { readonly words: ast.Word[]; readonly kinds: readonly string[] }>();
    constructor(private readonly services: HotroomServices) {}

    add(word: ast.Word, kinds: readonly string[]): void {
        const name = word.ref.$refText;
        const known = this.names.get(name);
        if (known) known.words.push(word); else this.names.set(name, { words: [word], kinds });
    }

    /** Shared names are not called unknown while a `use` or a line at the top of the file is broken: that one cause has its message. */
    report(reading: Reading, isFileWhole: boolean): void {
        const lost: UnknownName[] = [];
        for (const [name, { words, kinds }] of this.names) {
            const [first] = words;
            if (!first || name === '' || (kinds.some(isShared) && !isFileWhole) || hasNameless(first, kinds)) continue;
            const { help, nearest, isElsewhere } = this.helpFor(first, name, kinds);
            if (isElsewhere) lost.push({ name, words, kinds, first, help });
            else this.reportOne({ name, words, kinds, first, help }, reading, nearest);
        }
        // Several names that nothing in sight is like have one cause: the file that gives them is not used.
        if (lost.length > 1) this.reportUnused(lost, reading);
        else for (const one of lost) this.reportOne(one, reading);
    }

    private reportOne({ name, words, kinds, first, help }: UnknownName, reading: Reading, nearest?: string): void {
        const others = words.slice(1);
        reading.report('unknown-name', first, `There is no ${spokenOf(kinds)} called ${name}. ${help}`, {
            ...(nearest !== undefined && { fixes: [{ title: `Write ${nearest}`, safety: 'safe' as const, edits: words.map(word => ({ span: reading.spanOf(word), newText: nearest })) }] }),
            ...(others.length > 0 && { related: others.map(word => ({ at: reading.spanOf(word), message: `${name} is used here too.` })) }),
        });
    }

    private reportUnused(lost: readonly UnknownName[], reading: Reading): void {
        const [one] = lost;
        if (!one) return;
        const document = AstUtils.getDocument(one.first);
        const { Imports, LangiumDocuments } = this.services.shared.workspace;
        const seen = new Set(Imports.visible(document).map(String));
        const giving = LangiumDocuments.all.filter(({ uri }) => !seen.has(uri.toString())).map(({ uri }) => ({ uri, gives: lost.filter(({ name, kinds }) => Imports.exportsOf(uri).get(name)?.some(({ kind }) => kinds.includes(kind))).length }))
            .toArray().filter(({ gives }) => gives > 0).sort((a, b) => b.gives - a.gives || (a.uri.path < b.uri.path ? -1 : 1));
        const used = Imports.uses(document).filter(({ target }) => target.kind === 'file').map(({ written }) => `"${written}"`);
        const where = used.length === 0 ? 'this file uses no other' : `${used.length === 1 ? 'is' : 'are'} used here: ${showList(used)}`;
        const [best] = giving;
        const path = best && UriUtils.relative(UriUtils.dirname(document.uri), best.uri);
        const near = path === undefined ? filesNear(document, this.services) : [];
        const help = path !== undefined ? `"${path}" gives ${best?.gives === lost.length ? 'them' : `${best?.gives ?? 0} of them`}. Put use "${path}" at the top of the file.`
            : near.length > 0 ? `Put use and the path of the catalogue that has them at the top of the file. ${listNames('', near.map(file => `"${file}"`), 'near it')}`
            : 'Put use and the path of the catalogue that has them at the top of the file.';
        const top = { uri: reading.uri, start: 0, end: 0 };
        reading.report('unknown-name', one.first, `Nothing in sight is called ${showList(lost.map(({ name, kinds }) => `${name} (${spokenOf(kinds)})`))}; ${used.length === 0 ? where : `what ${where}`}. ${help}`, {
            related: lost.slice(1).map(({ first, name }) => ({ at: reading.spanOf(first), message: `${name} is named here.` })),
            ...(path !== undefined && { fixes: [{ title: `Use "${path}"`, safety: 'review' as const, edits: [{ span: top, newText: `use "${path}"\n` }] }] }),
        });
    }

    /** The name that is meant, and in any case the names there are: whoever reads this in a terminal has no list to choose from. */
    private helpFor(word: ast.Word, name: string, kinds: readonly string[]): { readonly help: string; readonly nearest?: string; readonly isElsewhere?: boolean } {
        const scope = this.services.references.ScopeProvider.getScope({ container: word, property: 'ref', reference: word.ref });
        const block = madeBy(word) ?? blockAround(word);
        // A bench does not stand in front of itself, and no entry is made from itself.
        const names = scope.getAllElements().map(description => description.name).filter(other => block === undefined || other !== nameOf(block) || !kinds.includes(block.key)).toArray();
        const nearest = nearestName(name, names);
        if (nearest !== undefined) return { nearest, help: `Is ${nearest} meant?${names.length > 1 ? ` ${listNames(name, names)}` : ''}` };
        const isElsewhere = kinds.some(isShared);
        if (names.length > 0) return { help: listNames(name, names), isElsewhere };
        return { isElsewhere, help: kinds.some(isShared) ? this.whereNoneIs(AstUtils.getDocument(word), spokenOf(kinds)) : `This job has no other ${spokenOf(kinds)}.` };
    }

    private whereNoneIs(document: LangiumDocument, kind: string): string {
        const used = this.services.shared.workspace.Imports.uses(document).filter(({ target }) => target.kind === 'file').map(({ written }) => `"${written}"`);
        if (used.length === 0) return `This file uses no other. Put use and the path of a catalogue with a ${kind} at its top, such as use "catalogue/tidewater.hotroom".`;
        return `This file uses ${showList(used)}, and ${used.length === 1 ? 'it has no' : 'none of them has a'} ${kind}. Use a catalogue that has one.`;
    }
}

interface UnknownName { readonly name: string; readonly words: readonly ast.Word[]; readonly kinds: readonly string[]; readonly first: ast.Word; readonly help: string }

const spokenOf = (kinds: readonly string[]): string => kinds.map(spoken).join(' or ');
function blockAround(word: ast.Word): ast.Fact | undefined {
    const fact = AstUtils.getContainerOfType(word, ast.isFact);
    return fact && parentOf(fact);
}
/** The block a word behind `is` makes. */
function madeBy(word: ast.Word): ast.Fact | undefined {
    const fact = AstUtils.getContainerOfType(word, ast.isFact);
    return fact && baseTermOf(fact)?.word === word ? fact : undefined;
}

/** Whether a block around holds one of these kinds whose name is missing: that has its message, and it may be the one that is meant. */
function hasNameless(word: ast.Word, kinds: readonly string[]): boolean {
    for (let fact = AstUtils.getContainerOfType(word, ast.isFact); fact; fact = parentOf(fact)) {
        if (fact.body.some(one => kinds.includes(one.key) && isBlockKind(one.key) && definitionOf(one.key).name === 'required' && nameOf(one) === undefined)) return true;
    }
    return false;
}
