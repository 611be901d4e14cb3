import { barrierC } from '../../assembly/climate-service.js';
import { amount, type Finding } from '../../core/finding.js';
import { psychrometrics } from '../../engines/climate/sources.js';
import { defineRule } from '../rule.js';
import { ladleSpan, showCelsius, wholeClimate } from './climate-findings.js';

export const condensationAtBarrier = defineRule({
    id: 'condensation-at-barrier',
    family: 'climate',
    title: 'Steam of a ladle condenses behind the lining',
    severity: 'warning',
    why: 'Where the barrier is colder than the dew point of the air, the steam that gets behind the lining turns to water there, and the lining stays wet at its back.',
    bad: 'climate { ladle 3 lb }',
    good: 'climate { ladle 0.2 lb }',
    sources: [psychrometrics],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const climate = wholeClimate(input);
        const [first] = climate?.heating ?? [];
        const state = first?.warmUp?.atTarget;
        const dew = climate?.steam.after.dewPointC;
        // Nobody is told of a ladle nobody wrote down.
        if (!climate || !state || dew === undefined || climate.conditions.ladleKg.isDefault) return;
        const coldest = barrierC(climate, state);
        if (!coldest || coldest.celsius >= dew) return;
        const later = barrierC(climate, first.warmUp.end);
        const isLasting = later !== undefined && later.celsius < dew;
        yield {
            at: ladleSpan(input), severity: isLasting ? 'warning' : 'info',
            message: `After a ladle on first reaching ${showCelsius(climate.conditions.bathing.value, input)} the dew point is ${showCelsius(dew, input)}; behind the lining of the ${coldest.name}${coldest.name === 'ceiling' ? '' : ' wall'} it is ${showCelsius(coldest.celsius, input)} (moist air by ${psychrometrics.kind === 'standard' ? psychrometrics.document : ''}). ${isLasting ? 'It still is at the end of the session. ' : ''}Throw less water at first, heat through longer, and keep the barrier whole and the gap behind the lining open.`,
            citation: psychrometrics, measured: amount(coldest.celsius, 'degC'), required: amount(dew, 'degC'), subject: 'room.barrier_temperature',
        };
    },
});
