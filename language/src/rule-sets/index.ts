import { californiaAccessible, usAccessible } from './accessible.js';
import { canadaElectrical } from './canada.js';
import { goodPractice } from './good-practice.js';
import { iec } from './iec.js';
import type { RuleFamily, RuleSet } from './rule-set.js';
import { usCommercial, usDwelling } from './united-states.js';

export * from './decisions.js';
export * from './figure.js';
export * from './keys.js';
export * from './rule-set.js';
export * from './strictest.js';
export { benchLoads, type LoadCase } from './load-cases.js';
export { zoneScopeLine } from './iec.js';

/** Every published rule set the tool knows, in the order they are offered. */
export const ruleSets = [usDwelling, usCommercial, usAccessible, californiaAccessible, canadaElectrical, iec, goodPractice] as const;
export type RuleSetId = (typeof ruleSets)[number]['id'];
export const ruleSetIds: readonly RuleSetId[] = ruleSets.map(({ id }) => id);

/** The set of that id; `undefined` for a word that names none. */
export const findRuleSet = (id: string): RuleSet<RuleSetId> | undefined => ruleSets.find(set => set.id === id);

/**
 * By which electrical rules the circuit is calculated.
 * @returns `us` or `iec` when the sets agree; `both` when they name the two at once, which is a contradiction for one circuit; `undefined` when none speaks
 */
export function electricalFamily(sets: readonly RuleSet[]): Exclude<RuleFamily, 'any'> | 'both' | undefined {
    const families = new Set(sets.map(({ family }) => family).filter(family => family !== 'any'));
    if (families.size > 1) return 'both';
    return [...families][0];
}

/** What the sets together contain and the tool does not check, each item once, in the order of the sets. */
export const notCheckedBy = (sets: readonly RuleSet[]): readonly string[] => [...new Set(sets.flatMap(({ notChecked }) => notChecked))];
