import { spoken } from '../core/show.js';
import { showValue } from '../core/value.js';
import type { LengthUnit } from '../core/show.js';
import { parametersOf, showCall } from '../model/arguments.js';
import type { Block } from '../model/block.js';
import { endOf } from '../syntax/token-list.js';
import { definitionOf, derivesFrom, isJobLike } from '../vocabulary/index.js';
import { completeExpression } from './complete-expression.js';
import { fromValue, word, wordsTaken } from './complete-values.js';
import { describeParameter } from './describe.js';
import { expressionPlace, innermost, type ExpressionPlace } from './expression-place.js';
import type { Wanted } from './kinds-of-value.js';
import { valuesInSight } from './names-in-sight.js';
import { oneOf, plain, type Offer, type Sight } from './offer.js';
import { isWordToken, type RawScope, type RawText } from './raw-facts.js';
import { isMetricText, walls } from './samples.js';
import { phraseAround, type Spot } from './spot.js';
import { sampleOf } from './wanted-here.js';

type HeaderSpot = Extract<Spot, { kind: 'header' }>;
interface At { readonly start: number; readonly end: number }

/** The words `is` and `on` and what stands behind them. Names of new blocks are for the designer to find; one that says a block of a series otherwise has the series' names. */
export function completeHeader(raw: RawText, spot: HeaderSpot, offset: number, sight: Sight): Offer[] {
    const { block, before, current } = spot;
    const at = { start: current?.startOffset ?? offset, end: current ? endOf(current) : offset };
    const is = derivesFrom(block) === undefined ? -1 : before.findIndex(token => token.image === 'is');
    if (is >= 0) return behindIs(raw, spot, offset, sight, at, is);
    const names = before.length === 0 ? overridden(raw, spot, offset, sight, at) : [];
    return [...names, ...offerIs(raw, spot, offset, sight, at), ...offerOn(raw, spot, at, offset, sight)];
}

/** Blocks of the series (or, in a variant, of the job) that can be said otherwise. */
function overridden(raw: RawText, { fact, block, after }: HeaderSpot, offset: number, sight: Sight, at: At): Offer[] {
    if (!isJobLike(fact.scope.kind) || definitionOf(block).name === 'none' || (after[0] && isWordToken(after[0], raw.types))) return [];
    return baseBlocks(offset, sight, fact.scope).filter(({ kind }) => kind === block).flatMap(({ name, walls: on }): Offer[] => name ? [{
        ...at, label: name.value, kind: 'name', text: name.value, isSnippet: false, order: 0, detail: `${spoken(block)}${on.length > 0 ? ` on ${on.map(wall => wall.value).join(', ')}` : ''}`, doc: 'What you write here is said of this one; the rest stays.',
    }] : []);
}

/** Blocks below a job-like scope: of the series it is made from, or of the job a variant is of; those it speaks of already are left out. */
export function baseBlocks(offset: number, sight: Sight, scope: RawScope): readonly Block[] {
    const written = new Set(scope.facts.filter(one => one.body && !(one.start <= offset && offset <= one.end)).map(one => `${one.key?.image ?? ''} ${one.tokens[1]?.image ?? ''}`));
    const base = scope.header?.tokens.find((_, i, all) => all[i - 1]?.image === 'is')?.image;
    const below = scope.kind === 'variant' ? sight.job?.(scope.parent?.header?.start ?? offset)?.analysis.job.block.children ?? [] : base === undefined ? [] : seriesBlocks(base, sight);
    return below.filter(({ kind, name }) => name !== undefined && kind !== 'parameter' && !written.has(`${kind} ${name.value}`));
}
function seriesBlocks(name: string, sight: Sight, seen = new Set<string>()): readonly Block[] {
    const series = seen.has(name) ? undefined : sight.series?.(name);
    seen.add(name);
    return series ? [...series.children, ...series.base ? seriesBlocks(series.base.value, sight, seen) : []] : [];
}

