/**
 * Makes everything that is made: the parser's tables and types from the grammar, and the highlighting grammar from the vocabulary.
 * `node language/generate.mjs [FOLDER]` writes into the repository, or into another folder of the same shape, so that a test can compare.
 */
import * as esbuild from 'esbuild';
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { terminalsOf, textmateGrammar } from './textmate.mjs';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const target = path.resolve(process.argv[2] ?? root);

generateParser();
await generateHighlighting();

function generateParser() {
    const config = JSON.parse(fs.readFileSync(path.join(root, 'langium-config.json'), 'utf8'));
    fs.mkdirSync(path.join(target, config.out), { recursive: true });
    const cli = path.join(root, 'node_modules/langium-cli/bin/langium.js');
    if (target === root) return run(cli, path.join(root, 'langium-config.json'));
    // The tool reads paths from where its configuration lies.
    const moved = path.join(target, 'langium-config.json');
    const languages = config.languages.map(language => ({ ...language, grammar: path.relative(target, path.join(root, language.grammar)) }));
    fs.writeFileSync(moved, JSON.stringify({ ...config, languages }));
    run(cli, moved);
    fs.rmSync(moved);
}

function run(cli, config) {
    execFileSync(process.execPath, [cli, 'generate', '--file', config], { stdio: ['ignore', 'ignore', 'inherit'], cwd: path.dirname(config) });
}

async function generateHighlighting() {
    const bundle = await esbuild.build({ absWorkingDir: root, entryPoints: ['language/src/vocabulary/index.ts'], bundle: true, write: false, format: 'esm', platform: 'neutral', logLevel: 'error' });
    const { vocabulary } = await import(`data:text/javascript;base64,${Buffer.from(bundle.outputFiles[0].contents).toString('base64')}`);
    const terminals = terminalsOf(fs.readFileSync(path.join(root, 'language/src/syntax/hotroom.langium'), 'utf8'));
    fs.mkdirSync(path.join(target, 'syntaxes'), { recursive: true });
    fs.writeFileSync(path.join(target, 'syntaxes/hotroom.tmLanguage.json'), `${JSON.stringify(textmateGrammar(vocabulary, terminals), undefined, 2)}\n`);
}
