import { spoken } from '../core/show.js';
import type { Analysis, JobAnalysis } from '../analyze.js';
import { showCitation } from '../core/citation.js';
import type { LengthUnit } from '../core/show.js';
import type { Span } from '../core/span.js';
import type { FactEntry } from '../facts/facts-tree.js';
import type { Block, Given, Link } from '../model/block.js';
import { showBlock } from '../model/block.js';
import { endOf, type Token } from '../syntax/token-list.js';
import { definitionOf, isBlockKind } from '../vocabulary/index.js';
import { isStatement, statements } from '../vocabulary/statements.js';
import { describeChoice, describeHeader, describeProperty } from './describe.js';
import { blockStartingAt, factsPrefix, headlines } from './find-block.js';
import { callHover, expressionHover, figureHover, letHover } from './hover-names.js';
import { disputeLines, madeLines, overrideLines, ruleLines, waiverHover } from './hover-rules.js';
import type { Sight } from './offer.js';
import { isWordToken, type RawText } from './raw-facts.js';
import { headerParts, spotAt, type Spot } from './spot.js';
import { showFigureBoth, showGivenBoth } from './show-both.js';

/** What a hover says: a few lines to read at a glance, and the rest. Markdown; `start` to `end` is the text it is about. */
export interface HoverText {
    readonly start: number;
    readonly end: number;
    readonly lines: readonly string[];
    readonly more: readonly string[];
    /** The heading of the language reference that tells more: a kind of block, or a line of its own such as `let`. */
    readonly topic?: string;
}

export interface HoverInput {
    readonly raw: RawText;
    readonly analysis: Analysis;
    /** The text of any file's span, for the summary of what a reference leads to. */
    readonly textAt: (span: Span) => string;
    /** The unit computed lengths are shown in first; the job's own when absent. */
    readonly unit?: LengthUnit;
    /** What completion knows of the file; names of series and values are told with it. */
    readonly sight?: Sight;
}

const shownFacts = 3;

/** What is known of the word or figure at `offset`: its meaning, its value in both systems of units, and what was worked out from it. */
export function hoverAt(input: HoverInput, offset: number): HoverText | undefined {
    const { raw } = input;
    const token = raw.tokens.find(candidate => candidate.startOffset <= offset && offset < endOf(candidate) && candidate.tokenType !== raw.types.lineEnd)
        ?? raw.tokens.find(candidate => endOf(candidate) === offset && isWordToken(candidate, raw.types));
    if (!token || /^[{},;()]$/.test(token.image)) return undefined;
    const at = { start: token.startOffset, end: endOf(token) };
    const spot = spotAt(raw, token.startOffset);
    const found = hoverOn(input, spot, token, at);
    const topic = topicOf(spot, token);
    return found && (topic === undefined ? found : { ...found, topic });
}

function hoverOn(input: HoverInput, spot: Spot, token: Token, at: { start: number; end: number }): HoverText | undefined {
    switch (spot.kind) {
        case 'nowhere': case 'path': return undefined;
        case 'key': return keyHover(input, spot, token, at);
        case 'header': return callHover(input, spot.fact, token) ?? headerHover(input, spot, token, at) ?? figureHover(input, token);
        case 'let': return token === spot.name ? letHover(input, spot.fact, token) : expressionHover(input, spot.fact, token) ?? figureHover(input, token);
        case 'waive': return waiverHover(input, spot.fact, token);
        case 'value': return expressionHover(input, spot.fact, token) ?? valueHover(input, spot, token, at);
        default: return spot satisfies never;
    }
}

function topicOf(spot: Spot, token: Token): string | undefined {
    switch (spot.kind) {
        case 'nowhere': case 'path': return undefined;
        case 'key': return isBlockKind(token.image) || isStatement(spot.scope.kind, token.image) ? token.image : isBlockKind(spot.scope.kind) ? spot.scope.kind : undefined;
        case 'header': return spot.block;
        case 'let': case 'waive': return spot.kind;
        case 'value': return isBlockKind(spot.fact.scope.kind) ? spot.fact.scope.kind : undefined;
        default: return spot satisfies never;
    }
}

