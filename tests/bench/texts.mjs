import { writeYaml } from './yaml-text.mjs';

/** Jobs of about sixty lines each, always the same ones: the seed is fixed. */
export function sampleJobs(product, count, seed = 60) {
    const lines = ({ job }) => product.writeFile(product.fileOf(job), 'in', 'compact').trimEnd().split('\n').length;
    const jobs = [];
    for (let batch = 0; jobs.length < count; batch++) jobs.push(...product.fc.sample(product.randomJob, { seed: seed + batch, numRuns: 400 }).filter(job => Math.abs(lines(job) - 60) <= 3));
    return jobs.slice(0, count).map(({ job }, index) => ({ ...job, header: ['job', `job_${index + 1}`, `"Job ${index + 1}"`] }));
}

/** One file of so many jobs, in our language and as YAML, with a figure that edits change: the top of the first upper bench. */
export function filePair(product, jobs) {
    const file = product.fileOf(...jobs);
    return { ours: product.writeFile(file, 'in', 'compact'), yaml: writeYaml(file, product) };
}

export const lineCount = text => text.trimEnd().split('\n').length;

/** Where the value of the n-th `top` stands, for edits. */
export function editPlace(text, n = 0) {
    const match = [...text.matchAll(/\btop:? +(\d+)/g)][n];
    if (!match) throw new Error('The text has no bench top to edit');
    const offset = match.index + match[0].length - match[1].length;
    const line = text.slice(0, offset).split('\n').length - 1;
    const character = offset - (text.lastIndexOf('\n', offset - 1) + 1);
    return { range: { start: { line, character }, end: { line, character: character + match[1].length } }, figure: Number(match[1]) };
}
