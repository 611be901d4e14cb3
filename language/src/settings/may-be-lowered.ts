import type { ReportedFinding, Severity } from '../core/finding.js';
import { isLanguageRule, languageRules } from '../model/language-rules.js';
import { ruleSets } from '../rule-sets/index.js';
import { isNeverWaived } from '../rules/apply-waivers.js';
import { allRules, ruleById } from '../rules/index.js';
import type { ChosenSeverity } from './settings.js';

const ranks: Readonly<Record<ChosenSeverity, number>> = { off: 0, hint: 1, info: 2, warning: 3, error: 4 };
export const isLower = (a: ChosenSeverity, b: ChosenSeverity): boolean => ranks[a] < ranks[b];
export const chosenSeverities: readonly ChosenSeverity[] = ['error', 'warning', 'info', 'hint', 'off'];

/** Families a severity can be chosen for: those of the rules, and the mistakes of the language. */
export const families: readonly string[] = [...new Set(allRules.map(({ family }) => family)), 'language'];

/** A built-in rule or mistake of the language, as far as severities go. */
export interface KnownRule { readonly id: string; readonly family: string; readonly title: string; readonly severity: Severity; readonly isLowerable: boolean }

export const knownRules: readonly KnownRule[] = [
    ...allRules.map(({ id, family, title, severity, isWaivable }) => ({ id, family, title, severity, isLowerable: isWaivable })),
    ...Object.entries(languageRules).map(([id, { title, severity }]) => ({ id, family: 'language', title, severity, isLowerable: severity !== 'error' })),
];
const byId = new Map(knownRules.map(rule => [rule.id, rule]));
export const knownRule = (id: string): KnownRule | undefined => byId.get(id);
export const familyOf = (id: string): string | undefined => byId.get(id)?.family;

/** Severities a project may choose for a rule. */
export const severitiesFor = ({ severity, isLowerable }: KnownRule): readonly ChosenSeverity[] => isLowerable ? chosenSeverities : chosenSeverities.filter(chosen => !isLower(chosen, severity));

/** Whether one finding may be made less than it is: not when nobody may waive it, and not when it says that a text cannot be read. */
export function mayBeLowered(finding: ReportedFinding): boolean {
    if (isLanguageRule(finding.rule)) return finding.severity !== 'error';
    return finding.isWaivable !== false && ruleById(finding.rule)?.isWaivable !== false && !isNeverWaived(finding, ruleSets);
}
