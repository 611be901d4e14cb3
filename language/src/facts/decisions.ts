import type { Job } from '../model/job.js';
import { keyOfWord, type Decision } from '../rule-sets/index.js';

/** What a job has decided between texts that disagree; one that is still being written decides nothing. */
export const decisionsOf = (job: Job): readonly Decision[] => job.decisions.flatMap(({ values: { about, follows, because, by } }) => {
    const key = about && keyOfWord(about.value);
    return key && follows && because && by ? [{ about: key, follows: follows.value }] : [];
});
