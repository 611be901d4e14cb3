import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { unknownNames } from '../../language/src/settings/names-in-settings.js';
import { readSettings } from '../../language/src/settings/read-settings.js';
import { settingsJsonSchema, topKeys } from '../../language/src/settings/schema.js';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
const section = readme.slice(readme.indexOf('\n## Settings\n')).split(/\n## /)[1]!;

test('the settings in the README are sound, show every key and are explained', () => {
    const text = /```json\n(.*?)```/s.exec(section)![1]!;
    const file = readSettings(text, 'memory:/hotroom.json');
    expect([...file.findings, ...unknownNames(file, new Set())].filter(({ severity }) => severity !== 'info')).toEqual([]);
    expect(Object.keys(JSON.parse(text) as object).sort()).toEqual([...topKeys].sort());
    for (const key of topKeys.filter(key => key !== 'folders')) expect(section).toContain(`- \`${key}\`:`);
});

test('the JSON Schema knows the same keys, and refuses what may not be lowered', () => {
    const schema = settingsJsonSchema() as { properties: Record<string, unknown>; additionalProperties: boolean; definitions: { severities: { properties: Record<string, { enum: string[] }>; additionalProperties: unknown } } };
    expect(Object.keys(schema.properties).sort()).toEqual(['$schema', ...topKeys].sort());
    expect(schema.additionalProperties).toBe(false);
    const { severities } = schema.definitions;
    expect([severities.properties['clearance-beside-too-small']?.enum, severities.properties['unknown-word']?.enum, severities.properties['climb-too-high']?.enum]).toEqual([['error'], ['error'], ['error', 'warning', 'info', 'hint', 'off']]);
    // a house rule goes by a name no schema knows
    expect(severities.additionalProperties).toEqual({ type: 'string', enum: ['error', 'warning', 'info', 'hint', 'off'] });
});
