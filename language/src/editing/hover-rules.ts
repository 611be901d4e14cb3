import { spoken } from '../core/show.js';
import { lookUp } from '../facts/look-up.js';
import { parametersOf } from '../model/arguments.js';
import { isKind, type Given } from '../model/block.js';
import { HouseCondition } from '../model/house-condition.js';
import type { Names } from '../model/names.js';
import { clauseKeys, showConflict, strictest, type ClauseKey } from '../rule-sets/index.js';
import { ruleById } from '../rules/index.js';
import { endOf, type Token } from '../syntax/token-list.js';
import { describeParameter } from './describe.js';
import type { HoverInput, HoverText } from './hover.js';
import { showValueBoth, sightOf } from './hover-names.js';
import type { RawFact } from './raw-facts.js';

/** For how many things of the file's jobs a house rule holds, and for which it does not. */
export function ruleLines({ analysis }: HoverInput, start: number): readonly string[] {
    const rule = analysis.file.rules.find(({ span }) => span.start === start);
    if (!rule) return [];
    const { each, when, require } = rule.values;
    let holds = 0;
    const fails: string[] = [];
    for (const { job, facts } of analysis.jobs) {
        const things = each ? job.block.children.filter(({ kind }) => kind === each.value) : [undefined];
        for (const thing of things) {
            const names: Names = { find: path => lookUp(job, facts, path, thing) };
            if (when?.value instanceof HouseCondition && when.value.judge(names).holds !== true) continue;
            const found = require?.value instanceof HouseCondition ? require.value.judge(names).holds : undefined;
            if (found === true) holds++;
            else if (found === false) fails.push([thing?.name?.value, job.block.name?.value].filter(Boolean).join(' in '));
        }
    }
    if (analysis.jobs.length === 0) return [];
    return [`In this file it holds ${holds === 1 ? 'once' : `${holds} times`}${fails.length > 0 ? ` and fails ${fails.length === 1 ? 'once' : `${fails.length} times`}: ${fails.slice(0, 4).join(', ')}${fails.length > 4 ? ' …' : ''}` : ''}.`];
}

/** Which jobs of the file are made from a series; what they give a parameter. */
export function madeLines(input: HoverInput, start: number): readonly string[] {
    const { analysis } = input;
    const isMadeFrom = (name: string | undefined) => ({ job: { block } }: HoverInput['analysis']['jobs'][number]): boolean => block.base?.value === name;
    for (const series of analysis.file.series) {
        const made = analysis.jobs.filter(isMadeFrom(series.name?.value));
        if (series.span.start === start) return made.length > 0 ? [`Made from it here: ${made.map(({ job }) => job.block.name?.value ?? 'a job').join(', ')}.`] : [];
        const parameter = parametersOf(series).find(({ span }) => span.start === start);
        if (!parameter) continue;
        const values = made.flatMap(one => { const found = one.names.find([parameter.name?.value ?? '']); return found.kind === 'value' ? [`${one.job.block.name?.value ?? 'a job'} ${showValueBoth(found.value, { analysis: one }, input)}`] : []; });
        const unit = made[0]?.job.unit ?? 'in';
        return [describeParameter(parameter.name?.value ?? '', parameter.values, unit), ...values.length > 0 ? [values.join(', ')] : []];
    }
    return [];
}

/** Where the rule sets of a job want different things, and what governs. */
export const disputeLines = ({ ruleSets, job }: HoverInput['analysis']['jobs'][number]): readonly string[] =>
    (Object.keys(clauseKeys) as ClauseKey[]).flatMap(key => strictest(ruleSets, key)?.conflicts ?? []).map(conflict => showConflict(conflict, job.unit));

/** What was said of a fact before it was said otherwise, the first of it first. */
export function overrideLines(input: HoverInput, given: Given<unknown>): readonly string[] {
    if (!given.wonOver || given.wonOver.length === 0) return [];
    const { analysis } = input;
    const said = (span: Given<unknown>['span']): string => {
        const series = analysis.file.series.find(one => one.span.uri === span.uri && one.span.start <= span.start && span.end <= one.span.end);
        const inside = analysis.jobs.filter(({ job: { block } }) => block.span.uri === span.uri && block.span.start <= span.start && span.end <= block.span.end);
        const owner = series ?? inside.at(-1)?.job.block;
        return `${owner?.name ? `${owner.name.value} says ` : ''}\`${input.textAt(span).replace(/\s+/g, ' ')}\``;
    };
    return [`Said before: ${given.wonOver.map(said).join(', then ')}. This one wins.`];
}

/** The finding a waiver accepts, or that none answers to it. */
export function waiverHover(input: HoverInput, fact: RawFact, token: Token): HoverText | undefined {
    const at = { start: token.startOffset, end: endOf(token) };
    const job = sightOf(input).job?.(fact.start)?.analysis;
    if (token === fact.tokens[1]) {
        const rule = ruleById(token.image);
        const house = sightOf(input).houseRules?.().find(({ name }) => name?.value === token.image);
        const title = rule?.title ?? house?.title?.value ?? (house ? 'a house rule' : 'There is no finding of this name');
        const accepted = (job?.findings ?? []).filter(({ waived }) => waived?.at.start === fact.start);
        return { ...at, lines: [`**${token.image}**: ${title}.`, ...accepted.slice(0, 2).map(({ message }) => message), ...(accepted.length === 0 && job ? ['No finding of this job answers to it.'] : [])], more: rule ? [rule.why] : [] };
    }
    const before = fact.tokens[fact.tokens.indexOf(token) - 1];
    const block = before?.image === 'on' ? job?.job.block.children.find(({ name, kind }) => (name?.value ?? kind) === token.image) : undefined;
    if (block && isKind(block, block.kind)) return { ...at, lines: [`**${spoken(block.kind)} ${token.image}**`], more: [] };
    if (token.tokenType === input.raw.types.date) return { ...at, lines: ['The last day the waiver holds; behind it the finding stands again.'], more: [] };
    const clause = { on: 'The block the finding is about.', because: 'Why it is accepted; printed with the finding.', by: 'Who decided it; printed with the finding.', until: 'The last day it holds; behind it the finding stands again.' }[token.image];
    return clause === undefined ? undefined : { ...at, lines: [clause], more: [] };
}
