import { withStandardJob } from '../../support/standard-job.js';
import { analyzeText } from '../../support/workspace.js';

export const someFingerprint = '00000000000000000000000000000000';
export const signOff = (revision: string, by = 'N. Aune, design office', fingerprint = someFingerprint): string =>
    `sign_off { revision "${revision}"; by "${by}"; date 2026-11-30; fingerprint "${fingerprint}" }`;

/** The fingerprint of a job text as it is now. */
export async function fingerprintOf(text: string): Promise<string> {
    const { jobs: [job] } = await analyzeText(text);
    return job!.results.fingerprint;
}
/** The standard job, signed as it is with the other words of the snippet. */
export async function signed(revision: string, snippet = ''): Promise<string> {
    const unsigned = `revision "${revision}"\n${snippet}`;
    return `${unsigned}\n${signOff(revision, undefined, await fingerprintOf(withStandardJob(unsigned)))}`;
}
