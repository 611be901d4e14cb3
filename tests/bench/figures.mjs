/** Figures made of many runs. */

export const median = values => quantile(values, 0.5);
export function quantile(values, share) {
    const sorted = [...values].sort((a, b) => a - b);
    return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
}

/** Runs the works one after the other, again and again, so that what else the machine does falls on all alike; the first rounds warm up and are not counted. */
export async function interleaved(works, { rounds, warmUp }) {
    const times = Object.fromEntries(Object.keys(works).map(name => [name, []]));
    for (let round = -warmUp; round < rounds; round++) {
        for (const [name, work] of Object.entries(works)) {
            const start = performance.now();
            const own = await work(round);
            const took = typeof own === 'number' ? own : performance.now() - start;
            if (round >= 0) times[name].push(took);
        }
    }
    return times;
}

export const milliseconds = value => value >= 100 ? `${value.toFixed(0)} ms` : value >= 10 ? `${value.toFixed(1)} ms` : `${value.toFixed(2)} ms`;
export const kilobytes = value => `${(value / 1024).toFixed(1)} KB`;
export const percent = (share, places = 0) => `${(100 * share).toFixed(places)} %`;
