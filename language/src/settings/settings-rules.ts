import type { LanguageRule } from '../model/language-rules.js';

/** A mistake in a settings file. */
export type SettingsRuleId = 'settings-unreadable' | 'setting-unknown' | 'setting-repeated' | 'setting-value-wrong' | 'setting-of-unknown-rule' | 'setting-not-allowed';

/** Every mistake of a settings file with its documentation. */
export const settingsRules: Readonly<Record<SettingsRuleId, LanguageRule>> = {
    'settings-unreadable': { title: 'A settings file that cannot be read', severity: 'error', why: 'Settings are JSON. What stands around the mistake may be meant otherwise than it reads, so it is left out; the rest holds.', bad: '{ "units": "mm", }', good: '{ "units": "mm" }' },
    'setting-unknown': { title: 'A setting that does not exist', severity: 'error', why: 'A misspelled setting would silently change nothing.', bad: '{ "unit": "mm" }', good: '{ "units": "mm" }' },
    'setting-repeated': { title: 'A setting written twice', severity: 'error', why: 'Which of the two holds is not known, so neither does.', bad: '{ "units": "mm", "units": "in" }', good: '{ "units": "mm" }' },
    'setting-value-wrong': { title: 'A setting with a value it does not take', severity: 'error', why: 'The setting is left as it would be without the line; every other one holds.', bad: '{ "units": "inch" }', good: '{ "units": "in" }' },
    'setting-of-unknown-rule': { title: 'A severity for a rule nobody knows', severity: 'error', why: 'A misspelled rule would silently keep its severity.', bad: '{ "severities": { "climb-to-high": "error" } }', good: '{ "severities": { "climb-too-high": "error" } }' },
    'setting-not-allowed': { title: 'A severity that may not be lowered', severity: 'error', why: 'Clearances of the heater, the sensor, the limiter, glass and the door latch keep people from harm, and a text that cannot be read is no job: no project may make light of them.', bad: '{ "severities": { "clearance-beside-too-small": "off" } }', good: '{ "severities": { "climb-too-high": "error" } }' },
};
export const isSettingsRule = (id: string): id is SettingsRuleId => Object.hasOwn(settingsRules, id);
