import { spoken } from '../core/show.js';
import { showCitation } from '../core/citation.js';
import { parseLiteral } from '../core/literal.js';
import { ofQuantity, toFigure, type Value } from '../core/value.js';
import { parametersOf, showCall } from '../model/arguments.js';
import type { Block } from '../model/block.js';
import { functions, isFunction } from '../model/functions.js';
import { endOf, touches, type Token } from '../syntax/token-list.js';
import { isBlockKind, definitionOf } from '../vocabulary/index.js';
import { expressionSight } from './complete-expression.js';
import { describeParameter } from './describe.js';
import { findDeclared } from '../facts/declared.js';
import { nameAround } from './expression-place.js';
import type { HoverInput, HoverText } from './hover.js';
import { letText, valueOfPath, valuesInSight, type SeenValue } from './names-in-sight.js';
import type { SeenJob, Sight } from './offer.js';
import { isWordToken, type RawFact, type RawScope, type RawText } from './raw-facts.js';
import { showFigureBoth } from './show-both.js';
import { signatureAt } from './signature.js';
import { headerParts } from './spot.js';
import { propertyOfPath } from './wanted-here.js';

/** What is known without the sight of a server: the jobs of the file itself. */
export function sightOf({ sight, analysis }: HoverInput): Sight {
    return sight ?? {
        names: () => [], paths: () => [], series: name => analysis.file.series.find(series => series.name?.value === name), houseRules: () => analysis.file.rules,
        job: offset => {
            const around = analysis.jobs.filter(({ job: { block: { span } } }) => span.start <= offset && offset <= span.end);
            const own = around.reduce<(typeof around)[number] | undefined>((best, one) => best && best.job.block.span.end - best.job.block.span.start <= one.job.block.span.end - one.job.block.span.start ? best : one, undefined);
            return own && { analysis: own };
        },
    };
}

export function showValueBoth(value: Value, { analysis: { job } }: SeenJob, input: HoverInput): string {
    const unit = input.unit ?? job.unit;
    if (value.kind === 'list') return value.items.slice(0, 8).map(item => showFigureBoth(toFigure(item, unit), unit)).join(', ') || 'none';
    return showFigureBoth(toFigure(value, unit), unit);
}

/** A word of an expression: a function, a name that was given a value, a name with points; nothing for any other word. */
export function expressionHover(input: HoverInput, fact: RawFact, token: Token): HoverText | undefined {
    const { raw } = input;
    const at = { start: token.startOffset, end: endOf(token) };
    const next = fact.tokens[fact.tokens.indexOf(token) + 1];
    if (next?.image === '(' && touches(token, next) && isFunction(token.image)) {
        const { written, doc } = functions[token.image] as (typeof functions)[string];
        return { ...at, lines: [`**${written}**`, doc], more: [] };
    }
    const sign = signs[token.image];
    if (sign !== undefined && isExpression(fact)) return { ...at, lines: [sign], more: [] };
    const name = nameAround(fact.tokens, token, raw.types);
    if (!name) return undefined;
    const [first = ''] = name.whole;
    if (name.whole.length === 1) {
        const value = valuesInSight(raw, fact.scope, token.startOffset, sightOf(input)).find(one => one.name === first);
        return value && valueHoverText(input, fact.scope, value, token);
    }
    return pathHover(input, fact, name.upTo.length > 1 ? name.upTo : name.whole, token) ?? pathHover(input, fact, name.whole, token);
}
const signs: Readonly<Record<string, string>> = {
    if: 'A choice: if ⟨condition⟩ then ⟨value⟩ else ⟨value⟩.', then: 'What holds when the condition does.', else: 'What holds when the condition does not.',
    and: 'Both conditions have to hold.', or: 'One of the two conditions has to hold.',
};
const isExpression = ({ key, tokens }: RawFact): boolean => key?.image === 'let' || tokens.length > 2;

export const letHover = (input: HoverInput, fact: RawFact, token: Token): HoverText | undefined => {
    const value = valuesInSight(input.raw, fact.scope, token.startOffset, sightOf(input)).find(one => one.name === token.image);
    return value ? valueHoverText(input, fact.scope, value, token) : { start: token.startOffset, end: endOf(token), lines: [`**let ${token.image}** = \`${letText(fact, input.raw)}\``], more: [] };
};

