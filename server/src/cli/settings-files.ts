import { existsSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import { URI } from 'langium';
import type { ReportedFinding } from '../../../language/src/core/finding.js';
import { unknownNames } from '../../../language/src/settings/names-in-settings.js';
import { readSettings, type SettingsFile } from '../../../language/src/settings/read-settings.js';
import { resolveSettings, type SettingsAbove } from '../../../language/src/settings/resolve.js';
import { settingsFileName, type ProjectSettings } from '../../../language/src/settings/settings.js';
import type { OptionDefinition, ParsedArguments } from './arguments.js';
import { unreadable, usageFailure } from './exit-codes.js';
import { displayName, isBelow, readText, reasonOf, shown } from './files.js';

export const settingsOptions: readonly OptionDefinition[] = [
    { name: 'settings', value: 'FILE', doc: `Settings to use instead of every ${settingsFileName} between a job and the root.` },
    { name: 'no-settings', doc: `Use no ${settingsFileName}.` },
];

/** A settings file that was read, with its name as the person knows it. */
export interface NamedSettings { readonly name: string; readonly file: SettingsFile }

/** Finds and reads the settings files above jobs, each once. */
export class SettingsFiles {
    readonly remarks: string[] = [];
    private readonly files = new Map<string, NamedSettings | undefined>();
    private readonly only: string | undefined;
    private readonly isOff: boolean;

    /** @throws a failure when the file that is named cannot be used */
    constructor(args: Pick<ParsedArguments, 'value' | 'flag'>, private readonly cwd: string) {
        const named = args.value('settings');
        this.isOff = args.flag('no-settings') === true;
        if (named !== undefined && this.isOff) throw usageFailure('--settings and --no-settings do not go together.');
        this.only = named === undefined ? undefined : realFile(named, cwd);
    }

    /** What holds for a job file: the nearest place wins, up to the root. */
    of(file: string, root: string): ProjectSettings | undefined {
        if (this.isOff) return undefined;
        const above = this.only === undefined ? foldersUp(path.dirname(file), root).map(folder => path.join(folder, settingsFileName)) : [this.only];
        return resolveSettings(above.flatMap((one): SettingsAbove[] => {
            const settings = this.read(one, root);
            return settings ? [{ file: settings.file, path: relative(path.dirname(one), file) }] : [];
        }));
    }

    /** Every file that was read, in the order of the names. */
    get all(): readonly NamedSettings[] {
        return [...this.files.values()].filter(one => one !== undefined).sort((a, b) => a.name < b.name ? -1 : a.name > b.name ? 1 : 0);
    }
    /** @param houseRules names of the house rules in the files that were read */
    findings(houseRules: ReadonlySet<string>): readonly ReportedFinding[] {
        return this.all.flatMap(({ file }) => [...file.findings, ...unknownNames(file, houseRules)].sort((a, b) => a.at.start - b.at.start));
    }

    private read(file: string, root: string): NamedSettings | undefined {
        if (!this.files.has(file)) this.files.set(file, this.readNew(file, root));
        return this.files.get(file);
    }
    private readNew(file: string, root: string): NamedSettings | undefined {
        if (!existsSync(file) || !statSync(file).isFile()) return undefined;
        const name = displayName(file, realpathSync(this.cwd));
        if (file !== this.only && !isBelow(root, realpathSync(file))) {
            this.remarks.push(`${name} is a link that leads out of the root and was not read.`);
            return undefined;
        }
        return { name, file: readSettings(readText(file, name), URI.file(file).toString()) };
    }
}

function realFile(named: string, cwd: string): string {
    try {
        const real = realpathSync(path.resolve(cwd, named));
        if (statSync(real).isFile()) return real;
    } catch (error) {
        throw unreadable(`Cannot read ${shown(named)}: ${reasonOf(error)}.`);
    }
    throw usageFailure(`--settings wants a file; ${shown(named)} is none.`);
}

/** A folder and those it lies in, up to the root. */
function foldersUp(folder: string, root: string): string[] {
    const folders = [folder];
    for (let at = folder; at !== root && isBelow(root, at); at = path.dirname(at)) folders.push(path.dirname(at));
    return folders;
}

const relative = (folder: string, file: string): string => path.relative(folder, file).split(path.sep).join('/');
