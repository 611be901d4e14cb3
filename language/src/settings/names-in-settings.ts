import type { ReportedFinding } from '../core/finding.js';
import { nearestName } from '../core/nearest.js';
import { showList } from '../core/show.js';
import { families, isLower, knownRule, knownRules } from './may-be-lowered.js';
import type { SettingsFile } from './read-settings.js';
import type { ChosenSeverity } from './settings.js';

/**
 * Names in `severities` that nothing answers to. Which house rules there are, only the jobs know, so this is asked apart from reading: a name like that of a
 * known rule is a misspelling, any other may be a house rule of files that are not here, which is said as a warning.
 * @param houseRules names of the house rules in sight
 */
export function unknownNames({ names }: SettingsFile, houseRules: ReadonlySet<string>): readonly ReportedFinding[] {
    return names.flatMap(({ value: name, span }): ReportedFinding[] => {
        if (knownRule(name) || families.includes(name) || houseRules.has(name)) return [];
        const nearest = nearestName(name, [...knownRules.map(({ id }) => id), ...families, ...houseRules]);
        return [{
            rule: 'setting-of-unknown-rule', severity: nearest === undefined ? 'warning' : 'error', at: span,
            message: nearest === undefined ? `${name} is no rule and no family of rules, and no house rule in sight has this name: it changes nothing here.` : `There is no rule ${name}. Is ${nearest} meant?`,
            ...(nearest !== undefined && { fixes: [{ title: `Write ${nearest}`, safety: 'safe' as const, edits: [{ span, newText: JSON.stringify(nearest) }] }] }),
        }];
    });
}

/** Which rules of a family keep their severity although the family is lowered; nothing when none does. */
export function familyRefusals(family: string, chosen: ChosenSeverity): string | undefined {
    if (!families.includes(family)) return undefined;
    const kept = knownRules.filter(rule => rule.family === family && !rule.isLowerable && isLower(chosen, rule.severity)).map(({ id }) => id);
    if (kept.length === 0) return undefined;
    const shown = kept.slice(0, mostShown);
    const names = kept.length > shown.length ? `${shown.join(', ')} and ${kept.length - shown.length} more` : showList(shown);
    return `${names} of the family ${family} cannot be ${chosen === 'off' ? 'turned off' : 'lowered'} and ${kept.length === 1 ? 'keeps its severity' : 'keep their severities'}; the others follow.`;
}
const mostShown = 4;
