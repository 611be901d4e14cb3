import { analyzeJob, reported, type JobAnalysis } from '../analysis/analyze-job.js';
import { JudgedJob } from '../analysis/judged-job.js';
import { spanContains } from '../core/span.js';
import type { LoweredFile } from '../model/file.js';
import type { ProjectSettings } from '../settings/settings.js';
import type { CalendarDate } from '../vocabulary/values.js';
import { exportJob, type ExportedModel } from './export-job.js';

export interface ModelOptions {
    /** The day that counts for waivers with an end. */
    readonly today?: CalendarDate;
    /** What the project says for the file. Its units do not matter: models are in inches. */
    readonly settings?: ProjectSettings;
    /** Called between rules; throws to give up. */
    readonly checkCancelled?: () => void;
}

/**
 * The jobs and variants of a file as models, in the order written. They are analysed anew, in inches, so that the words of facts and findings say the
 * same in every unit; what `analyze` keeps is not touched.
 */
export function jobModels(lowered: LoweredFile, options: ModelOptions = {}): readonly ExportedModel[] {
    const { today, checkCancelled } = options;
    const settings = inInches(options.settings);
    const houseRules = lowered.rules();
    const jobs = lowered.jobs.map((source): JobAnalysis => new JudgedJob(analyzeJob(source, houseRules, { settings, ...(today && { today }), ...(checkCancelled && { checkCancelled }) }), settings));
    const ofText = lowered.findings.map(reported);
    return jobs.map(own => {
        const others = jobs.filter(job => job !== own && job.job.block.span.start !== own.job.block.span.start).map(({ job }) => job.block.span);
        return exportJob(own, [...own.findings, ...ofText.filter(({ at }) => !others.some(span => spanContains(span, at)))], today);
    });
}

function inInches(settings: ProjectSettings | undefined): ProjectSettings {
    const { rules, severities = [] } = settings ?? {};
    return { key: `${settings?.key ?? ''} in inches`, ...(rules && { rules }), severities, units: { value: 'in', span: { uri: '', start: 0, end: 0 } } };
}
