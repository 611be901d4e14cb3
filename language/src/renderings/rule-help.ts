import { showCitation, type Citation } from '../core/citation.js';
import type { Severity } from '../core/finding.js';
import { isLanguageRule, languageRules } from '../model/language-rules.js';
import { isSettingsRule, settingsRules } from '../settings/settings-rules.js';
import { allRules, ruleById } from '../rules/index.js';
import type { Rule } from '../rules/rule.js';
import { escapeMarkdown } from './markdown.js';
import { wrap } from './report-text.js';

/** What is written about a rule or a mistake of the language; the handbook, `explain` and code scanners show the same. */
export interface RuleHelp {
    readonly id: string;
    /** `bench`, `heater` …; `language` for mistakes of the text itself, `settings` for those of a settings file. */
    readonly family: Rule['family'] | 'language' | 'settings';
    readonly title: string;
    readonly severity: Severity;
    readonly why: string;
    readonly bad: string;
    readonly good: string;
    readonly sources: readonly Citation[];
    readonly isWaivable: boolean;
    readonly fixes: Rule['fixes'] | 'some';
}

/** Everything that can be reported, family by family. */
export function allRuleHelp(): readonly RuleHelp[] {
    return [...allRules.map(helpOf), ...[...Object.keys(languageRules), ...Object.keys(settingsRules)].flatMap(id => textHelp(id) ?? [])];
}
export const ruleHelp = (id: string): RuleHelp | undefined => {
    const rule = ruleById(id);
    return rule ? helpOf(rule) : textHelp(id);
};

const helpOf = ({ id, family, title, severity, why, bad, good, sources, isWaivable, fixes }: Rule): RuleHelp => ({ id, family, title, severity, why, bad, good, sources, isWaivable, fixes });

function textHelp(id: string): RuleHelp | undefined {
    const text = isLanguageRule(id) ? { family: 'language' as const, ...languageRules[id] } : isSettingsRule(id) ? { family: 'settings' as const, ...settingsRules[id] } : undefined;
    return text && { id, ...text, sources: [], isWaivable: false, fixes: 'some' };
}

/** In words, for under the title. */
function standing({ family, severity, isWaivable, fixes }: RuleHelp): string {
    const waiver = family === 'language' || family === 'settings' ? 'cannot be waived: the text has to be readable' : isWaivable ? 'can be waived with a reason and a date' : 'can never be waived';
    const fix = { none: 'no fix is offered', safe: 'a fix is offered that keeps the meaning', review: 'a fix is offered that changes the design and has to be agreed', some: 'a fix is offered where the meaning is plain' }[fixes];
    return `Usually ${/^[aeio]/.test(severity) ? 'an' : 'a'} ${severity}; ${waiver}; ${fix}.`;
}

const sourceLine = (citation: Citation): string =>
    `${showCitation(citation)}${citation.kind === 'standard' || citation.kind === 'practice' ? `: ${citation.text}` : ''}${citation.kind === 'standard' && citation.fromMemory ? ' (figure from memory of the document)' : ''}`;

export function ruleHelpText(help: RuleHelp, width: number): string {
    const { id, family, title, why, bad, good, sources } = help;
    const code = (heading: string, text: string): string[] => text === '' ? [] : ['', heading, ...text.split('\n').map(line => `    ${line}`.trimEnd())];
    return [
        `${id} (${family})`, title, '', ...wrap(why, width), '', ...wrap(standing(help), width),
        ...(sources.length > 0 ? ['', 'Sources', ...sources.flatMap(citation => wrap(`- ${sourceLine(citation)}`, width))] : []),
        ...code('Wrong', bad), ...code('Right', good), '',
    ].join('\n');
}

export function ruleHelpMarkdown(help: RuleHelp): string {
    const { family, why, bad, good, sources } = help;
    const code = (heading: string, text: string): string[] => {
        if (text === '') return [];
        // a fence longer than any run of backticks in the text
        const fence = '`'.repeat(Math.max(3, ...[...text.matchAll(/`+/g)].map(match => match[0].length + 1)));
        return ['', `**${heading}**`, '', `${fence}${family === 'settings' ? 'json' : 'hotroom'}`, text, fence];
    };
    return [
        escapeMarkdown(why), '', escapeMarkdown(standing(help)),
        ...(sources.length > 0 ? ['', ...sources.map(citation => `- ${escapeMarkdown(sourceLine(citation))}`)] : []),
        ...code('Wrong', bad), ...code('Right', good), '',
    ].join('\n');
}
