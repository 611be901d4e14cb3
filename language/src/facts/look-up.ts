import { ofFigure, ofList, ofWord } from '../core/value.js';
import { nameAmong } from '../assembly/naming.js';
import type { Block } from '../model/block.js';
import { walls } from '../core/geometry.js';
import { givenIn, wordsOf } from '../model/given-value.js';
import type { Job } from '../model/job.js';
import type { NameFound } from '../model/names.js';
import { blocksIn, definitionOf, isBlockKind, propertiesOf, type BlockKind } from '../vocabulary/index.js';
import { isDeclared, declaredUnder, wordsOfDeclared } from './declared.js';
import type { FactsTree } from './facts-tree.js';

/**
 * Finds a path in what a job was given and what was computed from it: `upper.depth`, `room.inside.volume`, `stove.model.power`. The kind of a block
 * stands for all blocks of that kind, so `bench.top` is a list; `it` gives one of them the name of its kind.
 */
export function lookUp(job: Job, facts: FactsTree, path: readonly string[], it?: Block): NameFound {
    const [first, ...rest] = path;
    if (first === undefined) return { kind: 'unknown', known: [] };
    if (it?.kind === first) return called(first, prefixOf(job, it), ofBlock(it, prefixOf(job, it), facts, rest));
    const named = job.block.children.find(block => block.name?.value === first);
    if (named) return ofBlock(named, first, facts, rest);
    if (isBlockKind(first) && blocksIn('job').includes(first)) return ofKind(job, first, facts, rest);
    const nameless = job.block.children.find(block => !block.name && prefixOf(job, block) === first);
    if (nameless) return ofBlock(nameless, first, facts, rest);
    if (facts.paths(first).length > 0 || isDeclared(first, path.join('.'))) return ofFact(path.join('.'), facts, facts.paths(first));
    if (job.block.leftOut?.includes(first)) return { kind: 'waits' };
    const ofIt = it ? [...propertiesOf(it.kind).keys(), ...declaredUnder(it.kind)].map(key => `${it.kind}.${key}`) : [];
    return { kind: 'unknown', known: [...job.block.children.flatMap(block => block.name?.value ?? []), ...blocksIn('job'), 'air', ...path.length === 1 ? ofIt : []] };
}

const prefixOf = (job: Job, block: Block): string => nameAmong(block, job.block.children);

function ofKind(job: Job, kind: BlockKind, facts: FactsTree, rest: readonly string[]): NameFound {
    const all = job.block.children.filter(block => block.kind === kind);
    if (!definitionOf(kind).isRepeatable) {
        const [only] = all;
        return only ? ofBlock(only, kind, facts, rest) : { kind: 'waits' };
    }
    const found = all.map(block => ofBlock(block, prefixOf(job, block), facts, rest));
    const at = found.findIndex(one => one.kind === 'unknown');
    const unknown = found[at] && called(kind, prefixOf(job, all[at] as Block), found[at]);
    // One block that does not say a thing leaves the others their say: a list holds what is known. Where none says it there is nothing to go by.
    if (!unknown && all.length > 0 && found.every(one => one.kind === 'waits')) return { kind: 'waits' };
    return unknown ?? { kind: 'value', value: ofList(found.flatMap(one => one.kind === 'value' ? [one.value] : [])) };
}

/** Names to choose from are called as they were asked for: by the kind, not by the one block that was looked at. */
const called = (kind: string, prefix: string, found: NameFound): NameFound =>
    found.kind === 'unknown' ? { ...found, known: found.known.map(name => name.startsWith(`${prefix}.`) ? `${kind}.${name.slice(prefix.length + 1)}` : name) } : found;

function ofBlock(block: Block, prefix: string, facts: FactsTree, rest: readonly string[]): NameFound {
    if (rest.length === 0) return { kind: 'value', value: ofWord(prefix) };
    const path = [prefix, ...rest].join('.');
    const computed = facts.get(path);
    if (computed.kind === 'value') {
        const value = computed.fact.exact ?? ofFigure(computed.fact.value);
        const among = wordsOfDeclared(block.kind, rest.join('.'));
        return value ? { kind: 'value', value, ...(among && { among }) } : { kind: 'waits' };
    }
    const given = givenIn(block, rest);
    switch (given.kind) {
        case 'value': { const property = rest.length === 1 ? propertiesOf(block.kind).get(rest[0] ?? '')?.property : undefined; const among = rest[0] === 'wall' ? walls : property && wordsOf(property.type); return { ...given, ...(among && { among }) }; }
        case 'absent': return { kind: 'waits' };
        case 'unknown': {
            if (isDeclared(block.kind, rest.join('.')) || facts.paths(prefix).includes(path)) return { kind: 'waits' };
            const known = [...new Set([...given.known, ...declaredUnder(block.kind), ...facts.paths(prefix).map(one => one.slice(prefix.length + 1)), 'wall', 'name'])].filter(Boolean);
            return { kind: 'unknown', of: block.kind, known: known.map(one => [prefix, one].join('.')) };
        }
        default: return given satisfies never;
    }
}

function ofFact(path: string, facts: FactsTree, known: readonly string[]): NameFound {
    const found = facts.get(path);
    if (found.kind === 'value') { const value = found.fact.exact ?? ofFigure(found.fact.value); return value ? { kind: 'value', value } : { kind: 'waits' }; }
    return known.includes(path) ? { kind: 'waits' } : { kind: 'unknown', known };
}
