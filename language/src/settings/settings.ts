import type { Severity } from '../core/finding.js';
import type { LengthUnit, Purpose } from '../core/show.js';
import type { Sourced, Span } from '../core/span.js';
import type { RuleSetId } from '../rule-sets/index.js';

/** The name of a settings file. It holds for the jobs of its folder and of all folders in it. */
export const settingsFileName = 'hotroom.json';

/** What a project makes of a finding: another severity, or silence. */
export type ChosenSeverity = Severity | 'off';

/** The settings of one place, each with the text that says so. A key is absent when it is not written or could not be read. */
export interface SettingsValues {
    readonly rules?: Sourced<readonly RuleSetId[]>;
    /** By rule id, family or name of a house rule. */
    readonly severities: ReadonlyMap<string, Sourced<ChosenSeverity>>;
    readonly units?: Sourced<LengthUnit>;
    readonly rounding?: Sourced<Purpose>;
}

/** Settings for the jobs below some folders. */
export interface FolderSettings {
    readonly pattern: string;
    readonly span: Span;
    readonly values: SettingsValues;
}

/** What holds for the jobs of one file, each key from the nearest place that says it. */
export interface ProjectSettings {
    /** Equal for settings that say the same from the same places; what was worked out with one key must not be taken for another. */
    readonly key: string;
    /** Rule sets of a job that names none. */
    readonly rules?: Sourced<readonly RuleSetId[]>;
    /** The unit computed lengths are shown in, whatever the job is written in. */
    readonly units?: Sourced<LengthUnit>;
    /** How finely documents show lengths. */
    readonly rounding?: Sourced<Purpose>;
    /** Chosen severities, the nearest place first. */
    readonly severities: readonly SettingsValues['severities'][];
}
