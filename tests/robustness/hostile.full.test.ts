import { describe } from 'vitest';
import { limits } from '../../language/src/syntax/limits.js';
import { readFilesOfOneMistake } from './one-mistake.js';

describe('the largest file of one kind of mistake is read from end to end', () => { readFilesOfOneMistake(limits.characters); });
