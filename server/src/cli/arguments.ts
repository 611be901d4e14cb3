import { parseArgs, type ParseArgsConfig } from 'node:util';
import { nearestName } from '../../../language/src/core/nearest.js';
import { usageFailure } from './exit-codes.js';

/** One option of a command. */
export interface OptionDefinition {
    readonly name: string;
    readonly doc: string;
    /** What stands behind it in the help; a switch has none. */
    readonly value?: string;
    /** The only values it takes. */
    readonly choices?: readonly string[];
    readonly isNegatable?: true;
}

export interface ParsedArguments {
    readonly files: readonly string[];
    /** Value of an option, the last one given. */
    readonly value: (name: string) => string | undefined;
    /** Whether a switch was given, and which way; `undefined` when it was not. */
    readonly flag: (name: string) => boolean | undefined;
}

export const helpOption: OptionDefinition = { name: 'help', doc: 'Show this help.' };

/** Reads the words after a command; a misspelt option is answered with the nearest one. */
export function parseCommandArguments(command: string, words: readonly string[], definitions: readonly OptionDefinition[]): ParsedArguments {
    const known = [...definitions, helpOption];
    const options: NonNullable<ParseArgsConfig['options']> = {};
    for (const { name, value, isNegatable } of known) {
        options[name] = { type: value === undefined ? 'boolean' : 'string', ...(name === 'help' && { short: 'h' }) };
        if (isNegatable) options[`no-${name}`] = { type: 'boolean' };
    }
    const { tokens, positionals } = parseArgs({ args: [...words], strict: false, allowPositionals: true, allowNegative: false, tokens: true, options });
    const given = new Map<string, string | boolean>();
    for (const token of tokens) {
        if (token.kind !== 'option') continue;
        const positive = known.find(({ name }) => name === token.name);
        const negated = positive ? undefined : known.find(({ name, isNegatable }) => isNegatable && `no-${name}` === token.name);
        const definition = positive ?? negated;
        if (!definition) throw usageFailure(`hotroom ${command} has no option ${token.rawName}.${nearest(token.rawName, known)}`);
        if (definition.value === undefined) {
            if (token.inlineValue === true) throw usageFailure(`${token.rawName} takes no value.`);
            given.set(definition.name, negated === undefined);
        } else {
            given.set(definition.name, checkedValue(definition, token.rawName, token.value, token.inlineValue === true));
        }
    }
    return {
        files: positionals,
        value: name => { const value = given.get(name); return typeof value === 'string' ? value : undefined; },
        flag: name => { const value = given.get(name); return typeof value === 'boolean' ? value : undefined; },
    };
}

function nearest(rawName: string, known: readonly OptionDefinition[]): string {
    const names = known.flatMap(({ name, isNegatable }) => isNegatable ? [name, `no-${name}`] : [name]);
    const meant = nearestName(rawName.replace(/^-+/, ''), names);
    return meant === undefined ? '' : ` Is --${meant} meant?`;
}

function checkedValue({ name, value, choices }: OptionDefinition, rawName: string, given: string | undefined, isInline: boolean): string {
    // without a value of its own, an option would swallow the option behind it
    if (given === undefined || given === '' || (!isInline && given.startsWith('-') && given !== '-')) throw usageFailure(`${rawName} wants a value: --${name} ${value ?? ''}.`);
    if (choices && !choices.includes(given)) {
        const meant = nearestName(given, choices);
        throw usageFailure(`${rawName} takes ${choices.join(', ')}, not ${given}.${meant === undefined ? '' : ` Is ${meant} meant?`}`);
    }
    return given;
}
