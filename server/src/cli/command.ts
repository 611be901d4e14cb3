import type { OptionDefinition, ParsedArguments } from './arguments.js';
import type { Console } from './console.js';
import type { ExitCode } from './exit-codes.js';

/** One command of the program: its help and what it does. */
export interface Command {
    readonly name: string;
    /** What stands behind the name in the help. */
    readonly takes: string;
    readonly summary: string;
    /** Paragraphs of the help. */
    readonly doc: readonly string[];
    readonly options: readonly OptionDefinition[];
    readonly examples: readonly string[];
    readonly run: (args: ParsedArguments, console: Console) => Promise<ExitCode>;
}
