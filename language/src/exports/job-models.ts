import { analyzeJob, reported, type JobAnalysis } from '../analysis/analyze-job.js';
import { JudgedJob } from '../analysis/judged-job.js';
import type { ReportedFinding } from '../core/finding.js';
import { spanContains } from '../core/span.js';
import type { LoweredFile } from '../model/file.js';
import { writtenUnit } from '../model/job.js';
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

/** A model with the job it was made from, in the job's own unit and words, worked out when somebody looks. */
export interface ModelOfJob extends ExportedModel {
    readonly own: () => JobAnalysis;
    /** What a finding says in the unit of the job, by its key in the model. */
    readonly messageOf: (key: string) => string | undefined;
}

/**
 * The jobs and variants of a file as models, in the order written. They are analysed anew, in inches, so that the words of facts and findings say the
 * same in every unit; what `analyze` keeps is not touched.
 */
export function jobModels(lowered: LoweredFile, options: ModelOptions = {}): readonly ModelOfJob[] {
    const inInch = judged(lowered, { ...options, settings: inInches(options.settings) });
    let inOwn: readonly JudgedFile[] | undefined;
    return inInch.map(({ analysis, findings }, i): ModelOfJob => {
        const exported = exportJob(analysis, findings, options.today);
        const here = { analysis, findings };
        // Most jobs are written in inches: what was analysed for the model is then what the job says itself.
        const isInInches = (options.settings?.units?.value ?? writtenUnit(analysis.job.block)) === 'in';
        const own = (): JudgedFile => isInInches ? here : (inOwn ??= judged(lowered, options))[i] ?? here;
        return { ...exported, own: () => own().analysis, messageOf: key => { const at = findings.findIndex(finding => finding === exported.findings.get(key)); return own().findings[at]?.message; } };
    });
}

interface JudgedFile { readonly analysis: JobAnalysis; readonly findings: readonly ReportedFinding[] }

/** Every job with what was found in it, the mistakes of its text with them, but not those of other jobs. */
function judged(lowered: LoweredFile, { today, settings, checkCancelled }: ModelOptions): readonly JudgedFile[] {
    const houseRules = lowered.rules();
    const jobs = lowered.jobs.map((source): JobAnalysis => {
        const analysis = analyzeJob(source, houseRules, { ...(settings && { settings }), ...(today && { today }), ...(checkCancelled && { checkCancelled }) });
        return settings ? new JudgedJob(analysis, settings) : analysis;
    });
    const ofText = lowered.findings.map(reported);
    return jobs.map(analysis => {
        const others = jobs.filter(({ job }) => job.block.span.start !== analysis.job.block.span.start).map(({ job }) => job.block.span);
        return { analysis, findings: [...analysis.findings, ...ofText.filter(({ at }) => !others.some(span => spanContains(span, at)))] };
    });
}

function inInches(settings: ProjectSettings | undefined): ProjectSettings {
    const { rules, severities = [] } = settings ?? {};
    return { key: `${settings?.key ?? ''} in inches`, ...(rules && { rules }), severities, units: { value: 'in', span: { uri: '', start: 0, end: 0 } } };
}