/** A `let` or a parameter: how it is written, what it comes to, where it is used. */
function valueHoverText(input: HoverInput, scope: RawScope, seen: SeenValue, token: Token): HoverText {
    const job = sightOf(input).job?.(token.startOffset);
    const lines = seen.is === 'let' ? [`**let ${seen.name}** = \`${seen.text}\``] : [`**parameter ${seen.name}**${seen.doc ? `: ${seen.doc}` : ''}`, `Takes a ${spoken(seen.text)}.`];
    if (seen.value && job) lines.push(`${showValueBoth(seen.value, job, input)}${job.as === undefined ? '' : ` in ${job.as}`}`);
    const uses = usesOf(input.raw, scope, seen.name);
    if (uses.length > 0) lines.push(`Used in ${uses.slice(0, 4).join(', ')}${uses.length > 4 ? ` and ${uses.length - 4} more` : ''}.`);
    const elsewhere = input.analysis.jobs.filter(one => one !== job?.analysis).flatMap(one => {
        const found = one.names.find([seen.name]);
        return job?.as !== undefined && found.kind === 'value' ? [`In ${one.job.block.name?.value ?? 'another job'}: ${showValueBoth(found.value, { analysis: one }, input)}`] : [];
    });
    return { start: token.startOffset, end: endOf(token), lines, more: elsewhere };
}

/** Facts whose values name a value, by block and key. */
function usesOf(raw: RawText, scope: RawScope, name: string): readonly string[] {
    let top = scope;
    while (top.parent && top.parent.kind !== 'file') top = top.parent;
    const isInside = (one: RawScope): boolean => { for (let at: RawScope | undefined = one; at; at = at.parent) if (at === top) return true; return false; };
    const uses = raw.facts.filter(fact => (isInside(fact.scope) || top.kind === 'file') && fact.key && fact.tokens.some((token, i) => token.image === name && isWordToken(token, raw.types) && i > (fact.key?.image === 'let' || fact.key?.image === 'parameter' ? 1 : 0) && fact.tokens[i - 1]?.image !== '.'));
    return [...new Set(uses.map(fact => fact.key?.image === 'let' ? fact.tokens[1]?.image ?? '' : fact.body || fact.scope.header === undefined ? `${fact.key?.image ?? ''} ${headerParts(raw, fact).name?.image ?? ''}`.trim() : `${headerParts(raw, fact.scope.header).name?.image ?? fact.scope.kind}.${fact.key?.image ?? ''}`))];
}

/** A name with points: what it is, what it comes to, how that was worked out and by which source. */
function pathHover(input: HoverInput, fact: RawFact, path: readonly string[], token: Token): HoverText | undefined {
    const { raw } = input;
    const seen = expressionSight(raw, fact.scope, token.startOffset, sightOf(input));
    const head = seen.heads.find(({ name }) => name === path[0]);
    const name = path.join('.');
    if (!head) return undefined;
    const at = { start: token.startOffset, end: endOf(token) };
    const below = path.slice(1);
    const { job } = seen;
    const entry = job?.analysis.facts.get(name);
    const declared = findDeclared(head.kind, below.join('.'));
    const property = propertyOfPath(head.kind, below);
    const title = entry?.kind === 'value' ? entry.fact.title : declared?.title ?? property?.doc ?? (below.at(-1) === 'wall' ? 'the wall it stands on' : undefined);
    if (title === undefined) return undefined;
    const lines = [`**${name}**: ${title}${/[.]$/.test(title) ? '' : '.'}`];
    const value = valueOfPath(path, job);
    if (value && job) lines.push(`${showValueBoth(value, job, input)}${job.as === undefined ? '' : ` in ${job.as}`}`);
    else if (seen.each !== undefined || fact.scope.kind === 'rule') lines.push(...valuesOfRule(input, path, head.name === seen.each));
    const more: string[] = [];
    if (entry?.kind === 'value') {
        if (entry.fact.how) lines.push(`= ${entry.fact.how}`);
        if (entry.fact.source) lines.push(showCitation(entry.fact.source));
        more.push(...entry.fact.because.slice(0, 4).map(span => `from \`${input.textAt(span).replace(/\s+/g, ' ')}\``));
    }
    if (head.isKind && isBlockKind(head.kind) && definitionOf(head.kind).isRepeatable && head.name !== seen.each) more.push(`${spoken(head.kind)} stands for all of them: this is a list.`);
    return { ...at, lines, more };
}

