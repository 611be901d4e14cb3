import type { Rule } from '../rule.js';
import { revisionNotSigned } from './revision-not-signed.js';
import { revisionSignedTwice } from './revision-signed-twice.js';
import { signOffWithoutName } from './sign-off-without-name.js';
import { signedRevisionChanged } from './signed-revision-changed.js';

/** Rules of this family, by id. */
export const signingRules: readonly Rule[] = [revisionNotSigned, revisionSignedTwice, signOffWithoutName, signedRevisionChanged];
