import { assemble } from '../assembly/assemble.js';
import type { Results } from '../assembly/results.js';
import type { Span } from '../core/span.js';
import { sameValue } from '../core/value.js';
import { ComputedNames, type Asked } from '../model/computed-names.js';
import { hasLooseLink } from '../model/block.js';
import type { Job } from '../model/job.js';
import type { JobSource } from '../model/job-source.js';
import type { NameFound, Names } from '../model/names.js';
import type { LanguageFinding } from '../model/reading.js';
import { decisionsOf } from './decisions.js';
import { decide, findRuleSet, type RuleSet } from '../rule-sets/index.js';
import { FactsTree } from './facts-tree.js';
import { lookUp } from './look-up.js';
import { publishFacts, publishFactsAbout } from './publish.js';

/** One job with everything known of it. */
export interface SettledJob {
    readonly job: Job;
    readonly results: Results;
    readonly facts: FactsTree;
    readonly ruleSets: readonly RuleSet[];
    /** What its text can see, with the values of the last step. */
    readonly names: Names;
    /** Mistakes of its text. */
    readonly findings: readonly LanguageFinding[];
}

/** Values of a job may hang on what is computed from other values of it; more steps than this do not settle. */
const mostSteps = 16;

/**
 * Lowers a job and computes it. Where its text asks for computed values, that is done again with what was computed from the text as far as it was
 * known, until every value asked for comes out as it went in. A value is thus never guessed: at first it is left out, and what hangs on it too. Names that
 * need each other never come to rest or never get a value, and are reported with the chain that closes the ring.
 */
export function settle(source: JobSource, checkCancelled?: () => void): SettledJob {
    let known: SettledJob | undefined;
    let answers: ReadonlyMap<string, NameFound> = new Map();
    for (let step = 0; step < mostSteps; step++) {
        checkCancelled?.();
        const before = known;
        const names: ComputedNames = new ComputedNames(before && (path => lookUp(before.job, before.facts, path)));
        known = compute(source, names);
        if (names.asked.length === 0) return known;
        const { job, facts } = known;
        const next = new Map(names.asked.map(({ path }) => [path, lookUp(job, facts, path.split('.'))]));
        if (before && isSame(answers, next)) return { ...known, findings: [...known.findings, ...withoutValue(names, next, known)] };
        if (step === mostSteps - 1) return { ...known, findings: [...known.findings, ...restless(names, answers, next, known)] };
        answers = next;
    }
    return known ?? compute(source, new ComputedNames());
}

function compute(source: JobSource, names: ComputedNames): SettledJob {
    const { job, findings, names: seen } = source.lower(names);
    const ruleSets = decide((job.block.values.rules?.value ?? []).flatMap(id => findRuleSet(id) ?? []), decisionsOf(job));
    const results = assemble(job, ruleSets);
    return { job, results, facts: new FactsTree(() => publishFacts(job, results)), ruleSets, names: seen, findings };
}

function isSame(before: ReadonlyMap<string, NameFound>, after: ReadonlyMap<string, NameFound>): boolean {
    return [...after].every(([path, found]) => isSameAnswer(before.get(path), found));
}
const isSameAnswer = (a: NameFound | undefined, b: NameFound): boolean =>
    a?.kind === 'value' && b.kind === 'value' ? sameValue(a.value, b.value) : a?.kind === b.kind;

/** Names that never got a value: rings with the chain that closes them, and the rest when nothing else explains them. */
function withoutValue(names: ComputedNames, answers: ReadonlyMap<string, NameFound>, settled: SettledJob): readonly LanguageFinding[] {
    const open = names.asked.filter(({ path }) => answers.get(path)?.kind === 'waits');
    if (open.length === 0) return [];
    const uses = [...open, ...names.lets];
    const needs = needsOf(uses, path => missedBy(path, names, settled));
    const found: LanguageFinding[] = [];
    const told = new Set<string>();
    const owners = new Set(uses.map(({ owner }) => owner));
    const isClouded = settled.findings.length > 0 || !settled.job.isWhole || hasLooseLink(settled.job.block);
    for (const { owner, at } of open) {
        const ring = ringFrom(owner, needs);
        if (!ring || ring.some(name => told.has(name))) continue;
        // By way of an engine it is certain only while nothing else keeps the engine from its result.
        if (isClouded && ring.some(name => !owners.has(name))) continue;
        for (const name of ring) told.add(name);
        found.push(ringFinding(ring, at, uses));
    }
    if (found.length > 0 || isClouded) return found;
    const [first] = open;
    return first ? [{ rule: 'name-without-value', at: first.at, message: `${first.owner} needs ${first.path}, which has no value here: the job does not say or give it. Write what it lacks, or a figure of your own.` }] : [];
}

