import { wrap } from '../../../language/src/renderings/report-text.js';
import { helpOption } from './arguments.js';
import type { Command } from './command.js';
import { version } from './version.js';

const codes = [
    'Exit codes', '  0  nothing to report', '  1  findings at or above --fail-on, files that are not formatted,', '     or a change of meaning between what diff compares', '  2  wrong use of the command',
    '  3  a file cannot be read or written', '  4  a defect of the program',
];

export function mainHelp(commands: readonly Command[], width: number): string {
    const nameWidth = Math.max(...commands.map(usage).map(text => text.length));
    return [
        `hotroom ${version}`, ...wrap('Checks job files for prefabricated timber-lined hot rooms and prints their cut lists and electrical schedules.', width), '',
        'Commands', ...commands.map(command => `  ${usage(command).padEnd(nameWidth)}  ${command.summary}`), '',
        'Options', '  --help     Show this help; behind a command, the command\'s.', '  --version  Show the version.', '',
        ...codes, '',
        ...wrap('Colours are used on a terminal only, and not when NO_COLOR is set.', width),
        ...wrap('Nothing this program prints is an approval: the heater\'s manual, the local code and licensed trades decide.', width), '',
    ].join('\n');
}

export function commandHelp(command: Command, width: number): string {
    const options = [...command.options, helpOption].map(({ name, value, doc, isNegatable }) => ({ left: `--${name}${isNegatable ? `, --no-${name}` : ''}${value === undefined ? '' : ` ${value}`}`, doc }));
    const left = Math.max(...options.map(option => option.left.length));
    return [
        `hotroom ${usage(command)}${command.options.some(({ value }) => value !== undefined) ? ' [options]' : ''}`, ...wrap(command.summary, width), '',
        ...command.doc.flatMap(paragraph => [...wrap(paragraph, width), '']),
        'Options', ...options.flatMap(option => wrap(option.doc, Math.max(30, width - left - 4)).map((line, index) => `  ${(index === 0 ? option.left : '').padEnd(left)}  ${line}`)), '',
        'Examples', ...command.examples.map(example => `  ${example}`), '',
        ...codes, '',
    ].join('\n');
}

const usage = ({ name, takes }: Command): string => takes === '' ? name : `${name} ${takes}`;
