import { amount, type Finding } from '../../core/finding.js';
import { longestWarmUpS } from '../../engines/climate/warm-up.js';
import { showNumber } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { areVentsSound, askedBy, isVolumeSound, showCelsius, showKilowatts, showMinutes, wholeClimate } from './climate-findings.js';

export const warmUpTooSlow = defineRule({
    id: 'warm-up-too-slow',
    family: 'climate',
    title: 'The heater needs longer than is asked to reach bathing temperature',
    severity: 'warning',
    why: 'People wait, or bathe in a room that is not warm; the volume method does not see thick linings, stones and large openings.',
    bad: 'climate { within 45 min }',
    good: 'climate { within 55 min }',
    sources: [{ kind: 'practice', text: '30 to 60 minutes to 80 degC' }],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const climate = wholeClimate(input);
        const { within, bathing, around } = climate?.conditions ?? {};
        if (!climate || !within || !bathing || !around || !areVentsSound(input)) return;
        for (const { name, warmUp, neededW, watts } of climate.heating) {
            if (!isVolumeSound(input, name)) continue;
            if (!warmUp || (warmUp.seconds !== undefined && warmUp.seconds - warmUp.errorS <= within.value)) continue;
            const reached = warmUp.seconds === undefined ? `does not bring the room to ${showCelsius(bathing.value, input)} in ${showMinutes(longestWarmUpS)}` : `brings the room from ${showCelsius(around.value, input)} to ${showCelsius(bathing.value, input)} in ${showMinutes(warmUp.seconds)} (good to ${showNumber(warmUp.errorS, 0)} s)`;
            const heater = input.job.heaters.find(block => block.name?.value === name);
            yield {
                at: within.span ?? heater?.values.model?.span ?? heater?.head ?? input.job.block.head, severity: within.isDefault ? 'info' : 'warning',
                message: `Heater ${name} with ${showKilowatts(watts)} ${reached}; ${showMinutes(within.value)} are asked for (${askedBy(within)}).${neededW === undefined ? '' : ` About ${showKilowatts(neededW)} would do it.`} Choose more power within its volume range, thicker insulation, less open area, or allow more time.`,
                citation: within.citation, measured: amount((warmUp.seconds ?? longestWarmUpS) / 60, 'min'), required: amount(within.value / 60, 'min'), subject: `${name}.warm_up`,
            };
        }
    },
});
