import { may, type BlockDefinition, type Property } from './block.js';
import { benchBlocks } from './blocks/benches.js';
import { catalogueBlocks } from './blocks/catalogue.js';
import { heaterBlocks } from './blocks/heater.js';
import { jobBlocks } from './blocks/job.js';
import { openingBlocks } from './blocks/openings.js';
import { statementsIn } from './statements.js';
import { holds, type ValueType } from './values.js';

/**
 * Every block and property of the language, declared once. Lowering, completion, hover, the reference page, the highlighting grammar and
 * the types of the model all derive from this table, so adding a property is one entry here.
 */
export const vocabulary = { ...jobBlocks, ...openingBlocks, ...benchBlocks, ...heaterBlocks, ...catalogueBlocks } as const;
export type Vocabulary = typeof vocabulary;
export type BlockKind = keyof Vocabulary;

/** Values of a block's properties by key, as the engines read them. */
export type ValuesOf<K extends BlockKind> = {
    readonly [P in keyof Vocabulary[K]['properties']]: Vocabulary[K]['properties'][P] extends { readonly type: ValueType<infer T> } ? T : never
};

export const blockKinds = Object.keys(vocabulary) as readonly BlockKind[];
const kinds: ReadonlySet<string> = new Set(blockKinds);
export const isBlockKind = (word: string): word is BlockKind => kinds.has(word);
export const definitionOf = (kind: BlockKind): BlockDefinition => vocabulary[kind];

const likeOf = (kind: string): string | undefined => isBlockKind(kind) ? definitionOf(kind).like : undefined;
/** Whether facts of a job may stand in a block of this kind: a job, a series or a variant. */
export const isJobLike = (kind: string): boolean => kind === 'job' || likeOf(kind) === 'job';
/** Blocks of a job that may be left out by a condition. */
export const mayBeLeftOut = (kind: BlockKind): boolean => definitionOf(kind).standsIn.includes('job') && definitionOf(kind).isOwn !== true;
const whenProperty = may(holds, 'The block belongs to the job only where this holds.', { otherwise: 'always' });

const children = new Map<string, readonly BlockKind[]>();
/** Kinds of block that may stand in a block of kind `parent`, or at the top of a `file`. */
export function blocksIn(parent: string): readonly BlockKind[] {
    let found = children.get(parent);
    if (!found) children.set(parent, found = blockKinds.filter(kind => definitionOf(kind).standsIn.some(place => place === parent || (place === likeOf(parent) && definitionOf(kind).isOwn !== true))));
    return found;
}

const keys = new Map<string, ReadonlyMap<string, { readonly key: string; readonly property: Property }>>();
/** Properties of a block by every accepted spelling; empty for a word that is no block. */
export function propertiesOf(kind: string): ReadonlyMap<string, { readonly key: string; readonly property: Property }> {
    let found = keys.get(kind);
    if (!found) {
        const map = new Map<string, { readonly key: string; readonly property: Property }>();
        if (isBlockKind(kind)) {
            for (const [key, property] of Object.entries(definitionOf(kind).properties)) {
                for (const spelling of [key, ...property.aliases ?? []]) map.set(spelling, { key, property });
            }
            if (mayBeLeftOut(kind)) map.set('when', { key: 'when', property: whenProperty });
        }
        keys.set(kind, found = map);
    }
    return found;
}

/** Words people often say for the keys of a block, and the keys they mean. */
export const oftenCalled = (kind: string): ReadonlyMap<string, string> => new Map(!isBlockKind(kind) ? [] : Object.entries<Property>(definitionOf(kind).properties).flatMap(([key, { oftenCalled: words = [] }]) => words.map(word => [word, key] as const)));

/** Whether `word` begins a fact of its own inside a block of kind `parent` (or `file`). */
export function beginsFact(parent: string, word: string): boolean {
    let words = firstWords.get(parent);
    if (!words) firstWords.set(parent, words = new Set([...propertiesOf(parent).keys(), ...blocksIn(parent), ...statementsIn(parent)]));
    return words.has(word);
}
const firstWords = new Map<string, ReadonlySet<string>>();

/** Kinds that other files may name; everything else is seen in its own job only. */
export const isShared = (kind: string): boolean => kind === 'series' || (isBlockKind(kind) && definitionOf(kind).standsIn.includes('catalogue') && kind !== 'rule');
/** The kind of block an `is` in the header of this kind names; catalogue entries are made from others of their kind. */
export const derivesFrom = (kind: string): string | undefined => !isBlockKind(kind) ? undefined : definitionOf(kind).derivesFrom ?? (isShared(kind) ? kind : undefined);
