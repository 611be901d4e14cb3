import { spoken } from '../core/show.js';
import { functions } from '../model/functions.js';
import type { Span } from '../core/span.js';
import { definitionOf, isBlockKind } from '../vocabulary/index.js';
import type { Token } from '../syntax/token-list.js';
import { innermost, type ExpressionPlace } from './expression-place.js';
import { fits, isFigure, type SortOfValue, type Wanted } from './kinds-of-value.js';
import { headsInSight, scopesAround, showSeen, valueOfPath, valuesInSight, type SeenHead } from './names-in-sight.js';
import { plain, type Offer, type Sight } from './offer.js';
import { asLists, pathsUnder } from './paths-in-sight.js';
import { isWordToken, type RawFact, type RawScope, type RawText } from './raw-facts.js';
import { isFigureWanted, sampleCondition, sampleOf, shownValue, sortOfTokens, wantedHere, wordsComparedWith, type ExpressionSight, type WantedHere } from './wanted-here.js';

export interface ExpressionInput {
    readonly raw: RawText;
    readonly fact: RawFact;
    readonly offset: number;
    readonly at: { readonly start: number; readonly end: number };
    readonly sight: Sight;
    /** What the whole expression has to come to. */
    readonly base: Wanted;
    readonly place: ExpressionPlace;
    /** Tokens behind the cursor that belong to the same value. */
    readonly behind: readonly Token[];
    /** Words that may stand here for themselves. */
    readonly words?: readonly string[];
}

export function expressionSight(raw: RawText, scope: RawScope, offset: number, sight: Sight): ExpressionSight {
    const rule = [...scopesAround(scope)].find(({ kind }) => kind === 'rule');
    return {
        raw, values: valuesInSight(raw, scope, offset, sight), heads: headsInSight(raw, scope, offset, sight), job: rule ? undefined : sight.job?.(offset),
        each: rule?.facts.find(({ key }) => key?.image === 'each')?.tokens[1]?.image,
    };
}

/** What can go on at the end of an expression: names, functions and words where a value is wanted, operators where one stands. */
export function completeExpression(input: ExpressionInput): Offer[] {
    const { raw, fact, offset, sight, base, place, behind } = input;
    const seen = expressionSight(raw, fact.scope, offset, sight);
    const here = wantedHere(place, base, seen);
    const [next] = behind;
    if (place.path.length > 0) return belowPoint(input, seen, here);
    if (place.expects === 'operator') return next && !/^[),]$/.test(next.image) && !isWordToken(next, raw.types) ? [] : operators(input, seen, here);
    const isTaken = next !== undefined && (next.tokenType === raw.types.text || next.tokenType === raw.types.length || next.tokenType === raw.types.quantity || next.tokenType === raw.types.number || next.tokenType === raw.types.date
        || (isWordToken(next, raw.types) && !['and', 'or', 'then', 'else', 'x', 'to'].includes(next.image)) || (next.image === '(' && input.at.start === input.at.end));
    return isTaken ? [] : operands(input, seen, here);
}

const isDependent = (spans: readonly Span[], start: number, end: number): boolean => spans.some(span => span.start < end && start < span.end);

/** Names below what stands before the last point. */
function belowPoint({ at, place, fact, behind, raw }: ExpressionInput, seen: ExpressionSight, { wanted, mayBeList }: WantedHere): Offer[] {
    const [name = '', ...rest] = place.path;
    const head = seen.heads.find(one => one.name === name);
    if (!head) return [];
    const isList = isListOf(head, seen);
    const found = pathsUnder(head.kind, rest, head.block);
    const hasMore = behind[0]?.image === '.' && behind[0].startOffset === at.end;
    return (isList ? asLists(found) : found).flatMap((one): Offer[] => {
        const isWanted = one.sort !== undefined && fitsHere(one.sort, wanted, mayBeList || isList && wanted === 'any');
        if (!isWanted && !one.leadsOn) return [];
        const path = [...place.path, ...one.path.split('.')];
        const entry = seen.job?.analysis.facts.get(path.join('.'));
        if (entry?.kind === 'value' && isDependent(entry.fact.because.filter(({ uri }) => uri === seen.job?.analysis.job.block.span.uri), fact.start, fact.end)) return [];
        if (isOwnFact(path, fact, raw)) return [];
        const value = isList || head.name === seen.each ? undefined : valueOfPath(path, seen.job);
        if (!value && !one.leadsOn && seen.job && head.block && !isList) return [];
        const goesOn = one.leadsOn && !isWanted && !hasMore;
        const shown = value && seen.job ? showSeen(value, seen.job) : one.sort ?? '';
        return [{ ...at, label: one.path, kind: 'name', text: goesOn ? `${one.path}.` : one.path, isSnippet: false, order: 0, detail: shown, doc: one.doc, ...(goesOn && { leadsOn: true as const }) }];
    });
}