function keyHover(input: HoverInput, { scope, fact, current }: Extract<Spot, { kind: 'key' }>, token: Token, at: { start: number; end: number }): HoverText | undefined {
    if (!fact || !current) return undefined;
    const statement = isStatement(scope.kind, token.image) && !fact.body ? statements[token.image] : undefined;
    if (statement) return { ...at, lines: [`**${token.image}**: ${statement.doc}`, `\`${statement.written}\``], more: [] };
    const found = spotAt(input.raw, at.end + 1);
    if (found.kind === 'value') return valueHover(input, found, token, at);
    const asProperty = isBlockKind(scope.kind) && !fact.body ? definitionOf(scope.kind).properties[token.image] : undefined;
    if (asProperty) return { ...at, lines: [`**${token.image}**: ${asProperty.doc}`, describeProperty(asProperty)], more: [] };
    return isBlockKind(token.image) ? blockHover(input, fact.start, token.image, at) : undefined;
}

function headerHover(input: HoverInput, { fact, block }: Extract<Spot, { kind: 'header' }>, token: Token, at: { start: number; end: number }): HoverText | undefined {
    const { name, on, walls, is } = headerParts(input.raw, fact);
    if (token === name) return blockHover(input, fact.start, block, at);
    if (token === is) return { ...at, lines: ['What it is made from follows: what is not said here stays as it is there.'], more: [] };
    if (token === on || walls.includes(token)) {
        const runsThrough = walls.length > 1 && token === walls[0] ? ' It runs through; the others meet it.' : '';
        return { ...at, lines: [token === on ? 'The walls it stands on follow.' : `The ${token.image} wall.${runsThrough}`], more: [] };
    }
    return undefined;
}

function blockHover(input: HoverInput, start: number, kind: Parameters<typeof definitionOf>[0], at: { start: number; end: number }): HoverText {
    const { doc } = definitionOf(kind);
    const found = blockStartingAt(input.analysis, start);
    const header = input.raw.facts.find(fact => fact.start === start);
    const written = header && headerParts(input.raw, header);
    const title = found?.block.name ? showBlock(found.block) : [spoken(kind), found ? undefined : written?.name?.image].filter(Boolean).join(' ');
    const quoted = found ? found.block.title?.value : written?.title?.image.slice(1, -1);
    const lines = [`**${title}**${quoted ? ` “${quoted}”` : ''}: ${doc}`];
    const more = [`\`${describeHeader(kind)}\``];
    if (found?.job) {
        const facts = factsOf(found.job, found.block, found.parent);
        const unit = input.unit ?? found.job.job.unit;
        lines.push(...facts.slice(0, shownFacts).map(fact => factLine(fact, unit)));
        more.unshift(...facts.slice(0, shownFacts).flatMap(fact => factOrigin(fact)), ...facts.slice(shownFacts).map(fact => factLine(fact, unit)));
    } else if (found) lines.push(...summaryOf(found.block, input));
    if (kind === 'rule') lines.push(...ruleLines(input, start));
    if (kind === 'series' || kind === 'parameter') lines.push(...madeLines(input, start));
    return { ...at, lines, more };
}

/** Facts under a block's own path, what matters most first; a job shows those of its room and heaters. */
function factsOf(job: JobAnalysis, block: Block, parent: Block | undefined): readonly FactEntry[] {
    const prefix = factsPrefix(block, parent);
    if (prefix === undefined) {
        const chosen = block.children.filter(child => child.kind === 'room' || child.kind === 'heater').flatMap(child => {
            const own = factsPrefix(child, block);
            return (headlines[child.kind] ?? []).slice(0, 2).map(suffix => `${own ?? ''}.${suffix}`);
        });
        return chosen.flatMap(path => { const found = job.facts.get(path); return found.kind === 'value' ? [found.fact] : []; });
    }
    const first = (headlines[block.kind] ?? []).map(suffix => `${prefix}.${suffix}`);
    const rank = (fact: FactEntry): number => { const i = first.indexOf(fact.path); return i < 0 ? first.length : i; };
    return [...job.facts.under(prefix)].sort((a, b) => rank(a) - rank(b));
}

