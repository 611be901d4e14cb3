import * as z from 'zod/mini';
import { walls } from '../core/geometry.js';

const whole = z.int().check(z.nonnegative());
const lengthSchema = z.object({ ticks: z.int(), text: z.string() });
const severitySchema = z.enum(['error', 'warning', 'info', 'hint']);

const plainValues = [
    z.object({ kind: z.literal('length'), ticks: z.int(), text: z.string() }),
    z.object({ kind: z.literal('amount'), value: z.number(), unit: z.string() }),
    z.object({ kind: z.literal('word'), word: z.string() }),
    z.object({ kind: z.literal('text'), text: z.string() }),
    z.object({ kind: z.literal('flag'), flag: z.boolean() }),
    z.object({ kind: z.literal('date'), date: z.string() }),
    z.object({ kind: z.literal('reference'), name: z.string() }),
] as const;
const plainValueSchema = z.discriminatedUnion('kind', [...plainValues]);
const valueSchema = z.discriminatedUnion('kind', [
    ...plainValues,
    z.object({ kind: z.literal('list'), items: z.array(plainValueSchema) }),
    z.object({ kind: z.literal('block'), block: z.string(), title: z.optional(z.string()), walls: z.array(z.enum(walls)) }),
]);

const figureSchema = z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('length'), ticks: z.int(), text: z.string() }),
    z.object({ kind: z.literal('amount'), value: z.number(), unit: z.string() }),
    z.object({ kind: z.literal('words'), words: z.string() }),
]);

const panelSchema = z.object({
    mark: z.string(), side: z.enum([...walls, 'ceiling']), kind: z.enum(['module', 'made_to_measure', 'door_section', 'window_section']),
    place: z.object({ measuredFrom: z.enum(walls), face: z.enum(['lining', 'outside']), distance: lengthSchema }),
    cover: lengthSchema, overall: lengthSchema, height: lengthSchema, thickness: lengthSchema, tongue: z.optional(z.enum(['left', 'right', 'back'])), holds: z.array(z.string()),
    cutOuts: z.array(z.object({ of: z.string(), what: z.enum(['opening', 'clear glass', 'frame']), width: lengthSchema, height: lengthSchema, isPart: z.boolean(), fromLeftEdge: lengthSchema, overFinishedFloor: lengthSchema })),
    massKg: z.optional(z.number()),
});

const partSchema = z.object({
    mark: z.string(), part: z.string(), count: z.int().check(z.positive()), stock: z.optional(z.string()), nominal: z.optional(z.string()),
    section: z.object({ thickness: lengthSchema, width: lengthSchema }), length: lengthSchema, allowance: z.optional(lengthSchema),
    endsDegrees: z.object({
        left: z.number(), right: z.number(),
        across: z.optional(z.literal('face')).register(z.globalRegistry, { description: 'A mitre: the cuts run slanting over the wide face and square through the thickness.' }),
    }).register(z.globalRegistry, { description: 'Angles of the ends away from a square cut: 0 is square. Left is the end that lies left when the mark is read.' }),
    notches: z.array(z.object({
        side: z.enum(['top', 'bottom', 'front', 'back']), measuredFrom: z.enum(['head', 'left end']), from: lengthSchema, length: lengthSchema, depth: lengthSchema, toward: z.optional(z.enum(walls)), clears: z.string(),
    })),
    cut: z.enum(['shop', 'site']), goesTo: z.string(), measure: z.optional(z.string()),
    place: z.optional(z.object({
        wall: z.enum(walls), between: z.enum(['linings', 'outside']), stretches: z.array(z.object({ from: lengthSchema, to: lengthSchema })),
        bottom: z.optional(lengthSchema), top: z.optional(lengthSchema),
    })),
});

const stockSchema = z.object({
    key: z.string(), stock: z.optional(z.string()), nominal: z.optional(z.string()), section: z.object({ thickness: lengthSchema, width: lengthSchema }), pieces: whole, length: lengthSchema,
    netCost: z.optional(z.object({ minor: z.int(), currency: z.string() })).register(z.globalRegistry, { description: 'The net length at the price of the catalogue, where that is a price per length; before saw cuts and offcuts.' }),
});

const waivedSchema = z.object({ because: z.string(), by: z.string(), until: z.string() });
const findingSchema = z.object({
    key: z.string(), rule: z.string(), about: z.string(), severity: severitySchema,
    measured: z.optional(figureSchema), required: z.optional(figureSchema), source: z.optional(z.string()), waived: z.optional(waivedSchema),
});
const waiverSchema = z.object({ key: z.string(), rule: z.string(), about: z.optional(z.string()), because: z.string(), by: z.string(), until: z.string(), isOver: z.boolean() });

const jobSchema = z.object({
    job: z.object({
        name: z.string(), title: z.optional(z.string()), number: z.optional(z.string()), revision: z.optional(z.string()), variant: z.optional(z.string()), isWhole: z.boolean(),
    }),
    ruleSets: z.array(z.object({ id: z.string(), title: z.string(), documents: z.array(z.object({ title: z.string(), edition: z.string() })) })),
    given: z.record(z.string(), valueSchema).register(z.globalRegistry, { description: 'What the job says, as block.fact; a block itself stands under its name, or its kind when it has none.' }),
    catalogue: z.record(z.string(), valueSchema).register(z.globalRegistry, { description: 'What the catalogue entries say that the job depends on, as entry.fact.' }),
    computed: z.record(z.string(), z.object({ title: z.string(), value: figureSchema })),
    panels: z.array(panelSchema), parts: z.array(partSchema), stock: z.array(stockSchema), findings: z.array(findingSchema), waivers: z.array(waiverSchema),
});
const modelSchema = z.object({ format: z.literal('hotroom-model'), version: z.literal(1), jobs: z.array(jobSchema) });

/** A length as exact ticks of 12.5 nm, and in inches for people. */
export type ModelLength = z.infer<typeof lengthSchema>;
export type ModelPlainValue = z.infer<typeof plainValueSchema>;
export type ModelValue = z.infer<typeof valueSchema>;
export type ModelFigure = z.infer<typeof figureSchema>;
export type ModelPanel = z.infer<typeof panelSchema>;
export type ModelPart = z.infer<typeof partSchema>;
export type ModelStock = z.infer<typeof stockSchema>;
export type ModelFinding = z.infer<typeof findingSchema>;
export type ModelWaiver = z.infer<typeof waiverSchema>;
/** One job as data: equal for jobs that mean the same, in whatever unit, order or layout they were written. */
export type JobModel = z.infer<typeof jobSchema>;
/** Within a version members are only added. */
export type ModelExport = z.infer<typeof modelSchema>;

/** JSON Schema (draft 2020-12) of exported models. */
export const modelJsonSchema = (): object => z.toJSONSchema(modelSchema);

export const modelExport = (jobs: readonly JobModel[]): ModelExport => ({ format: 'hotroom-model', version: 1, jobs: [...jobs] });

/** Reads an exported model back; the answer says what is wrong with it when it is none. */
export function readModel(text: string): { readonly ok: true; readonly model: ModelExport } | { readonly ok: false; readonly why: string } {
    let value: unknown;
    try { value = JSON.parse(text); } catch { return { ok: false, why: 'This is not JSON.' }; }
    const parsed = modelSchema.safeParse(value);
    if (parsed.success) return { ok: true, model: parsed.data };
    return { ok: false, why: parsed.error.issues.slice(0, 3).map(({ path, message }) => `${path.join('.')}: ${message}`).join('; ') };
}
