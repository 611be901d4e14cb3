import * as z from 'zod/mini';
import type { LengthUnit } from '../../../language/src/core/show.js';
import { hintKinds, type HintKind } from '../../../language/src/editing/hints.js';
import type { HotroomServerServices } from '../services.js';

const unitsSchema = z.enum(['auto', 'inch', 'metric']);
const inlayHintsSchema = z.record(z.string(), z.unknown());

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

    /** The kinds of hint to show: all that are not turned off, one by one or together. */
    async inlayHints(): Promise<ReadonlySet<HintKind>> {
        const read = inlayHintsSchema.safeParse(await this.read('inlayHints'));
        const isOff = (name: string): boolean => read.success && read.data[name] === false;
        return new Set(isOff('enabled') ? [] : hintKinds.filter(kind => !isOff(kind)));
    }

    private async read(name: string): Promise<unknown> {
        return this.services.shared.workspace.ConfigurationProvider.getConfiguration('hotroom', name) as Promise<unknown>;
    }
}
