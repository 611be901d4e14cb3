import { nearestName } from '../../../language/src/core/nearest.js';
import { parseCommandArguments } from './arguments.js';
import { check } from './check.js';
import type { Command } from './command.js';
import { widthOf, type Console } from './console.js';
import { cutlist } from './cutlist.js';
import { diff } from './diff.js';
import { draw } from './draw.js';
import { CommandFailure, exitCodes, usageFailure, type ExitCode } from './exit-codes.js';
import { explain } from './explain.js';
import { exportModel } from './export.js';
import { shown } from './files.js';
import { fmt } from './fmt.js';
import { commandHelp, mainHelp } from './help.js';
import { review } from './review.js';
import { schedule } from './schedule.js';
import { serve } from './serve.js';
import { version } from './version.js';

export const commands: readonly Command[] = [check, cutlist, diff, draw, explain, exportModel, fmt, review, schedule, serve];

/**
 * Runs one command line.
 * @param words behind the program's name
 * @returns the exit code; never throws
 */
export async function run(words: readonly string[], console: Console): Promise<ExitCode> {
    try {
        return await dispatch(words, console);
    } catch (error) {
        if (error instanceof CommandFailure) {
            console.stderr.write(`hotroom: ${error.message}\n`);
            return error.exitCode;
        }
        return reportDefect(error, words, console);
    }
}

async function dispatch(words: readonly string[], console: Console): Promise<ExitCode> {
    const [first, ...rest] = words;
    const width = widthOf(console.stdout);
    if (first === undefined) throw usageFailure(`A command is missing: ${commands.map(({ name }) => name).join(', ')}. hotroom --help says more.`);
    if (first === '--help' || first === '-h') return print(mainHelp(commands, width), console);
    if (first === '--version' || first === '-v') return print(`hotroom ${version}\n`, console);
    if (first === 'help') {
        const [name] = rest;
        return print(name === undefined ? mainHelp(commands, width) : commandHelp(commandNamed(name), width), console);
    }
    const command = commandNamed(first);
    const args = parseCommandArguments(command.name, rest, command.options);
    if (args.flag('help') === true) return print(commandHelp(command, width), console);
    return command.run(args, console);
}

function print(text: string, { stdout }: Console): ExitCode {
    stdout.write(text);
    return exitCodes.none;
}

function commandNamed(name: string): Command {
    const command = commands.find(candidate => candidate.name === name);
    if (command) return command;
    if (name.startsWith('-')) throw usageFailure(`A command comes first: ${commands.map(one => one.name).join(', ')}; then its options. ${shown(name)} is no command.`);
    const meant = nearestName(name, commands.map(one => one.name));
    throw usageFailure(`There is no command ${shown(name)}.${meant === undefined ? ` There are ${commands.map(one => one.name).join(', ')}.` : ` Is ${meant} meant?`}`);
}

/** A defect of ours: one line and how to report it; the stack only for those who ask for it. */
function reportDefect(error: unknown, words: readonly string[], { stderr, env }: Console): ExitCode {
    const message = error instanceof Error ? error.message : String(error);
    stderr.write(`hotroom: a defect of the program: ${shown(message)}. Please report it with version ${version}, the command (${shown(words.join(' '))}) and the file; HOTROOM_DEBUG=1 adds where it happened.\n`);
    if (env['HOTROOM_DEBUG'] === '1' && error instanceof Error && error.stack !== undefined) stderr.write(`${error.stack}\n`);
    return exitCodes.internal;
}