function offerIs(raw: RawText, { block, before, after, fact }: HeaderSpot, offset: number, sight: Sight, at: At): Offer[] {
    const kind = derivesFrom(block);
    const [name, title] = before;
    const isBehindName = name !== undefined && isWordToken(name, raw.types) && (before.length === 1 || (before.length === 2 && title?.tokenType === raw.types.text));
    if (kind === undefined || !isBehindName || after.length > 0) return [];
    const names = sight.names([kind], offset).filter(one => one.name !== name.image);
    const doc = kind === 'series' ? 'The series it is made from stands behind this word.' : `The ${spoken(kind)} it is made from stands behind this word: what is not said here stays.`;
    if (names.length === 0) return [];
    const [first] = names;
    const only = names.length === 1 && first && sight.series?.(first.name);
    return [{ ...word('is', kind === 'series' ? 'made from a series' : 'made from another', doc, at), text: only ? `is ${callSnippet(only, raw)}` : `is ${oneOf(1, [...new Set(names.map(one => one.name))])}${fact.body || kind === 'series' ? '' : ' { $0 }'}`, isSnippet: true }];
}

/** A series with its values to type over: those it cannot do without, or the first of them. */
function callSnippet(series: Block<'series'>, raw: RawText): string {
    const name = series.name?.value ?? '';
    const needed = parametersOf(series).filter(({ values }) => values.otherwise === undefined);
    const args = needed.map(({ values, name: own }, i) => `\${${i + 1}:${plain(sampleArgument(values.takes?.value ?? 'word', raw, values) ?? own?.value ?? 'value')}}`);
    return args.length > 0 ? `${name}(${args.join(', ')})` : name;
}
function sampleArgument(takes: string, raw: RawText, { least, one_of: choices }: Block<'parameter'>['values']): string | undefined {
    const unit: LengthUnit = isMetricText(raw) ? 'mm' : 'in';
    const [first] = choices?.value ?? [];
    return first ? showValue(first, unit) : least ? showValue(least.value, unit) : takes === 'wall' ? 'left' : takes === 'text' ? '"text"' : sampleOf(takes === 'count' ? 'number' : takes as Wanted, raw);
}

function behindIs(raw: RawText, { block, before, after, fact }: HeaderSpot, offset: number, sight: Sight, at: At, is: number): Offer[] {
    const kind = derivesFrom(block) ?? '';
    const term = before.slice(is + 1);
    if (term.length === 0) {
        if (after[0] && isWordToken(after[0], raw.types)) return [];
        const hasBracket = after[0]?.image === '(';
        const own = before[0]?.image;
        return sight.names([kind], offset).filter(({ name }) => name !== own).map(({ name, title, from }) => {
            const series = kind === 'series' ? sight.series?.(name) : undefined;
            const text = series && !hasBracket ? callSnippet(series, raw) : name;
            return { ...at, label: name, kind: 'name', text, isSnippet: text !== name, order: 0, detail: series ? showCall(series) : [spoken(kind), title && `“${title}”`].filter(Boolean).join(' '), doc: from === undefined ? 'In this file.' : `From ${from}.` };
        });
    }
    const place = expressionPlace(term, raw.types);
    const [, call] = place.levels;
    const series = call?.bracket?.name === term[0] && term[0] ? sight.series?.(term[0].image) : undefined;
    if (!series || !call) return [];
    const rest = phraseAround([], after).behind;
    const args = call.bracket?.args ?? [];
    const own = args.at(-1) ?? [];
    const byName = own[1]?.image === '=' ? own[0]?.image : undefined;
    const parameters = parametersOf(series);
    const named = new Set([...args, ...splitAtCommas(after)].flatMap(([first, second]) => second?.image === '=' && first ? [first.image] : []));
    const places = args.slice(0, -1).filter(arg => arg[1]?.image !== '=').length;
    const parameter = byName === undefined ? parameters[places] : parameters.find(({ name }) => name?.value === byName);
    const inner = byName === undefined ? own : own.slice(2);
    const innerPlace: ExpressionPlace = expressionPlace(inner, raw.types);
    const isStart = inner.length === 0 && place.levels.length === 2;
    if (rest[0] && isStart && !/^[),]$/.test(rest[0].image)) return [];
    const takes = parameter?.values.takes?.value ?? 'word';
    const base: Wanted = takes === 'count' ? 'number' : ['length', 'number', 'power', 'voltage', 'current', 'temperature', 'flag', 'text'].includes(takes) ? takes as Wanted : 'word';
    const offers: Offer[] = [];
    if (isStart && parameter) offers.push(...valuesOf(parameter, raw, at, sight, offset, takes));
    if (parameter && (innerPlace.expects === 'operand' || innermost(place).choice)) {
        const known = new Set(offers.map(({ label }) => label));
        const found = completeExpression({ raw, fact, offset, at, sight, base, place: innerPlace, behind: rest });
        offers.push(...found.filter(({ label }) => !known.has(label)).map(offer => ({ ...offer, isQuiet: true as const })));
    }
    if (isStart && byName === undefined) for (const { name, values } of parameters.slice(places)) if (name && !named.has(name.value) && values.takes) {
        const sample = values.otherwise ? showValue(values.otherwise.value, isMetricText(raw) ? 'mm' : 'in') : sampleArgument(values.takes.value, raw, values);
        if (sample !== undefined) offers.push({ ...at, label: `${name.value} =`, filter: name.value, kind: 'fact', text: `${name.value} = \${1:${plain(sample)}}`, isSnippet: true, order: 3, detail: spoken(values.takes.value), doc: values.doc?.value ?? 'Given by its name.' });
    }
    return offers;
}