/** What a name of a house rule comes to in the jobs of the file. */
function valuesOfRule(input: HoverInput, path: readonly string[], isEach: boolean): readonly string[] {
    return input.analysis.jobs.slice(0, 2).flatMap(analysis => {
        const { block } = analysis.job;
        const names = isEach ? block.children.filter(({ kind, name }) => kind === path[0] && name).map(({ name }) => name?.value ?? '') : [path[0] ?? ''];
        const values = names.flatMap(name => { const value = valueOfPath([name, ...path.slice(1)], { analysis }); return value ? [`${isEach ? `${name} ` : ''}${showValueBoth(value, { analysis }, input)}`] : []; });
        return values.length > 0 ? [`${block.name?.value ?? 'job'}: ${values.join(', ')}`] : [];
    });
}

/** The series behind `is` with its parameters and what this job gives them; a parameter given by its name; anything else in the brackets. */
export function callHover(input: HoverInput, fact: RawFact, token: Token): HoverText | undefined {
    const { raw } = input;
    const { base } = headerParts(raw, fact);
    const series = base && sightOf(input).series?.(base.image);
    if (base && token === base && !series) return { start: base.startOffset, end: endOf(base), lines: [`**${spoken(fact.key?.image ?? '')} ${base.image}**: what is not said here stays as it is there.`], more: [] };
    if (!base || !series || token.startOffset < base.startOffset) return undefined;
    const job = sightOf(input).job?.(fact.start);
    const at = { start: token.startOffset, end: endOf(token) };
    const unit = input.unit ?? job?.analysis.job.unit ?? 'in';
    const shown = (parameter: Block<'parameter'>): string => {
        const found = job?.analysis.names.find([parameter.name?.value ?? '']);
        return `${parameter.name?.value ?? ''}${found?.kind === 'value' && job ? ` = ${showValueBoth(found.value, job, input)}` : ''}`;
    };
    if (token === base) {
        const lines = parametersOf(series).map(parameter => `${shown(parameter)}${parameter.values.doc ? `: ${parameter.values.doc.value}` : ''}`);
        return { ...at, lines: [`**series ${showCall(series)}**${series.title ? ` “${series.title.value}”` : ''}`, ...lines.slice(0, 3)], more: [...lines.slice(3), ...parametersOf(series).map(({ name, values }) => describeParameter(name?.value ?? '', values, unit))] };
    }
    const next = fact.tokens[fact.tokens.indexOf(token) + 1];
    const parameter = next?.image === '=' ? parametersOf(series).find(({ name }) => name?.value === token.image) : undefined;
    if (parameter) return { ...at, lines: [`**parameter ${shown(parameter)}**`, describeParameter(token.image, parameter.values, unit)], more: [] };
    const word = expressionHover(input, fact, token);
    if (word) return word;
    const call = signatureAt(raw, endOf(token), sightOf(input));
    const own = call?.active === undefined || !call.label.startsWith(`${base.image}(`) ? undefined : parametersOf(series)[call.active];
    const figure = figureHover(input, token);
    return own ? { ...at, lines: [`**parameter ${shown(own)}**`, describeParameter(own.name?.value ?? '', own.values, unit)], more: figure?.lines ?? [] } : figure;
}

/** A figure in both systems of units. */
export function figureHover(input: HoverInput, token: Token): HoverText | undefined {
    const quantity = token.tokenType === input.raw.types.text || isWordToken(token, input.raw.types) ? undefined : parseLiteral(token.image);
    const unit = input.unit ?? sightOf(input).job?.(token.startOffset)?.analysis.job.unit ?? 'in';
    return quantity && { start: token.startOffset, end: endOf(token), lines: [showFigureBoth(toFigure(ofQuantity(quantity), unit), unit)], more: [] };
}
