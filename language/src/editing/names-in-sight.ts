import { showValue, type Value } from '../core/value.js';
import { lookUp } from '../facts/look-up.js';
import { parametersOf } from '../model/arguments.js';
import type { Block } from '../model/block.js';
import { endOf, type Token } from '../syntax/token-list.js';
import { blocksIn, definitionOf, isBlockKind, isJobLike } from '../vocabulary/index.js';
import { sortOf, type SortOfValue } from './kinds-of-value.js';
import type { SeenJob, Sight } from './offer.js';
import type { RawFact, RawScope, RawText } from './raw-facts.js';
import { headerParts } from './spot.js';

/** A `let` or a parameter that can be named at some place. */
export interface SeenValue {
    readonly name: string;
    readonly is: 'let' | 'parameter';
    /** Its expression, or what the parameter takes. */
    readonly text: string;
    readonly doc: string;
    readonly value: Value | undefined;
    readonly sort: SortOfValue | undefined;
    /** Kind of the block whose name it holds, for a parameter that takes one; `wall` for a wall. */
    readonly holds: string | undefined;
    readonly token: Token | undefined;
}

/** A block, or a kind of block, that a name with points can begin with. */
export interface SeenHead { readonly name: string; readonly kind: string; readonly block: Block | undefined; readonly isKind: boolean; readonly doc: string }

/** The scopes around a place, innermost first. */
export function* scopesAround(scope: RawScope): Generator<RawScope> {
    for (let at: RawScope | undefined = scope; at; at = at.parent) yield at;
}
/** The job, variant or series a place stands in. */
export const jobScope = (scope: RawScope): RawScope | undefined => [...scopesAround(scope)].find(({ kind }) => isJobLike(kind));

/** The text of a `let` behind its sign. */
export function letText(fact: RawFact, raw: RawText): string {
    const sign = fact.tokens.findIndex(({ image }) => image === '=');
    const first = fact.tokens[sign + 1];
    const last = fact.tokens.at(-1);
    return sign < 0 || !first || !last ? '' : raw.text.slice(first.startOffset, endOf(last)).replace(/\s+/g, ' ');
}

const sortsTaken: Readonly<Record<string, SortOfValue>> = { length: 'length', number: 'number', count: 'number', power: 'power', voltage: 'voltage', current: 'current', temperature: 'temperature', flag: 'flag', text: 'text' };
const holdsOf = (takes: string): string | undefined => takes === 'wall' || isBlockKind(takes) ? takes : undefined;

/** Every `let` and parameter a place can see, the nearest first. */
export function valuesInSight(raw: RawText, scope: RawScope, offset: number, sight: Sight): readonly SeenValue[] {
    const job = sight.job?.(offset);
    const found = new Map<string, SeenValue>();
    const add = (seen: Omit<SeenValue, 'value' | 'sort'>, sort?: SortOfValue): void => {
        if (found.has(seen.name)) return;
        const known = job?.analysis.names.find([seen.name]);
        const value = known?.kind === 'value' ? known.value : undefined;
        found.set(seen.name, { ...seen, value, sort: value ? sortOf(value) : sort });
    };
    // A parameter's own values may speak of the parameters before it, and of nothing a job has.
    const inside = scope.kind === 'parameter' ? scope.header : undefined;
    const ofScope = (one: RawScope): void => {
        for (const fact of one.facts) {
            if (inside && one.kind === 'series' && (fact.key?.image === 'let' || fact.start >= inside.start)) continue;
            const [, name] = fact.tokens;
            if (fact.key?.image === 'let' && name && fact.tokens[2]?.image === '=') add({ name: name.image, is: 'let', text: letText(fact, raw), doc: '', holds: undefined, token: name });
            if (one.kind !== 'series' || fact.key?.image !== 'parameter') continue;
            const own = headerParts(raw, fact).name;
            const takes = fact.body?.facts.find(({ key }) => key?.image === 'takes')?.tokens[1]?.image ?? '';
            const doc = fact.body?.facts.find(({ key }) => key?.image === 'doc')?.tokens[1]?.image.slice(1, -1) ?? '';
            if (own) add({ name: own.image, is: 'parameter', text: takes, doc, holds: holdsOf(takes), token: own }, sortsTaken[takes] ?? (takes ? 'word' : undefined));
        }
        const base = one.header && headerParts(raw, one.header).base;
        if (!base || !isJobLike(one.kind)) return;
        for (const parameter of seriesBelow(base.image, sight).flatMap(parametersOf)) {
            const takes = parameter.values.takes?.value ?? '';
            if (parameter.name) add({ name: parameter.name.value, is: 'parameter', text: takes, doc: parameter.values.doc?.value ?? '', holds: holdsOf(takes), token: undefined }, sortsTaken[takes] ?? 'word');
        }
        const series = raw.file.facts.find(fact => fact.key?.image === 'series' && headerParts(raw, fact).name?.image === base.image);
        if (series?.body && series.body !== one && !seen.has(series.body)) { seen.add(series.body); ofScope(series.body); }
    };
    const seen = new Set<RawScope>();
    for (const one of scopesAround(scope)) ofScope(one);
    return [...found.values()];
}

