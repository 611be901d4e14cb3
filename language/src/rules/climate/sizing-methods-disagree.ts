import { powerByVolume } from '../../assembly/climate-service.js';
import { amount, inWords, type Finding } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { modelSpan } from '../heater/heater-findings.js';
import { areVentsSound, askedBy, isVolumeSound, showCelsius, showKilowatts, showMinutes, wholeClimate } from './climate-findings.js';

/** Within a quarter the two agree: the volume method itself spans a third. */
const band = 1.25;

export const sizingMethodsDisagree = defineRule({
    id: 'sizing-methods-disagree',
    family: 'climate',
    title: 'The power worked out and the volume method are far apart',
    severity: 'info',
    why: 'The volume method is a habit for a usual room and a usual time; where the two differ, one of them does not see something about this room.',
    bad: 'climate { within 25 min }',
    good: 'climate { within 60 min }',
    sources: [{ kind: 'practice', text: 'about 1 kW for 1 to 1.3 m3 of effective volume' }],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const climate = wholeClimate(input);
        const { within, bathing } = climate?.conditions ?? {};
        if (!climate || !within || !bathing || !areVentsSound(input)) return;
        for (const { name, neededW } of climate.heating) {
            const judged = input.results.heaters.find(heater => heater.name === name);
            if (!judged || !isVolumeSound(input, name) || neededW === undefined) continue;
            const { least, most } = powerByVolume(judged.sizing.effectiveVolume);
            if (neededW <= most * band && neededW >= least / band) continue;
            const range = `${showKilowatts(least)} to ${showKilowatts(most)}`;
            yield {
                at: modelSpan(judged),
                message: `For heater ${name} ${showKilowatts(neededW)} bring the room to ${showCelsius(bathing.value, input)} in ${showMinutes(within.value)} (${askedBy(within)}); the volume method wants ${range} (common practice, no source). They differ by more than a quarter: look at the time, the insulation and the open areas before choosing; the range the manual declares stays binding.`,
                citation: { kind: 'practice', text: 'about 1 kW for 1 to 1.3 m3 of effective volume' }, measured: amount(neededW / 1000, 'kW'), required: inWords(range), subject: `${name}.power_needed`,
            };
        }
    },
});
