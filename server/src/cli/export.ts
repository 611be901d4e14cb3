import path from 'node:path';
import { nearestName } from '../../../language/src/core/nearest.js';
import { showList } from '../../../language/src/core/show.js';
import { modelExport } from '../../../language/src/exports/model-schema.js';
import type { Command } from './command.js';
import { exitCodes, usageFailure } from './exit-codes.js';
import { rootOption } from './fail-on.js';
import { findFiles, shown } from './files.js';
import { SettingsFiles, settingsOptions } from './settings-files.js';
import { todayOption, todayOf } from './today-option.js';
import { openWorkspace } from './workspace.js';
import { writeWhole } from './written-file.js';

export const exportModel: Command = {
    name: 'export', takes: 'FILES|FOLDERS…', summary: 'Write the jobs as data: what they say, what was computed, every panel, part, finding and waiver.',
    doc: [
        'JSON for other programs, with lengths as exact ticks of 12.5 nm beside a text in inches. Jobs that mean the same are equal byte for byte, in whatever unit, order or layout they are written. Within a version members are only added.',
        'A job with errors gives what is sound of it, and its findings with it.',
    ],
    options: [
        { name: 'job', value: 'NAME', doc: 'Only the job of this name.' },
        { name: 'out', value: 'FILE', doc: 'Write to a file instead of the terminal.' },
        rootOption, ...settingsOptions, todayOption,
    ],
    examples: ['hotroom export birch-point.hotroom', 'hotroom export birch-point.hotroom --job birch_point --out birch-point.json'],
    async run(args, console) {
        if (args.files.length === 0) throw usageFailure('hotroom export wants files or folders, such as hotroom export birch-point.hotroom.');
        const out = args.value('out');
        if (out !== undefined && path.extname(out).toLowerCase() === '.hotroom') throw usageFailure(`${shown(out)} is the name of a job file, and the data would take its place. Give --out another name, such as model.json.`);
        const workspace = await openWorkspace(findFiles(args.files, console.cwd, args.value('root')), console.cwd, { settings: new SettingsFiles(args, console.cwd), today: todayOf(args, console) });
        for (const remark of workspace.remarks) console.stderr.write(`hotroom: ${remark}\n`);
        const models = workspace.files.flatMap(file => file.models().map(({ model }) => model));
        const name = args.value('job');
        const chosen = name === undefined ? models : models.filter(({ job }) => job.name === name);
        if (chosen.length === 0) {
            const names = models.map(({ job }) => job.name);
            if (name === undefined || names.length === 0) throw usageFailure(`There is no job in ${showList(workspace.files.map(file => shown(file.name)))}.`);
            const meant = nearestName(name, names);
            throw usageFailure(`There is no job called ${shown(name)}. ${meant === undefined ? `There ${names.length === 1 ? 'is' : 'are'} ${showList(names)}.` : `Is ${meant} meant?`}`);
        }
        const text = `${JSON.stringify(modelExport(chosen), undefined, 2)}\n`;
        if (out === undefined) console.stdout.write(text); else writeWhole(path.resolve(console.cwd, out), text, out);
        return exitCodes.none;
    },
};
