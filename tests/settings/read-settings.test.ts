import { describe, expect, test } from 'vitest';
import type { ReportedFinding } from '../../language/src/core/finding.js';
import { readSettings } from '../../language/src/settings/read-settings.js';
import { unknownNames } from '../../language/src/settings/names-in-settings.js';
import { applyFix } from '../support/check.js';

const uri = 'memory:/jobs/hotroom.json';
const show = (text: string, { severity, rule, at, message }: ReportedFinding): string => `${severity} ${rule} at ${text.slice(at.start, at.end)}: ${message}`;
const told = (text: string, houseRules: readonly string[] = []): string[] => {
    const file = readSettings(text, uri);
    return [...file.findings, ...unknownNames(file, new Set(houseRules))].map(finding => show(text, finding));
};

describe('what is right is read', () => {
    const text = `{
    "$schema": "./node_modules/hotroom/settings.schema.json",
    "rules": ["us_dwelling", "good_practice", "us_dwelling"],
    "severities": { "climb-too-high": "error", "air": "error", "seated_headroom": "off" },
    "units": "ft_in", "rounding": "drawing",
    "folders": { "prototypes": { "units": "mm" }, "**/trial": { "severities": { "climb-too-high": "off" } } }
}`;
    test('with its places', () => {
        const { values, folders, findings } = readSettings(text, uri);
        expect(findings).toEqual([]);
        expect([values.rules?.value, values.units?.value, values.rounding?.value]).toEqual([['us_dwelling', 'good_practice'], 'ft_in', 'drawing']);
        expect([...values.severities].map(([name, { value, span }]) => [name, value, text.slice(span.start, span.end)])).toEqual([['climb-too-high', 'error', '"error"'], ['air', 'error', '"error"'], ['seated_headroom', 'off', '"off"']]);
        expect(folders.map(({ pattern, values: { units, severities } }) => [pattern, units?.value, severities.get('climb-too-high')?.value])).toEqual([['prototypes', 'mm', undefined], ['**/trial', undefined, 'off']]);
    });
    test.each(['{}', '{ "severities": {} }', '{ "folders": {} }', '{ "severities": { "language": "error", "curly-quote": "off", "clearance-beside-too-small": "error" } }'])('%s', text => { expect(told(text)).toEqual([]); });
});

