import { spoken } from '../core/show.js';
import { isWall } from '../core/geometry.js';
import { nearestName } from '../core/nearest.js';
import { beginsFact, blocksIn, definitionOf, isBlockKind } from '../vocabulary/index.js';
import type { SyntaxProblem } from './problem.js';
import { endOf, isWordLike, withImage, type Token, type TokenTypes } from './token-list.js';
import { keysOfBody, kindToldByBody } from './told-by-body.js';

type Report = (problem: SyntaxProblem) => void;

const mostParts = 4;
/** A word of the language that is written as several: `door model` for door_model. */
export function joinFirstWord(tokens: readonly Token[], context: string, types: TokenTypes, report: Report): readonly Token[] {
    const [first] = tokens;
    if (!first || tokens.length < 2 || !isWordLike(first, types) || beginsFact(context, first.image)) return tokens;
    let parts = 1;
    while (parts < mostParts && tokens[parts] && isWordLike(tokens[parts] ?? first, types)) parts++;
    for (; parts > 1; parts--) {
        const word = tokens.slice(0, parts).map(({ image }) => image).join('_');
        const last = tokens[parts - 1];
        if (!last || !beginsFact(context, word)) continue;
        report({
            id: 'unknown-word', start: first.startOffset, end: endOf(last), damages: [], message: `${word} is one word here.`,
            fix: { title: `Write ${word}`, edits: [{ start: first.startOffset, end: endOf(last), newText: word }] },
        });
        return [{ ...withImage(first, types.word, word), endOffset: endOf(last) - 1 }, ...tokens.slice(parts)];
    }
    return tokens;
}

/** A header as it is meant: a wall behind another word than `on`, and a title without its quotes. */
export function plainHeader(tokens: readonly Token[], types: TokenTypes, report: Report): readonly Token[] {
    const [key, name] = tokens;
    if (!key || !name || !isBlockKind(key.image)) return tokens;
    const definition = definitionOf(key.image);
    if (definition.walls !== 'none') return withOn(tokens, types, report);
    return definition.hasTitle && isWordLike(name, types) && name.image !== 'is' ? withTitle(tokens, name, types, report) : tokens;
}

function withOn(tokens: readonly Token[], types: TokenTypes, report: Report): readonly Token[] {
    const at = tokens.findIndex((token, i) => i > 0 && /^(?:in|at|to|by)$/.test(token.image) && isWall(tokens[i + 1]?.image ?? ''));
    const [word, wall] = [tokens[at], tokens[at + 1]];
    if (!word || !wall || tokens.some(({ image }, i) => i > 0 && i < at && image === 'on')) return tokens;
    const header = [...tokens.slice(0, at).map(({ image }) => image), 'on', wall.image].join(' ');
    report({
        id: 'wall-missing', start: word.startOffset, end: endOf(word), damages: [], message: `A wall stands behind on: ${header}.`,
        fix: { title: 'Write on', edits: [{ start: word.startOffset, end: endOf(word), newText: 'on' }] },
    });
    return tokens.map(token => token === word ? withImage(word, types.word, 'on') : token);
}

/** Words that stand where the title does; a single small word may be a name whose `is` is missing. */
function withTitle(tokens: readonly Token[], name: Token, types: TokenTypes, report: Report): readonly Token[] {
    let end = 2;
    while (tokens[end] && tokens[end]?.image !== 'is' && tokens[end]?.image !== 'on' && (isWordLike(tokens[end] ?? name, types) || tokens[end]?.tokenType === types.number)) end++;
    const words = tokens.slice(2, end);
    const [first, last, after] = [words[0], words.at(-1), tokens[end]];
    if (!first || !last || (after && after.image !== 'is') || !words.some(({ image }) => /^[A-Z]/.test(image))) return tokens;
    const title = `"${words.map(({ image }) => image).join(' ')}"`;
    report({
        id: 'part-not-expected', start: first.startOffset, end: endOf(last), damages: [], message: `A title stands in quotes: ${title}.`,
        fix: { title: 'Put the title in quotes', edits: [{ start: first.startOffset, end: endOf(last), newText: title }] },
    });
    return [...tokens.slice(0, 2), { ...withImage(first, types.text, title), endOffset: endOf(last) - 1 }, ...tokens.slice(end)];
}

/**
 * A header whose first word is no kind of block, mended: the kind is misspelled, or missing and told by what stands in the block.
 * @param body index of its brace
 */
export function withItsKind(header: readonly Token[], tokens: readonly Token[], body: number, context: string, types: TokenTypes): { readonly header: readonly Token[]; readonly problem: SyntaxProblem } | undefined {
    const [key, ...rest] = header;
    if (!key || beginsFact(context, key.image)) return undefined;
    const kinds = blocksIn(context);
    const nearest = kinds.find(one => one === nearestName(key.image, kinds));
    const inside = keysOfBody(tokens, body, types);
    const isNearest = nearest !== undefined && 2 * inside.filter(word => beginsFact(nearest, word)).length >= inside.length;
    const kind = isNearest ? nearest : kindToldByBody(tokens, body, context, types);
    if (!kind) return undefined;
    const [name] = rest;
    const [start, end] = [key.startOffset, endOf(key)];
    if (isNearest || (name && isWordLike(name, types) && name.image !== 'on' && name.image !== 'is')) return {
        header: [withImage(key, types.word, kind), ...rest],
        problem: {
            id: 'unknown-word', start, end, damages: [], message: `‘${key.image}’ is not known ${context === 'file' ? 'at the top of a file' : `in a ${spoken(context)}`}. Is ${kind} meant?`,
            fix: { title: `Write ${kind}`, edits: [{ start, end, newText: kind }] },
        },
    };
    return {
        header: [withImage(key, types.word, kind), ...header],
        problem: {
            id: 'kind-missing', start, end, damages: [], message: `‘${key.image}’ does not say what it is. Put ${kind} before it.`,
            fix: { title: `Put ${kind} before it`, edits: [{ start, end: start, newText: `${kind} ` }] },
        },
    };
}
