import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { helpOption } from '../../server/src/cli/arguments.js';
import { commandHelp, mainHelp } from '../../server/src/cli/help.js';
import { commands } from '../../server/src/cli/run.js';
import { analyzeText } from '../support/workspace.js';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
const section = (heading: string): string => {
    const start = readme.indexOf(`## ${heading}\n`);
    expect(start, heading).toBeGreaterThan(0);
    return readme.slice(start).split(/\n##+ /)[0]!;
};
const switchesIn = (text: string): string[] => [...new Set([...text.matchAll(/--([a-z][a-z-]*)/g)].map(match => match[1]!))].sort();

describe('the first room', () => {
    const text = section('Your first room');
    const [job, additions] = [...text.matchAll(/```hotroom\n(.*?)```/gs)].map(match => match[1]!);
    // the README stands beside examples/, the tests keep the catalogues where jobs of that folder find them
    const inExamples = (source: string): string => source.replaceAll('"examples/', '"');
    const whole = job!.replace(/\}\n$/, `\n${additions!}}\n`);

    test('gives the findings the README names, and no other error or warning', async () => {
        const { findings } = await analyzeText(inExamples(job!));
        const prose = text.slice(text.indexOf('Every finding has its place'), text.indexOf('Write what is missing'));
        const named = [...prose.matchAll(/`([a-z]+(?:-[a-z]+)+)`/g)].map(match => match[1]!);
        expect(named.length).toBeGreaterThan(3);
        const found = findings.map(({ rule }) => rule);
        expect(named.filter(rule => !found.includes(rule))).toEqual([]);
        expect(findings.filter(({ severity, rule }) => (severity === 'error' || severity === 'warning') && !named.includes(rule)).map(({ rule, message }) => `${rule}: ${message}`)).toEqual([]);
    });
    test('is sound with what the README adds', async () => {
        const { findings, jobs } = await analyzeText(inExamples(whole));
        expect(findings.filter(({ severity }) => severity === 'error' || severity === 'warning').map(({ rule, message }) => `${rule}: ${message}`)).toEqual([]);
        expect(jobs.map(({ results }) => results.parts.length > 0)).toEqual([true]);
    });
});

describe('the command line', () => {
    const rows = section('The command line').split('\n').filter(line => line.startsWith('| `hotroom'));
    test.each(commands.map(command => [command.name, command] as const))('%s: the README, the help and the program know the same switches', (name, command) => {
        const own = rows.filter(row => row.startsWith(`| \`hotroom ${name}`)).join('\n');
        const known = command.options.flatMap(option => option.isNegatable ? [option.name, `no-${option.name}`] : [option.name]).sort();
        expect(switchesIn(own)).toEqual(known);
        expect(switchesIn(commandHelp(command, 110).split('\nOptions\n')[1]!.split('\nExamples\n')[0]!)).toEqual(expect.arrayContaining([...known, helpOption.name]));
        // words a switch takes
        for (const { choices = [] } of command.options) for (const choice of choices) expect(rows.join('\n'), choice).toContain(choice);
    });
    test('has no command of its own, and says the switches of the program', () => {
        expect([...new Set(rows.map(row => /^\| `hotroom ([a-z]+)/.exec(row)?.[1]))].sort()).toEqual(commands.map(({ name }) => name).sort());
        const own = switchesIn(mainHelp(commands, 110).split('\nOptions\n')[1]!.split('\nExit codes\n')[0]!);
        expect(own).toEqual(['help', 'version']);
        for (const name of own) expect(section('The command line')).toContain(`\`--${name}\``);
    });
});

test('the least version of Node is the one of package.json', () => {
    const { engines } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as { engines: { node: string } };
    expect(readme).toContain(`Node ${engines.node.replace('>=', '')} or newer`);
    expect(readme.match(/Node \d+ or newer/g)).toHaveLength(1);
});