describe('a mistake is told at its very text, and everything else holds', () => {
    test.each<readonly [text: string, told: string, units: string | undefined]>([
        ['{ "units": "mm", "unit": "in" }', 'error setting-unknown at "unit": There is no setting unit. Is units meant?', 'mm'],
        ['{ "units": "mm", "climb-too-high": "off" }', 'error setting-unknown at "climb-too-high": There is no setting climb-too-high. Severities of rules stand in severities.', 'mm'],
        ['{ "units": "mm", "colour": 1 }', 'error setting-unknown at "colour": There is no setting colour. There are rules, severities, units, rounding and folders.', 'mm'],
        ['{ "units": "mm", "__proto__": { "units": "in" } }', 'error setting-unknown at "__proto__": There is no setting __proto__. There are rules, severities, units, rounding and folders.', 'mm'],
        ['{ "units": "mm", "folders": { "a": { "folders": {} } } }', 'error setting-unknown at "folders": There is no setting folders for a folder. There are rules, severities, units and rounding.', 'mm'],
        ['{ "units": "mm", "rounding": "drawn" }', 'error setting-value-wrong at "drawn": rounding takes shop, drawing or exact, not "drawn".', 'mm'],
        ['{ "units": "inn" }', 'error setting-value-wrong at "inn": units takes in, ft_in, ft, mm, cm or m, not "inn". Is in meant?', undefined],
        ['{ "units": 3 }', 'error setting-value-wrong at 3: units takes in, ft_in, ft, mm, cm or m, not 3.', undefined],
        ['{ "units": "mm", "rules": "iec" }', 'error setting-value-wrong at "iec": rules takes a list, such as ["us_dwelling"], not "iec".', 'mm'],
        ['{ "units": "mm", "rules": [] }', 'error setting-value-wrong at []: rules names one rule set or more; without any, leave the line out.', 'mm'],
        ['{ "units": "mm", "rules": ["us_dweling"] }', 'error setting-value-wrong at "us_dweling": There is no rule set "us_dweling". There are us_dwelling, us_commercial, us_accessible, california_accessible, ca_electrical, iec and good_practice. Is us_dwelling meant?', 'mm'],
        ['{ "units": "mm", "severities": { "climb-too-high": "warn" } }', 'error setting-value-wrong at "warn": climb-too-high takes error, warning, info, hint or off, not "warn".', 'mm'],
        ['{ "units": "mm", "severities": [] }', 'error setting-value-wrong at []: severities takes rules with their severities in braces, such as { "climb-too-high": "error" }, not a list.', 'mm'],
        ['{ "units": "mm", "severities": { "climb-to-high": "off" } }', 'error setting-of-unknown-rule at "climb-to-high": There is no rule climb-to-high. Is climb-too-high meant?', 'mm'],
        ['{ "units": "mm", "severities": { "seated_headrom": "off" } }', 'error setting-of-unknown-rule at "seated_headrom": There is no rule seated_headrom. Is seated_headroom meant?', 'mm'],
        ['{ "units": "mm", "severities": { "warmth_of_towels": "off" } }', 'warning setting-of-unknown-rule at "warmth_of_towels": warmth_of_towels is no rule and no family of rules, and no house rule in sight has this name: it changes nothing here.', 'mm'],
        ['{ "units": "mm", "folders": [] }', 'error setting-value-wrong at []: folders takes folders with their settings in braces, such as { "prototypes": { "units": "mm" } }, not a list.', 'mm'],
        ['{ "units": "mm", "folders": { "a": "in" } }', 'error setting-value-wrong at "in": The folder a takes settings in braces, not "in".', 'mm'],
        ['{ "units": "mm", "folders": { "a": { "units": "inch" } } }', 'error setting-value-wrong at "inch": units takes in, ft_in, ft, mm, cm or m, not "inch".', 'mm'],
        ['{ "units": "mm", "folders": { "../b": {} } }', 'error setting-value-wrong at "../b": "../b" leads out of the folder of this file; put a settings file there.', 'mm'],
        ['{ "units": "mm", "folders": { "a\\\\b": {} } }', 'error setting-value-wrong at "a\\\\b": "a\\b" has backslashes; a path is written with /.', 'mm'],
        ['{ "units": "mm", "folders": { "/a": {} } }', 'error setting-value-wrong at "/a": "/a" begins at the root of the disk; a path is written from the folder of this file.', 'mm'],
        ['{ "units": "mm", "folders": { ".": {} } }', 'error setting-value-wrong at ".": "." names no folder; settings for every job stand outside of folders.', 'mm'],
        ['{ "units": "mm", "$schema": 1 }', 'error setting-value-wrong at 1: $schema takes a text, not 1.', 'mm'],
        ['{ "units": "mm", "rounding": "shop", "units": "in" }', 'error setting-repeated at "units": units is written twice; one of the two has to go.', undefined],
        ['[]', 'error setting-value-wrong at []: Settings stand in braces, such as { "units": "mm" }, not a list.', undefined],
        ['null', 'error setting-value-wrong at null: Settings stand in braces, such as { "units": "mm" }, not null.', undefined],
        ['', 'error settings-unreadable at : This file is empty. Settings stand in braces, such as { "units": "mm" }.', undefined],
        ['{ "units": "mm", }', 'error settings-unreadable at }: This is not JSON. A setting in double quotes belongs here; behind the last one stands no comma.', 'mm'],
        ['{ "units": "mm" "rules": ["iec"] }', 'error settings-unreadable at "rules": This is not JSON. A comma is missing before this.', 'mm'],
        ['{ "rules": ["iec" "us_dwelling"], "units": "mm" }', 'error settings-unreadable at "us_dwelling": This is not JSON. A comma is missing before this.', 'mm'],
        ['{ "units": mm }', 'error settings-unreadable at mm: This is not JSON. Words stand in double quotes.', undefined],
        ['{ "units": "mm", "rounding": "sh', 'error settings-unreadable at "sh: This is not JSON. The closing quote is missing.', 'mm'],
        ['{ "units": "mm", // in\n "rounding": "shop" }', 'error settings-unreadable at // in: This is not JSON. JSON has no remarks; take it out.', 'mm'],
        ['{ "units": "mm"', 'error settings-unreadable at ": This is not JSON. A closing brace is missing.', undefined],
        ['{ "rounding": "shop" } "x"', 'error settings-unreadable at "x": This is not JSON. The settings end before this; nothing more may follow.', undefined],
        ['{ "folders": { "old" } }', 'error settings-unreadable at }: This is not JSON. A colon belongs between a setting and its value.', undefined],
    ])('%s', (text, message, units) => {
        expect(told(text, ['seated_headroom'])).toEqual([message]);
        expect(readSettings(text, uri).values.units?.value).toBe(units);
    });
    test('a wrong member leaves out its list, a wrong rule only itself', () => {
        const { values } = readSettings('{ "rules": ["iec", "x"], "severities": { "climb-too-high": "x", "bench": "info" } }', uri);
        expect([values.rules, [...values.severities.keys()]]).toEqual([undefined, ['bench']]);
    });
    test('a folder whose name ends like a list keeps what is its own', () => {
        const { folders, findings } = readSettings('{ "folders": { "0": { "units": "x", "rounding": "exact" }, "a": { "units": "mm" } } }', uri);
        expect(findings).toHaveLength(1);
        expect(folders.map(({ pattern, values }) => [pattern, values.units?.value, values.rounding?.value])).toEqual([['0', undefined, 'exact'], ['a', 'mm', undefined]]);
    });
    test('a word that is meant can be put in its place', () => {
        const text = '{ "unit": "in" }';
        const fix = readSettings(text, uri).findings[0]?.fixes?.[0];
        expect([fix?.title, applyFix(text, fix!)]).toEqual(['Write units', '{ "units": "in" }']);
    });
    test.each(['['.repeat(100_000), '{"a":'.repeat(100_000), '"folders'.repeat(1000), '\u0000', '{"units":"mm"}}}}', '{"rules":[[["iec"]]]}'])('nothing makes it fail: %#', text => {
        expect(readSettings(text, uri).findings.length).toBeGreaterThan(0);
    });
});

describe('what may never be lowered', () => {
    test.each([
        ['{ "severities": { "clearance-beside-too-small": "off" } }', 'error setting-not-allowed at "off": clearance-beside-too-small cannot be turned off and stays error. “', 0],
        ['{ "severities": { "clearance-beside-too-small": "hint" } }', 'error setting-not-allowed at "hint": clearance-beside-too-small cannot be lowered and stays error. “', 0],
        ['{ "severities": { "unknown-word": "warning" } }', 'error setting-not-allowed at "warning": unknown-word cannot be lowered and stays error. It is a mistake of the text: mend it where it stands.', 0],
        ['{ "folders": { "a": { "severities": { "waiver-not-allowed": "off" } } } }', 'error setting-not-allowed at "off": waiver-not-allowed cannot be turned off', 0],
        ['{ "severities": { "heater": "off" } }', 'info setting-not-allowed at "off": ', 1],
        ['{ "severities": { "language": "info" } }', 'info setting-not-allowed at "info": ', 1],
    ])('%s', (text, beginning, kept) => {
        const [message, ...more] = told(text);
        expect(message?.slice(0, beginning.length)).toBe(beginning);
        expect(more).toEqual([]);
        expect(readSettings(text, uri).values.severities.size).toBe(kept);
    });
});