/** Values that were written and could not be read, and without which a path has none: found by working it out once more and watching. */
function missedBy(path: string, names: ComputedNames, { job, ruleSets }: SettledJob): readonly string[] {
    const [first = '', ...rest] = path.split('.');
    const [key = ''] = rest;
    const block = job.block.children.find(one => one.name?.value === first) ?? job.block.children.find(one => !one.name && one.kind === first);
    const kind = block?.kind ?? first;
    // What is written stands for itself: nothing else keeps it from having a value.
    if (block?.written.has(key) && (block.values as Readonly<Record<string, unknown>>)[key] === undefined) return [`${first}.${key}`];
    names.missed.clear();
    lookUp(job, new FactsTree(() => publishFactsAbout(kind, job, assemble(job, ruleSets))), [first, ...rest]);
    return [...names.missed];
}

/** Values that never come to rest: each change of one changes another. */
function restless(names: ComputedNames, before: ReadonlyMap<string, NameFound>, after: ReadonlyMap<string, NameFound>, { job }: SettledJob): readonly LanguageFinding[] {
    const open = names.asked.filter(({ path }) => { const found = after.get(path); return found === undefined || !isSameAnswer(before.get(path), found); });
    const [first] = open;
    if (!first) return [];
    const blocks = new Set(job.block.children.map(block => block.name?.value ?? block.kind));
    const uses = [...open, ...names.lets];
    // What hangs on an engine hangs on every value that does not rest in the block the engine is about, and else on all of them.
    const inBlock = (path: string): readonly string[] => {
        const [block = ''] = path.split('.');
        const same = open.filter(({ owner }) => blocks.has(block) && owner.startsWith(`${block}.`));
        return (same.length > 0 ? same : open).map(({ owner }) => owner);
    };
    return [ringFinding(ringFrom(first.owner, needsOf(uses, inBlock)) ?? [first.owner, first.path, first.owner], first.at, uses)];
}

function ringFinding(ring: readonly string[], at: Span, open: readonly Asked[]): LanguageFinding {
    const others = [...new Set(ring)].slice(1).flatMap(name => { const other = open.find(({ owner }) => owner === name); return other ? [{ at: other.at, message: `${name} is given here.` }] : []; });
    return {
        rule: 'names-in-a-ring', at, ...(others.length > 0 && { related: others }),
        message: `${ring.join(' needs ')} again: none of them can be worked out first. Give one of them a figure.`,
    };
}

/** For each value that waits, what it waits for: another value by its name, or by way of something computed (`path value`). */
function needsOf(uses: readonly Asked[], behind: (path: string) => readonly string[]): ReadonlyMap<string, readonly string[]> {
    const owners = new Set(uses.map(({ owner }) => owner));
    const needs = new Map<string, string[]>();
    for (const { owner, path } of uses) {
        const next = owners.has(path) ? [path] : behind(path).filter(other => owners.has(other)).map(other => other === path ? other : `${path} ${other}`);
        needs.set(owner, [...needs.get(owner) ?? [], ...next]);
    }
    return needs;
}

/** The shortest chain of needs from a value back to itself; an engine's value stands between where it is the reason. */
function ringFrom(start: string, needs: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
    const queue: (readonly string[])[] = [[start]];
    const seen = new Set<string>();
    for (let chain = queue.shift(); chain; chain = queue.shift()) {
        const last = chain.at(-1) ?? start;
        for (const need of needs.get(last) ?? []) {
            const cut = need.indexOf(' ');
            const to = need.slice(cut + 1);
            const next = [...chain, ...cut < 0 ? [] : [need.slice(0, cut)], to];
            if (to === start) return next;
            if (!seen.has(to)) { seen.add(to); queue.push(next); }
        }
    }
    return undefined;
}
