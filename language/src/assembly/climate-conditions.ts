import type { Citation } from '../core/citation.js';
import type { Sourced, Span } from '../core/span.js';
import type { SourcedFigure } from '../engines/climate/sources.js';
import type { Job } from '../model/job.js';
import type { Tariff } from '../vocabulary/values.js';

/** A figure the job states, or the one that stands in for it, with the text that decided it. */
export interface Condition extends SourcedFigure { readonly span?: Span }

/** What heat, air, steam and moisture are worked out for: degC, shares, seconds and kg. */
export interface ClimateConditions {
    /** Air around the room. */
    readonly around: Condition;
    readonly aroundHumidity: Condition;
    readonly outdoors: Condition;
    readonly isInTheOpen: boolean;
    readonly bathing: Condition;
    /** Absent when nobody asks for a time. */
    readonly within?: Condition;
    readonly session: Condition;
    readonly ladleKg: Condition;
    readonly tariff?: Sourced<Tariff>;
    readonly hotHours: Condition;
    readonly shop: Condition;
    readonly shopHumidity: Condition;
    readonly store: Condition;
    readonly storeHumidity: Condition;
}

const written = ({ value, span }: Sourced<number>, share = 1): Condition => ({ value: value * share, citation: { kind: 'geometry', text: 'the job' }, span });
const usual = (value: number, text: string): Condition => ({ value, citation: { kind: 'practice', text }, isDefault: true });
const percentage = 0.01;

/** @param within what the rule sets ask of the warm-up where the job itself names no time */
export function climateConditions(job: Job, within: { readonly value: number; readonly citation: Citation } | undefined): ClimateConditions {
    const site = job.site?.values;
    const climate = job.climate?.values;
    const around = site?.ambient ? written(site.ambient) : usual(20, 'air of 20 degC around the room');
    const asked = climate?.within ? written(climate.within) : within && { value: within.value, citation: within.citation, isDefault: true as const };
    return {
        around,
        aroundHumidity: site?.humidity ? written(site.humidity, percentage) : usual(0.5, 'air at 50 % around the room'),
        outdoors: site?.outdoors ? written(site.outdoors) : { ...around, isDefault: true },
        isInTheOpen: site?.stands?.value === 'in_the_open',
        bathing: climate?.bathing ? written(climate.bathing) : usual(80, 'bathing at 80 degC'),
        ...(asked && { within: asked }),
        session: climate?.session ? written(climate.session) : usual(3600, 'a session of 60 min'),
        ladleKg: climate?.ladle ? written(climate.ladle) : usual(0.2, 'a ladle of 0.2 kg'),
        ...(climate?.tariff && { tariff: climate.tariff }),
        hotHours: climate?.hot_hours ? written(climate.hot_hours, 1 / 3600) : usual(20, '20 hot hours a week'),
        shop: climate?.shop ? written(climate.shop) : usual(20, 'a shop of 20 degC'),
        shopHumidity: climate?.shop_humidity ? written(climate.shop_humidity, percentage) : usual(0.5, 'a shop at 50 %'),
        store: climate?.store ? written(climate.store) : usual(10, 'a store of 10 degC'),
        storeHumidity: climate?.store_humidity ? written(climate.store_humidity, percentage) : usual(0.65, 'a store at 65 %'),
    };
}
