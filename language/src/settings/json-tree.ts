import type { Node } from 'jsonc-parser';
import type { Span } from '../core/span.js';

export type Path = readonly PropertyKey[];

/** One key of an object with its value, if it has one. */
export interface Entry { readonly key: string; readonly keyNode: Node; readonly node: Node | undefined }

export const spanOf = (node: Node, uri: string): Span => ({ uri, start: node.offset, end: node.offset + node.length });

export function entriesOf(node: Node | undefined): readonly Entry[] {
    if (node?.type !== 'object') return [];
    return (node.children ?? []).flatMap(({ children: [keyNode, value] = [] }) => keyNode ? [{ key: String(keyNode.value), keyNode, node: value }] : []);
}

/** The value at a path; of a key written twice the last, as in the value of the whole. */
export function nodeAt(root: Node | undefined, path: Path): Node | undefined {
    return path.reduce<Node | undefined>((node, step) => typeof step === 'number' ? node?.children?.[step] : entriesOf(node).findLast(({ key }) => key === step)?.node, root);
}

/** The value of a tree; unlike what comes with the reader, a key such as `__proto__` stays a key. */
export function valueOf(node: Node | undefined): unknown {
    switch (node?.type) {
        case 'array': return (node.children ?? []).map(valueOf);
        case 'object': return Object.fromEntries(entriesOf(node).map(({ key, node: value }) => [key, valueOf(value)]));
        default: return node?.value;
    }
}

/** Every object of a tree with its path. */
export function* objectsIn(node: Node | undefined, path: Path = []): Generator<{ readonly path: Path; readonly entries: readonly Entry[] }> {
    if (node?.type === 'object') yield { path, entries: entriesOf(node) };
    for (const { key, node: value } of entriesOf(node)) yield* objectsIn(value, [...path, key]);
    if (node?.type === 'array') for (const [i, child] of (node.children ?? []).entries()) yield* objectsIn(child, [...path, i]);
}