const isListOf = (head: SeenHead, { each }: ExpressionSight): boolean => head.isKind && head.name !== each && isBlockKind(head.kind) && definitionOf(head.kind).isRepeatable;
const fitsHere = (sort: SortOfValue | undefined, wanted: Wanted, mayBeList: boolean): boolean => {
    const member = sort?.startsWith('list of ') ? sort.slice('list of '.length) as SortOfValue : undefined;
    if (member === undefined) return wanted === 'list' ? sort === 'flag' : fits(sort, wanted);
    return mayBeList && (wanted === 'list' || fits(member, wanted));
};
/** Whether a name is the one the fact gives a value to. */
function isOwnFact(path: readonly string[], { scope, key }: RawFact, raw: RawText): boolean {
    const owner = scope.header;
    const own = owner?.tokens[1];
    const name = own && isWordToken(own, raw.types) && own.image !== 'on' ? own.image : scope.kind;
    return path.length === 2 && (path[0] === name || path[0] === scope.kind) && path[1] === key?.image;
}

function operands(input: ExpressionInput, seen: ExpressionSight, here: WantedHere): Offer[] {
    const { at, raw, fact, behind, place } = input;
    const { wanted, mayBeList } = here;
    const words = innermost(place).left ? here.words : input.words ?? [];
    const offers: Offer[] = words.map(label => ({ ...at, label, kind: 'word', text: label, isSnippet: false, order: 0, detail: '', doc: '' }));
    const closed = ringOf(fact, raw);
    for (const value of seen.values) {
        if (closed.has(value.name) || !fitsHere(value.sort, wanted, mayBeList)) continue;
        offers.push({ ...at, label: value.name, kind: 'value', text: value.name, isSnippet: false, order: 1, detail: shownValue(value, seen), doc: [value.doc, `\`${value.is} ${value.name}${value.is === 'let' ? ' =' : ' takes'} ${value.text}\``].filter(Boolean).join('\n\n') });
    }
    const hasPoint = behind[0]?.image === '.' && behind[0].startOffset === at.end;
    for (const head of seen.heads) {
        const isList = isListOf(head, seen);
        const below = isList ? asLists(pathsUnder(head.kind, [], head.block)) : pathsUnder(head.kind, [], head.block);
        const mayLead = !isList || mayBeList || wanted === 'any';
        const isWhole = isList && wanted === 'list';
        if (isWhole) offers.push({ ...at, label: head.name, kind: 'name', text: head.name, isSnippet: false, order: 2, detail: `every ${spoken(head.kind)}`, doc: head.doc });
        else if (mayLead && below.some(one => fitsHere(one.sort, wanted, mayBeList || wanted === 'any'))) {
            offers.push({ ...at, label: head.name, kind: 'name', text: hasPoint ? head.name : `${head.name}.`, isSnippet: false, order: 2, detail: head.isKind ? isList ? `every ${spoken(head.kind)}` : spoken(head.kind) : spoken(head.kind), doc: head.doc, isQuiet: true, ...(!hasPoint && { leadsOn: true as const }) });
        }
    }
    return behind[0]?.image === '.' ? offers : [...offers, ...calls(input, seen, wanted)];
}

/** The name a `let` gives and those that hang on it: to name one of them there would close a ring. */
function ringOf(fact: RawFact, raw: RawText): ReadonlySet<string> {
    const closed = new Set<string>();
    const own = fact.key?.image === 'let' ? fact.tokens[1]?.image : undefined;
    if (own === undefined) return closed;
    const lets = [...scopesAround(fact.scope)].flatMap(({ facts }) => facts.filter(other => other.key?.image === 'let'));
    closed.add(own);
    for (let size = 0; size < closed.size;) {
        size = closed.size;
        for (const other of lets) if (other.tokens.slice(3).some(token => closed.has(token.image) && isWordToken(token, raw.types))) closed.add(other.tokens[1]?.image ?? '');
    }
    return closed;
}

const listSamples: Readonly<Record<string, readonly [string, string]>> = { length: ['bench', 'length'], power: ['heater', 'power'], current: ['heater', 'current'], number: ['bench', 'seats'] };

