import { declaredFacts } from '../facts/declared.js';
import type { Block, Given, Link } from '../model/block.js';
import { definitionOf, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import type { ValueKind } from '../vocabulary/values.js';
import { listOf, sortOfDeclared, sortOfKind, type SortOfValue } from './kinds-of-value.js';
import { walls } from './samples.js';

/** A name that may follow a point: `top`, `ledger.top`, `model`. */
export interface SeenPath {
    readonly path: string;
    readonly doc: string;
    /** What it comes to; absent when only a further name can follow it. */
    readonly sort: SortOfValue | undefined;
    /** Whether a further point may follow. */
    readonly leadsOn: boolean;
}

const pieces: Readonly<Partial<Record<ValueKind, readonly (readonly [string, SortOfValue])[]>>> = {
    size: [['width', 'length'], ['height', 'length']], 'length-range': [['from', 'length'], ['to', 'length']], 'volume-range': [['from', 'volume'], ['to', 'volume']],
    place: [['wall', 'word'], ['distance', 'length']], 'centre-place': [['wall', 'word'], ['distance', 'length']], layer: [['thickness', 'length']],
    supply: [['volts', 'voltage'], ['phases', 'word']], 'wall-lengths': walls.map(wall => [wall, 'length'] as const),
};

/**
 * Names below a kind of block (or `air`): what it can be given and what is computed for it.
 * @param rest words between the block and the last point
 * @param block the block itself, to follow its references and to leave out what it does not say
 */
export function pathsUnder(kind: string, rest: readonly string[], block?: Block): readonly SeenPath[] {
    const [key, ...further] = rest;
    if (key !== undefined) {
        const known = propertiesOf(kind).get(key);
        const { kind: type, refersTo } = known?.property.type ?? {};
        if (known && (type === 'reference' || type === 'layer')) {
            const thickness: SeenPath[] = type === 'layer' && further.length === 0 ? [{ path: 'thickness', doc: 'Its thickness.', sort: 'length', leadsOn: false }] : [];
            return [...thickness, ...(refersTo ?? []).slice(0, 1).flatMap(target => pathsUnder(target, further, block && linked(block, known.key)))];
        }
        if (known && type && further.length === 0) return (pieces[type] ?? []).map(([path, sort]) => ({ path, doc: known.property.doc, sort, leadsOn: false }));
        const child = block?.children.find(({ name }) => name?.value === key);
        if (child) return pathsUnder(child.kind, further, child);
    }
    const prefix = rest.length > 0 ? `${rest.join('.')}.` : '';
    const declared = (declaredFacts[kind as keyof typeof declaredFacts] ?? [])
        .flatMap(fact => fact.path.startsWith('*') ? walls.map(wall => ({ ...fact, path: `${wall}${fact.path.slice(1)}` })) : [fact])
        .filter(({ path }) => path.startsWith(prefix))
        .map((fact): SeenPath => ({ path: fact.path.slice(prefix.length), doc: `Computed: ${fact.title}.`, sort: sortOfDeclared(fact), leadsOn: false }));
    if (rest.length > 0) return declared;
    const given = [...propertiesOf(kind)].flatMap(([spelling, { key: own, property }]): SeenPath[] => {
        if (spelling !== own || own === 'when' || (block && !Object.keys(block.values).includes(own)) || declared.some(({ path }) => path === own)) return [];
        const { kind: type, refersTo } = property.type;
        const sort = sortOfKind(type);
        const leadsOn = pieces[type] !== undefined || (type === 'reference' && refersTo !== undefined);
        return sort === undefined && !leadsOn ? [] : [{ path: own, doc: property.doc, sort, leadsOn }];
    });
    const hasWall = block ? block.walls.length === 1 : isBlockKind(kind) && definitionOf(kind).walls !== 'none';
    return [...given, ...declared, ...(hasWall ? [{ path: 'wall', doc: 'The wall it stands on.', sort: 'word' as const, leadsOn: false }] : [])];
}

function linked(block: Block, key: string): Block | undefined {
    const given = (block.values as Readonly<Record<string, Given<unknown>>>)[key]?.value;
    const link = typeof given === 'object' && given !== null && 'of' in given ? given.of : given;
    return (link as Link | undefined)?.block;
}

/** The same names where the kind stands for all its blocks: each is a list. */
export const asLists = (paths: readonly SeenPath[]): readonly SeenPath[] => paths.map(path => path.sort === undefined ? path : { ...path, sort: listOf(path.sort) });
