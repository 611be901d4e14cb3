import { test } from 'vitest';
import { revisionSignedTwice as rule } from '../../../language/src/rules/signing/revision-signed-twice.js';
import { checkFindings } from '../../support/check.js';
import { signOff } from './signed.js';

test('reports whoever signed one revision twice', () => checkFindings(rule, `
    revision "B"
    ${signOff('B', 'N. Aune')}
    sign_off { revision "B"; by "N. Aune"; date 2026-12-02; fingerprint "0" }
    //                          ^^^^^^^^^ info: N. Aune signed revision B twice; …
`));
test('accepts two people, and one person on two revisions', () => checkFindings(rule, `revision "B"\n${signOff('B', 'N. Aune')}\n${signOff('B', 'S. Lind')}\n${signOff('A', 'N. Aune')}`));
test('stays silent while a name is being typed', () => checkFindings(rule, `
    revision "B"
    ${signOff('B', 'N. Aune')}
    sign_off { revision "B"; by
`));
