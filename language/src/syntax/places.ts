import type { AstNode, CompositeCstNode, CstNode, LeafCstNode, RootCstNode } from 'langium';
import * as ast from './generated/ast.js';
import type { TokenType } from './token-list.js';

type Range = CstNode['range'];

/**
 * Where nodes of the tree stand in the text. They answer what Langium's concrete tree answers, without holding it: a place is two offsets, its
 * parts are those of its node, and lines are counted when somebody asks.
 */
abstract class Place implements CstNode {
    abstract readonly astNode: AstNode;
    get hidden(): boolean { return false; }
    constructor(readonly offset: number, public end: number) {}

    get length(): number { return this.end - this.offset; }
    get root(): FilePlace {
        let node = this.astNode;
        while (node.$container) node = node.$container;
        if (node.$cstNode instanceof FilePlace) return node.$cstNode;
        throw new Error(`A ${this.astNode.$type} at ${this.offset} stands in no file`);
    }
    get text(): string { return this.root.fullText.substring(this.offset, this.end); }
    get range(): Range { return this.root.rangeOf(this.offset, this.end); }
}

/** Place of a node. */
export class NodePlace extends Place implements CompositeCstNode {
    constructor(offset: number, end: number, readonly astNode: AstNode) { super(offset, end); }
    get container(): CompositeCstNode { return placeOf(this.astNode.$container); }
    get content(): CstNode[] {
        return ast.isWord(this.astNode) ? [this.astNode.ref.$refNode ?? []].flat() : partsOf(this.astNode);
    }
}

/** Place of the word that is a name or leads to one: what is under a cursor, what is renamed. */
export class WordPlace extends Place implements LeafCstNode {
    constructor(offset: number, end: number, readonly astNode: AstNode, readonly tokenType: TokenType) { super(offset, end); }
    get container(): CompositeCstNode { return placeOf(this.astNode); }
}

/** Place of the whole file; knows its lines. */
export class FilePlace extends Place implements RootCstNode {
    private lineStarts: readonly number[] | undefined;
    constructor(readonly fullText: string, offset: number, end: number, readonly astNode: AstNode) { super(offset, end); }
    get content(): CstNode[] { return partsOf(this.astNode); }

    rangeOf(offset: number, end: number): Range {
        return { start: this.positionOf(offset), end: this.positionOf(end) };
    }
    private positionOf(offset: number): Range['start'] {
        const starts = this.lineStarts ??= lineStartsOf(this.fullText);
        let [low, high] = [0, starts.length - 1];
        while (low < high) {
            const middle = (low + high + 1) >>> 1;
            if ((starts[middle] ?? Infinity) <= offset) low = middle; else high = middle - 1;
        }
        return { line: low, character: offset - (starts[low] ?? 0) };
    }
}

function placeOf(node: AstNode | undefined): NodePlace | FilePlace {
    const place = node?.$cstNode;
    if (place instanceof NodePlace || place instanceof FilePlace) return place;
    throw new Error(`A ${node?.$type ?? 'node without container'} has no place`);
}

function lineStartsOf(text: string): readonly number[] {
    const starts = [0];
    for (const { index, 0: end } of text.matchAll(/\r\n|\r|\n/g)) starts.push(index + end.length);
    return starts;
}

/** Places of the nodes right inside a node. */
function partsOf(node: AstNode): CstNode[] {
    return Object.entries(node).flatMap(([key, value]: [string, unknown]) => key.startsWith('$') ? [] : (Array.isArray(value) ? value as unknown[] : [value]).flatMap(part => {
        const place = typeof part === 'object' && part !== null && '$type' in part ? (part as AstNode).$cstNode : undefined;
        return place ? [place] : [];
    }));
}
