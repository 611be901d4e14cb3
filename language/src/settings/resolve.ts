import type { Sourced } from '../core/span.js';
import { patternFits } from './pattern.js';
import type { SettingsFile } from './read-settings.js';
import type { ProjectSettings, SettingsValues } from './settings.js';

/** A settings file in whose folder a job lies, and where the job lies from there. */
export interface SettingsAbove {
    readonly file: SettingsFile;
    /** Relative to the folder of the settings file, with `/`. */
    readonly path: string;
}

/**
 * What holds for one job file: each key from the nearest place that says it. The nearest file comes first, and in a file the folders that fit the job, the
 * last of them first, come before what stands outside of folders. Chosen severities are looked up in the same order, name by name.
 * @param above the nearest file first
 * @returns nothing when no file says anything
 */
export function resolveSettings(above: readonly SettingsAbove[]): ProjectSettings | undefined {
    const layers = above.flatMap(({ file, path }) => [...file.folders.filter(({ pattern }) => patternFits(pattern, path)).map(({ values }) => values).reverse(), file.values]);
    const first = <K extends 'rules' | 'units' | 'rounding'>(key: K): SettingsValues[K] | undefined => layers.find(values => values[key] !== undefined)?.[key];
    const [rules, units, rounding] = [first('rules'), first('units'), first('rounding')];
    const severities = layers.map(values => values.severities).filter(chosen => chosen.size > 0);
    if (!rules && !units && !rounding && severities.length === 0) return undefined;
    const placed = (one: Sourced<unknown> | undefined): unknown => one && [one.value, one.span.uri, one.span.start];
    return {
        key: JSON.stringify([placed(rules), placed(units), placed(rounding), severities.map(layer => [...layer].map(([name, chosen]) => [name, placed(chosen)]))]),
        ...(rules && { rules }), ...(units && { units }), ...(rounding && { rounding }), severities,
    };
}
