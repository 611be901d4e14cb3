import type { Citation } from '../../core/citation.js';
import { inCubicMetres, type Volume } from '../../core/length.js';
import { manualCitation } from '../../engines/heater/casing.js';
import type { JudgedHeater } from '../../assembly/heater-judgement.js';
import type { NumberRange } from '../../vocabulary/values.js';
import { volumeText } from './heater-findings.js';

/** Volumes in m3, and the sentence that sets them against the range. */
export interface VolumeCase { readonly inside: number; readonly effective: number; readonly declared: NumberRange; readonly citation: Citation; readonly text: string }

/** The room by the volume method against the declared range, both ends named in the unit of the range. */
export function judgeVolume({ name, manual, model, sizing }: JudgedHeater): VolumeCase | undefined {
    const { declared, insideVolume, effectiveVolume } = sizing;
    if (!declared) return undefined;
    const unit = model.values.volume?.unit;
    const inside = inCubicMetres(insideVolume);
    const effective = inCubicMetres(effectiveVolume);
    const ends = [declared.from, declared.to];
    const show = (value: number): string => volumeText(value, unit, ends);
    // The manual's own figures, with the noise of converting them to m3 and back taken off.
    const asWritten = (value: number): string => volumeText(value, unit, [], 4);
    const added = inCubicMetres((effectiveVolume - insideVolume) as Volume);
    const parts = added > 0 ? ` (${show(inside)} inside and ${show(added)} for uninsulated glass, stone, tile or log; common practice, no source)` : '';
    return {
        inside, effective, declared, citation: manualCitation(manual),
        text: `For heater ${name} the room counts ${show(effective)}${parts}; ${asWritten(declared.from)} to ${asWritten(declared.to)} is its range (${manual.title}).`,
    };
}
