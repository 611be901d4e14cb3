import * as z from 'zod/mini';
import type { LengthUnit } from '../../../language/src/core/show.js';
import type { HotroomServerServices } from '../services.js';

const unitsSchema = z.enum(['auto', 'inch', 'metric']);
const inlayHintsSchema = z.object({ enabled: z.boolean() });

/** The settings of the editor that the server reads. What is not as it should be counts as not set. */
export class Settings {
    constructor(private readonly services: HotroomServerServices) {}

    /** The unit computed lengths are shown in; nothing means as the job writes them. */
    async displayUnit(): Promise<LengthUnit | undefined> {
        const read = unitsSchema.safeParse(await this.read('displayUnits'));
        const units = read.success ? read.data : 'auto';
        switch (units) {
            case 'auto': return undefined;
            case 'inch': return 'in';
            case 'metric': return 'mm';
            default: return units satisfies never;
        }
    }

    async showsInlayHints(): Promise<boolean> {
        const read = inlayHintsSchema.safeParse(await this.read('inlayHints'));
        return !read.success || read.data.enabled;
    }

    private async read(name: string): Promise<unknown> {
        return this.services.shared.workspace.ConfigurationProvider.getConfiguration('hotroom', name) as Promise<unknown>;
    }
}
