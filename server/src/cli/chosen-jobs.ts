import type { Analysis } from '../../../language/src/analyze.js';
import { nearestName } from '../../../language/src/core/nearest.js';
import { showList } from '../../../language/src/core/show.js';
import { withTextFindings } from '../../../language/src/renderings/job-trace.js';
import { jobName } from '../../../language/src/renderings/rendered-job.js';
import type { OptionDefinition, ParsedArguments } from './arguments.js';
import { usageFailure } from './exit-codes.js';
import { shown } from './files.js';
import type { CheckedFile, Workspace } from './workspace.js';

export interface ChosenJob { readonly file: CheckedFile; readonly analysis: Analysis['jobs'][number] }

export const jobOption: OptionDefinition = { name: 'job', value: 'NAME', doc: 'Only the job of this name.' };

/** The jobs of the files, each with what the text of its file makes wrong; the one of a name when one is asked for. */
export function chosenJobs({ files }: Workspace, args: ParsedArguments): readonly ChosenJob[] {
    const all = files.flatMap(file => file.analysis.jobs.map(job => ({ file, analysis: withTextFindings(job, file.analysis) })));
    const name = args.value('job');
    if (name === undefined) {
        if (all.length === 0) throw usageFailure(`There is no job in ${showList(files.map(file => shown(file.name)))}.`);
        return all;
    }
    const chosen = all.filter(({ analysis }) => jobName(analysis.job) === name);
    if (chosen.length > 0) return chosen;
    const names = all.map(({ analysis }) => jobName(analysis.job));
    const meant = nearestName(name, names);
    throw usageFailure(`There is no job called ${shown(name)}.${meant !== undefined ? ` Is ${meant} meant?` : names.length > 0 ? ` There ${names.length === 1 ? 'is' : 'are'} ${showList(names)}.` : ''}`);
}
