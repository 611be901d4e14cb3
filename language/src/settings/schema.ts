import * as z from 'zod/mini';
import { ruleSets, ruleSetIds } from '../rule-sets/index.js';
import { chosenSeverities, families, knownRules, severitiesFor } from './may-be-lowered.js';

function described<S extends z.ZodMiniType>(schema: S, description: string): S {
    z.globalRegistry.add(schema, { description });
    return schema;
}

/** Words each setting takes, for messages. */
export const unitWords = ['in', 'ft_in', 'ft', 'mm', 'cm', 'm'] as const;
export const roundingWords = ['shop', 'drawing', 'exact'] as const;

const severity = (words: readonly string[], description: string) => described(z.optional(z.enum(words)), description);

/** One description for all places it stands in: it names every rule. */
const severities = z.catchall(z.object({
    ...Object.fromEntries(families.map(family => [family, severity(chosenSeverities, `Every rule of the family ${family}; those that can never be waived are not lowered by it.`)])),
    ...Object.fromEntries(knownRules.map(rule => [rule.id, severity(severitiesFor(rule), `${rule.title}. Usually ${rule.severity}.${rule.isLowerable ? '' : ' Can never be lowered.'}`)])),
}), z.enum(chosenSeverities));
z.globalRegistry.add(severities, { id: 'severities', description: 'Severities by rule id, family or name of a house rule: error, warning, info, hint or off.' });

const values = {
    rules: described(z.optional(z.array(z.enum(ruleSetIds)).check(z.minLength(1))),
        `Rule sets of jobs that name none. ${ruleSets.map(({ id, title }) => `${id}: ${title}.`).join(' ')}`),
    severities: z.optional(severities),
    units: described(z.optional(z.enum(unitWords)), 'The unit computed lengths are shown in. Without it each job is answered in the unit it is written in.'),
    rounding: described(z.optional(z.enum(roundingWords)), 'How finely documents show lengths: shop (1/32" or 0.5 mm, as without it), drawing (1/16" or 0.5 mm) or exact.'),
};

const folderSchema = z.strictObject(values);

/** A settings file. */
export const settingsSchema = z.strictObject({
    $schema: described(z.optional(z.string()), 'Where the description of this file is.'),
    ...values,
    folders: described(z.optional(z.record(z.string(), folderSchema)),
        'Settings of some folders below this one, by path or pattern (prototypes, jobs/*/old, **/trial); of several that fit a job, a later one wins.'),
});

export const topKeys: readonly string[] = ['rules', 'severities', 'units', 'rounding', 'folders'];
export const folderKeys: readonly string[] = topKeys.slice(0, -1);

/** JSON Schema (draft-07, which editors read best) of a settings file. */
export function settingsJsonSchema(): object {
    return { title: 'Hotroom project settings', ...z.toJSONSchema(settingsSchema, { target: 'draft-7' }) };
}