/** A series and those it is made from. */
function seriesBelow(name: string, sight: Sight): readonly Block<'series'>[] {
    const found: Block<'series'>[] = [];
    for (let series = sight.series?.(name); series && !found.includes(series); series = series.base && sight.series?.(series.base.value)) found.push(series);
    return found;
}

/** Blocks and kinds of block that can be named at a place: of its job, or of any job in a house rule. */
export function headsInSight(raw: RawText, scope: RawScope, offset: number, sight: Sight): readonly SeenHead[] {
    const rule = [...scopesAround(scope)].find(({ kind }) => kind === 'rule');
    const kinds: readonly string[] = blocksIn('job').filter(kind => kind !== 'variant');
    const ofKind = (kind: string, block?: Block): SeenHead => ({ name: kind, kind, block, isKind: true, doc: isBlockKind(kind) ? definitionOf(kind).doc : 'Air in and out.' });
    if (rule) {
        const each = rule.facts.find(({ key }) => key?.image === 'each')?.tokens[1]?.image;
        return [...kinds, 'air'].map(kind => ofKind(kind)).sort((a, b) => Number(b.name === each) - Number(a.name === each));
    }
    const own = jobScope(scope);
    if (!own || scope.kind === 'parameter') return [];
    const job = sight.job?.(offset)?.analysis.job.block;
    const heads = new Map<string, SeenHead>();
    for (const block of job?.children ?? []) if (block.name) heads.set(block.name.value, { name: block.name.value, kind: block.kind, block, isKind: false, doc: block.title?.value ?? definitionOf(block.kind).doc });
    const bases = own.header ? headerParts(raw, own.header).base : undefined;
    const others = bases ? seriesBelow(bases.image, sight).flatMap(({ children }) => children) : [];
    for (const { name, kind } of others) if (name && kind !== 'parameter' && !heads.has(name.value)) heads.set(name.value, { name: name.value, kind, block: undefined, isKind: false, doc: definitionOf(kind).doc });
    for (const one of scopesAround(own)) for (const fact of isJobLike(one.kind) ? one.facts : []) {
        const kind = fact.key?.image ?? '';
        const { name } = headerParts(raw, fact);
        if (name && isBlockKind(kind) && kinds.includes(kind) && fact.body && !heads.has(name.image)) heads.set(name.image, { name: name.image, kind, block: undefined, isKind: false, doc: definitionOf(kind).doc });
    }
    const isThere = (kind: string): boolean => (job?.children ?? []).some(block => block.kind === kind) || [...scopesAround(own)].some(one => one.facts.some(({ key, body }) => key?.image === kind && body));
    for (const kind of kinds) if (!heads.has(kind) && isThere(kind)) heads.set(kind, ofKind(kind, isBlockKind(kind) && definitionOf(kind).isRepeatable ? undefined : job?.children.find(block => block.kind === kind)));
    return [...heads.values()];
}

/** What a name with points comes to in the job around a place; a rule's own thing has many values and so none. */
export function valueOfPath(path: readonly string[], job: SeenJob | undefined): Value | undefined {
    if (!job) return undefined;
    const { analysis } = job;
    const found = path.length === 1 ? analysis.names.find(path) : lookUp(analysis.job, analysis.facts, path);
    return found.kind === 'value' ? found.value : undefined;
}
export const showSeen = (value: Value, job: SeenJob): string => `${showValue(value, job.analysis.job.unit)}${job.as === undefined ? '' : ` in ${job.as}`}`;
