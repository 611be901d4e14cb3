import { test } from 'vitest';
import { signOffWithoutName as rule } from '../../../language/src/rules/signing/sign-off-without-name.js';
import { checkFindings } from '../../support/check.js';
import { signOff } from './signed.js';

test('reports a sign-off that names nobody', () => checkFindings(rule, `
    revision "B"
    sign_off { revision "B"; by ""; date 2026-11-30; fingerprint "0" }
    //                          ^^ error: The sign-off of revision B names nobody; whoever looked at the job signs with name and office (common practice, no source). Write them in, or take the sign-off away.
    sign_off { revision "A"; by "  "; date 2026-11-30; fingerprint "0" }
    //                          ^^^^ error: The sign-off of revision A names nobody; …
`));
test('accepts one with a name', () => checkFindings(rule, `revision "B"\n${signOff('B')}`));
test('stays silent while the name is being typed', () => checkFindings(rule, `
    revision "B"
    sign_off { revision "B"; by
`));