/** Functions and choices that can come to what is wanted, each with values to type over. */
function calls({ at, raw, behind, place }: ExpressionInput, seen: ExpressionSight, wanted: Wanted): Offer[] {
    const hasBrackets = behind[0]?.image === '(';
    const isEmpty = !behind.some(({ image }) => image !== ')' && image !== ',');
    const sample = plain(sampleOf(wanted, raw) ?? '1');
    const hasKind = (kind: string): boolean => seen.heads.some(head => head.isKind && head.kind === kind);
    const [listKind = '', member = ''] = listSamples[wanted === 'any' || wanted === 'figure' ? 'length' : wanted] ?? [];
    const several = seen.heads.find(head => isListOf(head, seen))?.kind;
    const isFigureHere = isFigureWanted(wanted) && wanted !== 'temperature';
    const condition = plain(sampleCondition(seen));
    const bodies: Readonly<Record<string, string | undefined>> = {
        min: isFigureWanted(wanted) ? `\${1:${sample}}, \${2:${sample}}` : undefined, max: isFigureWanted(wanted) ? `\${1:${sample}}, \${2:${sample}}` : undefined,
        sum: isFigureHere && hasKind(listKind) && listKind !== seen.each ? `\${1:${listKind}.${member}}` : undefined,
        count: several !== undefined && (wanted === 'number' || wanted === 'any' || wanted === 'figure') ? `\${1:${several}}` : undefined,
        any: wanted === 'any' || wanted === 'flag' ? `\${1:${condition}}` : undefined, all: wanted === 'any' || wanted === 'flag' ? `\${1:${condition}}` : undefined,
        not: wanted === 'any' || wanted === 'flag' ? `\${1:${condition}}` : undefined,
        round_down: isFigureHere ? `\${1:${sample}}, \${2:${sample}}` : undefined, round_up: isFigureHere ? `\${1:${sample}}, \${2:${sample}}` : undefined,
        opposite: wanted === 'any' || wanted === 'word' ? '${1|front,left,back,right|}' : undefined,
    };
    const offers = Object.entries(functions).flatMap(([name, { written, doc }]): Offer[] => {
        const body = bodies[name];
        return body === undefined ? [] : [{ ...at, label: name, kind: 'function', text: hasBrackets ? name : `${name}(${body})`, isSnippet: !hasBrackets, order: 4, detail: written, doc, isQuiet: true }];
    });
    if (!isEmpty || !innermost(place).mayChoose || !(isFigureWanted(wanted) || wanted === 'flag')) return offers;
    const value = wanted === 'flag' ? 'yes' : sample;
    return [...offers, {
        ...at, label: 'if … then … else …', filter: 'if', kind: 'operator', text: `if \${1:${condition}} then \${2:${value}} else \${3:${value}}`, isSnippet: true, order: 5, isQuiet: true,
        detail: 'a choice', doc: 'One of two values, by a condition.',
    }];
}

/** Words and signs that go on behind a whole value. */
function operators({ at, raw, place, behind, base }: ExpressionInput, seen: ExpressionSight, here: WantedHere): Offer[] {
    const { choice, left, side } = innermost(place);
    const sort = sortOfTokens(side, seen);
    const isHolding = left !== undefined || sort === 'flag' || sort === 'list of flag';
    const sample = plain(sampleOf(base === 'any' || base === 'flag' ? base : base, raw) ?? '1');
    const has = (word: string): boolean => behind.some(({ image }) => image === word);
    const isEnd = behind.every(({ image }) => image === ')' || image === ',' || image === 'then' || image === 'else') || /^[),]|^then$|^else$/.test(behind[0]?.image ?? '');
    const offer = (label: string, text: string, detail: string, doc: string): Offer => ({ ...at, label, kind: 'operator', text, isSnippet: true, order: 0, detail, doc });
    if (!isEnd) return [];
    const found: Offer[] = [];
    if (choice === 'if' && isHolding && !has('then')) found.push(offer('then', `then \${1:${sample}} else \${2:${sample}}`, 'and both values', 'What holds when the condition does, and what when not.'));
    if (choice === 'then' && !has('else')) found.push(offer('else', `else \${1:${sample}}`, 'and the other value', 'What holds when the condition does not.'));
    const isCondition = here.isCondition && (choice === undefined || choice === 'if' || base === 'flag');
    if (!isCondition || side.length === 0) return found;
    if (isHolding) for (const word of ['and', 'or']) found.push(offer(word, `${word} \${1:${plain(sampleCondition(seen))}}`, 'a further condition', word === 'and' ? 'Both have to hold.' : 'One of them has to hold.'));
    else if (sort !== undefined) {
        const member = sort.startsWith('list of ') ? sort.slice('list of '.length) as SortOfValue : sort;
        const [word] = wordsComparedWith(side, seen);
        const other = isFigure(member) ? sampleOf(member, raw) : word;
        if (other !== undefined) for (const [sign, doc] of comparisons) if (isFigure(member) || sign === '=' || sign === '!=') found.push(offer(sign, `${sign} \${1:${plain(other)}}`, doc, ''));
    }
    return found;
}
const comparisons = [['>=', 'at least'], ['<=', 'at most'], ['=', 'equal to'], ['!=', 'other than'], ['>', 'more than'], ['<', 'less than']] as const;
