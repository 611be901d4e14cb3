import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import configuration from '../../client/language-configuration.json' with { type: 'json' };

const { contributes } = manifest;
const root = new URL('../../', import.meta.url);

test('every command has a category and is registered', () => {
    const registered = ['commands', 'comparison-commands'].map(name => readFileSync(new URL(`client/src/${name}.ts`, root), 'utf8')).join('\n');
    for (const { command, category, title } of contributes.commands) {
        expect(category).toBe('Hotroom');
        expect(title).toMatch(/^[A-Z]/);
        expect(registered).toContain(`register('${command}'`);
    }
});

test('every command says when it can run', () => {
    const named = contributes.menus.commandPalette.map(({ command }) => command);
    expect([...named].sort()).toEqual(contributes.commands.map(({ command }) => command).sort());
    for (const { when } of contributes.menus.commandPalette) expect(when).not.toBe('');
});

test('every menu names commands and submenus that are there', () => {
    const commands = new Set(contributes.commands.map(({ command }) => command));
    expect(contributes.menus['hotroom.compare'].map(({ command }) => command).filter(command => !commands.has(command))).toEqual([]);
    const submenus = contributes.submenus.map(({ id }) => id);
    expect([...contributes.menus['editor/context'], ...contributes.menus['explorer/context']].map(({ submenu }) => submenu).filter(id => !submenus.includes(id))).toEqual([]);
    for (const { when } of [...contributes.menus['editor/context'], ...contributes.menus['explorer/context']]) expect(when).toMatch(/hotroom/);
});

test('one button in the editor title, and no shortcut taken', () => {
    expect(contributes.menus['editor/title']).toHaveLength(1);
    expect(contributes).not.toHaveProperty('keybindings');
});

test('every setting has its prefix, a default and a description', () => {
    for (const [name, setting] of Object.entries(contributes.configuration.properties)) {
        expect(name).toMatch(/^hotroom\./);
        expect(setting).toHaveProperty('default');
        expect(setting.description.length).toBeGreaterThan(10);
    }
});

test('works untrusted, wakes late, sends nothing', () => {
    expect(manifest.capabilities.untrustedWorkspaces.supported).toBe(true);
    expect(manifest.activationEvents).toEqual(['onLanguage:hotroom', 'onWebviewPanel:hotroom.cutList', 'onWebviewPanel:hotroom.comparison', 'onWebviewPanel:hotroom.review']);
});

test('every file named exists', () => {
    const [language] = contributes.languages;
    const files = [manifest.icon, ...contributes.jsonValidation.map(({ url }) => url), language!.configuration, language!.icon.light, language!.icon.dark,
        ...contributes.commands.flatMap(({ icon }) => (icon ? [icon.light, icon.dark] : []))];
    for (const file of files) expect(existsSync(new URL(file, root)), file).toBe(true);
});

test.each([
    ['examples/birch-point.hotroom:12:5: error bench/head-clearance-too-low: Head clearance is 40"; 42" is needed.', ['examples/birch-point.hotroom', '12', '5', 'error', 'bench/head-clearance-too-low']],
    ['C:\\jobs\\a b.hotroom:1:1: warning curly-quote: a: b', ['C:\\jobs\\a b.hotroom', '1', '1', 'warning', 'curly-quote']],
    ['a.hotroom:3:14: info bench/feet-below-stones: x', ['a.hotroom', '3', '14', 'info', 'bench/feet-below-stones']],
])('the problem matcher reads %s', (line, parts) => {
    const [{ pattern }] = contributes.problemMatchers as [(typeof contributes.problemMatchers)[number]];
    const found = new RegExp(pattern.regexp).exec(line);
    expect([pattern.file, pattern.line, pattern.column, pattern.severity, pattern.code].map(group => found?.[group])).toEqual(parts);
});

test.each(['3 findings: 1 error, 2 warnings', 'a.hotroom: 12 panels', '    at a.hotroom:3:4'])('the problem matcher leaves alone: %s', line => {
    expect(new RegExp(contributes.problemMatchers[0]!.pattern.regexp).test(line)).toBe(false);
});

test('an inch mark does not bring a second one', () => {
    expect(configuration.autoClosingPairs.map(({ open }) => open)).not.toContain('"');
});

test.each([
    ['head-clearance-too-low', ['head-clearance-too-low']],
    ['top 34-3/4"', ['top', '34-3/4"']],
    ['from left 23 1/4" // x', ['from', 'left', '23', '1/4"', 'x']],
    ['width - 2 * 19.5 mm', ['width', '2', '19.5', 'mm']],
    ['ambient 68degF', ['ambient', '68degF']],
    ['ledger_bas højde', ['ledger_bas', 'højde']],
])('words of %s', (text, words) => {
    const { pattern, flags } = configuration.wordPattern;
    expect(text.match(new RegExp(pattern, `g${flags}`))).toEqual(words);
});

test.each([
    ['room {', true], ['bench upper on back { // the top one', true], ['sensor on right { from front 38" }', false],
    ['// room {', false], ['number "{"', false], ['job a "b" {', true], ['width 84" // see {', false], ['opening 8" x 4" {', true], ['rail 37" {', true],
])('a line that opens a block indents the next: %s', (line, opens) => {
    expect(new RegExp(configuration.indentationRules.increaseIndentPattern).test(line)).toBe(opens);
});

test.each(['"'.repeat(400), '1"'.repeat(400), '"1'.repeat(400), '/ '.repeat(400), '{'.repeat(400)])('an odd line is judged at once: %#', line => {
    expect(typeof new RegExp(configuration.indentationRules.increaseIndentPattern).test(`${line}x`)).toBe('boolean');
}, 20_000);
