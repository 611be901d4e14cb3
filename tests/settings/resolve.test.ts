import { describe, expect, test } from 'vitest';
import { patternFits } from '../../language/src/settings/pattern.js';
import { readSettings } from '../../language/src/settings/read-settings.js';
import { resolveSettings, type SettingsAbove } from '../../language/src/settings/resolve.js';

const above = (path: string, settings: object, name = 'hotroom.json'): SettingsAbove => ({ path, file: readSettings(JSON.stringify(settings), `memory:/${name}`) });
const chosen = (files: readonly SettingsAbove[]): unknown => {
    const settings = resolveSettings(files);
    return settings && { rules: settings.rules?.value, units: settings.units?.value, rounding: settings.rounding?.value, severities: settings.severities.map(layer => Object.fromEntries([...layer].map(([name, { value }]) => [name, value]))) };
};

describe('the nearest place wins, key by key', () => {
    test('nothing said is nothing', () => { expect([resolveSettings([]), chosen([above('a.hotroom', {})]), chosen([above('a.hotroom', { folders: { b: { units: 'mm' } } })])]).toEqual([undefined, undefined, undefined]); });
    test('a nearer file over a farther one', () => {
        expect(chosen([above('a.hotroom', { units: 'mm' }, 'b/hotroom.json'), above('b/a.hotroom', { units: 'in', rounding: 'exact', rules: ['iec'] })])).toEqual({ units: 'mm', rounding: 'exact', rules: ['iec'], severities: [] });
    });
    test('a folder over what stands outside of folders, and a later one over an earlier', () => {
        const settings = { units: 'in', rounding: 'shop', folders: { jobs: { units: 'mm', rounding: 'exact' }, 'jobs/old': { units: 'cm' }, other: { units: 'm' } } };
        expect(chosen([above('jobs/old/a.hotroom', settings)])).toMatchObject({ units: 'cm', rounding: 'exact' });
        expect(chosen([above('jobs/a.hotroom', settings)])).toMatchObject({ units: 'mm', rounding: 'exact' });
        expect(chosen([above('a.hotroom', settings)])).toMatchObject({ units: 'in', rounding: 'shop' });
    });
    test('a nearer file over the folders of a farther one', () => {
        expect(chosen([above('a.hotroom', { units: 'mm' }, 'jobs/hotroom.json'), above('jobs/a.hotroom', { folders: { jobs: { units: 'in', rounding: 'exact' } } })])).toMatchObject({ units: 'mm', rounding: 'exact' });
    });
    test('severities stay apart by place, the nearest first', () => {
        expect(chosen([above('a.hotroom', { severities: { site: 'info' } }, 'b/hotroom.json'), above('b/a.hotroom', { severities: { 'climb-too-high': 'off' }, folders: { b: { severities: { bench: 'error' } } } })]))
            .toMatchObject({ severities: [{ site: 'info' }, { bench: 'error' }, { 'climb-too-high': 'off' }] });
    });
    test('other places or words have another key, the same ones the same', () => {
        const key = (files: readonly SettingsAbove[]): string | undefined => resolveSettings(files)?.key;
        const keys = [[above('a', { units: 'mm' })], [above('a', { units: 'in' })], [above('a', { units: 'mm' }, 'b.json')], [above('a', { rules: ['iec'], units: 'mm' })], [above('a', { severities: { site: 'off' } })], [above('a', { severities: { site: 'info' } })]].map(key);
        expect(new Set(keys).size).toBe(keys.length);
        expect(key([above('x', { units: 'mm' })])).toBe(keys[0]);
    });
});

test.each([
    ['jobs', 'jobs/a.hotroom', true], ['jobs', 'jobs/old/a.hotroom', true], ['jobs/', 'jobs/a.hotroom', true], ['./jobs', 'jobs/a.hotroom', true], ['jobs', 'other/jobs/a.hotroom', false], ['jobs', 'jobs2/a.hotroom', false],
    ['jobs/*/old', 'jobs/x/old/a.hotroom', true], ['jobs/*/old', 'jobs/x/y/old/a.hotroom', false], ['**/old', 'jobs/x/old/a.hotroom', true], ['**/old', 'old/a.hotroom', true], ['**/old', 'jobs/older/a.hotroom', false],
    ['jobs/**', 'jobs/a.hotroom', true], ['a/**/b', 'a/b/c.hotroom', true], ['a/**/b', 'a/x/y/b/c.hotroom', true], ['2?', '27/a.hotroom', true], ['2?', '2/a.hotroom', false], ['*', 'x/a.hotroom', true],
    ['jobs/a.hotroom', 'jobs/a.hotroom', true], ['jobs/*.hotroom', 'jobs/a.hotroom', true], ['jobs/b.hotroom', 'jobs/a.hotroom', false], ['Jobs', 'jobs/a.hotroom', false], ['a.b', 'axb/a.hotroom', false],
])('%s and %s: %s', (pattern, path, fits) => { expect(patternFits(pattern, path)).toBe(fits); });

// Ways to fit grow with the length of a pattern beyond all measure; the places it can have come to do not. The time limit of the test is the guard.
test('no pattern takes long', () => {
    expect(patternFits(`${'**/a/'.repeat(60)}b`, `${'a/'.repeat(400)}c`)).toBe(false);
    expect(patternFits('*a'.repeat(200), 'a'.repeat(2000))).toBe(true);
}, 60_000);