const factLine = (fact: FactEntry, unit: LengthUnit): string => `${fact.title}: ${showFigureBoth(fact.value, unit)}`;
function factOrigin(fact: FactEntry): string[] {
    const source = fact.source ? ` (${showCitation(fact.source)})` : '';
    return fact.how || source ? [`${fact.title} = ${fact.how ?? ''}${source}`] : [];
}

function valueHover(input: HoverInput, { fact, property, key }: Extract<Spot, { kind: 'value' }>, token: Token, at: { start: number; end: number }): HoverText {
    const block = fact.scope.header ? blockStartingAt(input.analysis, fact.scope.header.start) : undefined;
    const given = (block?.block.values as Readonly<Record<string, Given<unknown>>> | undefined)?.[key];
    const link = given && linksIn(given.value).find(candidate => candidate.span.start === token.startOffset);
    if (link) return linkHover(link, input, at);
    const choice = property.type.choices?.includes(token.image) && token !== fact.key ? describeChoice(token.image) : '';
    const lines = [`**${key}**: ${property.doc}`];
    if (choice) lines.push(`${token.image}: ${choice}.`);
    const shown = given && showGivenBoth(property, given);
    if (shown !== undefined) lines.push(shown);
    const more = [describeProperty(property)];
    if (key === 'rules' && block?.job) more.push(...disputeLines(block.job));
    const said = given ? overrideLines(input, given) : [];
    lines.push(...said);
    const room = shownFacts - 1 - said.length;
    if (given && block?.job) {
        const unit = input.unit ?? block.job.job.unit;
        const derived = block.job.facts.under().filter(entry => entry.because.some(span => span.start === given.span.start && span.end === given.span.end && span.uri === given.span.uri));
        lines.push(...derived.slice(0, room).map(entry => `→ ${factLine(entry, unit)}`));
        more.unshift(...derived.slice(0, room).flatMap(factOrigin), ...derived.slice(room).map(entry => `→ ${factLine(entry, unit)}`));
    }
    return { ...at, lines, more };
}

/** Links inside a value: itself, those of a list, the one of a layer. */
function linksIn(value: unknown): readonly Link[] {
    if (Array.isArray(value)) return value.flatMap(linksIn);
    if (typeof value !== 'object' || value === null) return [];
    if ('name' in value && 'span' in value) return [value as Link];
    return 'of' in value ? linksIn(value.of) : [];
}

function linkHover(link: Link, input: HoverInput, at: { start: number; end: number }): HoverText {
    const { block } = link;
    if (!block) return { ...at, lines: [`Nothing of the name ${link.name} is in sight.`], more: [] };
    const lines = [`**${showBlock(block)}**${block.title ? ` “${block.title.value}”` : ''}`, ...summaryOf(block, input)];
    return { ...at, lines, more: [definitionOf(block.kind).doc] };
}

/** The facts a block must have, as they are written. */
function summaryOf(block: Block, { textAt }: HoverInput): string[] {
    const { properties } = definitionOf(block.kind);
    const isRequired = (key: string): boolean => (properties[key])?.isRequired === true;
    return Object.entries(block.values as Readonly<Record<string, Given<unknown>>>)
        .sort(([a], [b]) => Number(isRequired(b)) - Number(isRequired(a)))
        .slice(0, shownFacts)
        .map(([key, given]) => `\`${key} ${textAt(given.span).replace(/\s+/g, ' ')}\``);
}