const splitAtCommas = (tokens: HeaderSpot['after']): (readonly HeaderSpot['after'][number][])[] => tokens.reduce<HeaderSpot['after'][number][][]>((parts, token) => { if (token.image === ',') parts.push([]); else parts.at(-1)?.push(token); return parts; }, [[]]);

/** Values a parameter offers by itself: those it is limited to, its default, its bounds, and words of what it takes. */
function valuesOf({ name, values }: Block<'parameter'>, raw: RawText, at: At, sight: Sight, offset: number, takes: string): Offer[] {
    const unit: LengthUnit = isMetricText(raw) ? 'mm' : 'in';
    const doc = describeParameter(name?.value ?? '', values, unit);
    const texts = new Map<string, string>();
    const add = (text: string, detail: string): void => { if (!texts.has(text) && !text.startsWith('≈')) texts.set(text, detail); };
    if (values.otherwise) add(showValue(values.otherwise.value, unit), 'what holds without it');
    for (const one of values.one_of?.value ?? []) add(showValue(one, unit), 'allowed');
    if (!values.one_of) {
        if (values.least) add(showValue(values.least.value, unit), 'the smallest');
        if (values.most) add(showValue(values.most.value, unit), 'the greatest');
        for (const one of wordsTaken(takes, sight, offset)) add(one, spoken(takes));
    }
    return [...texts].map(([text, detail]) => ({ ...at, label: text, kind: 'word', text, isSnippet: false, order: 0, detail, doc }));
}

function offerOn(raw: RawText, { block, before, after, fact }: HeaderSpot, at: At, offset: number, sight: Sight): Offer[] {
    const definition = definitionOf(block);
    if (definition.walls === 'none') return [];
    const on = before.findIndex(token => token.image === 'on');
    if (on < 0) {
        const hasName = before[0] !== undefined && isWordToken(before[0], raw.types);
        if (after.length > 0 || (definition.name === 'required' && !hasName)) return [];
        const doc = definition.walls === 'several' ? 'The walls it stands on stand behind this word.' : 'The wall it stands on stands behind this word.';
        return [{ ...word('on', 'and its wall', doc, at), text: `on ${oneOf(1, walls)}`, isSnippet: true }];
    }
    const last = before.at(-1);
    const isPlace = last?.image === 'on' || (last?.image === ',' && definition.walls === 'several');
    if (!isPlace || (after[0] && isWordToken(after[0], raw.types))) return [];
    const used = new Set([...before, ...after].map(token => token.image));
    const values = valuesInSight(raw, fact.scope, offset, sight).filter(value => !used.has(value.name) && (value.holds === 'wall' || (value.value?.kind === 'word' && (walls as readonly string[]).includes(value.value.word))));
    return [...walls.filter(wall => !used.has(wall)).map(wall => word(wall, 'wall', `The ${wall} wall.`, at, 'wall')), ...values.map(value => fromValue(value, at))];
}
