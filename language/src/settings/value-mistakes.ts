import { nearestName } from '../core/nearest.js';
import { showList } from '../core/show.js';
import { ruleSetIds } from '../rule-sets/index.js';
import type { Path } from './json-tree.js';
import { chosenSeverities, knownRule, severitiesFor } from './may-be-lowered.js';
import { roundingWords, unitWords } from './schema.js';
import type { SettingsRuleId } from './settings-rules.js';
import type { ChosenSeverity } from './settings.js';

export interface ValueMistake {
    readonly rule: SettingsRuleId;
    readonly message: string;
    /** The word that is probably meant. */
    readonly meant?: string;
}

/**
 * What is wrong with a value the schema refuses.
 * @param path of the value in its file
 */
export function valueMistake(path: Path, value: unknown): ValueMistake {
    const [key, name, ...rest] = path[0] === 'folders' && path.length > 2 ? path.slice(2) : path;
    const wrong = (message: string, words?: readonly string[]): ValueMistake => {
        const meant = words && typeof value === 'string' ? nearestName(value, words) : undefined;
        return { rule: 'setting-value-wrong', message: `${message}${meant === undefined ? '' : ` Is ${meant} meant?`}`, ...(meant !== undefined && { meant }) };
    };
    const given = show(value);
    const oneOf = (what: string, words: readonly string[]): ValueMistake => wrong(`${what} takes ${showList(words, 'or')}, not ${given}.`, words);
    switch (key) {
        case undefined: return wrong(`Settings stand in braces, such as { "units": "mm" }, not ${given}.`);
        case 'rules':
            if (typeof name === 'number' && rest.length === 0) return wrong(`There is no rule set ${given}. There are ${showList(ruleSetIds)}.`, ruleSetIds);
            return wrong(Array.isArray(value) ? 'rules names one rule set or more; without any, leave the line out.' : `rules takes a list, such as ["us_dwelling"], not ${given}.`);
        case 'severities': return name === undefined ? wrong(`severities takes rules with their severities in braces, such as { "climb-too-high": "error" }, not ${given}.`) : severityMistake(String(name), value, oneOf);
        case 'units': return oneOf('units', unitWords);
        case 'rounding': return oneOf('rounding', roundingWords);
        case 'folders': return wrong(name === undefined ? `folders takes folders with their settings in braces, such as { "prototypes": { "units": "mm" } }, not ${given}.` : `The folder ${String(name)} takes settings in braces, not ${given}.`);
        case '$schema': return wrong(`$schema takes a text, not ${given}.`);
        default: return wrong(`${String(key)} does not take ${given}.`);
    }
}

function severityMistake(name: string, value: unknown, oneOf: (what: string, words: readonly string[]) => ValueMistake): ValueMistake {
    const rule = knownRule(name);
    if (!rule || rule.isLowerable || !chosenSeverities.includes(value as ChosenSeverity)) return oneOf(name, rule ? severitiesFor(rule) : chosenSeverities);
    const what = value === 'off' ? 'turned off' : 'lowered';
    const why = rule.family === 'language' ? 'It is a mistake of the text: mend it where it stands.' : `“${rule.title}” can never be waived: mend the job, or ask the heater's maker or the local authority.`;
    return { rule: 'setting-not-allowed', message: `${name} cannot be ${what} and stays ${rule.severity}. ${why}` };
}

function show(value: unknown): string {
    if (typeof value === 'string') return JSON.stringify(value);
    if (Array.isArray(value)) return 'a list';
    return typeof value === 'object' && value !== null ? 'settings in braces' : String(value);
}
