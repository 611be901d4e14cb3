/**
 * Makes everything that is made: the parser's tables and types from the grammar, the highlighting grammar from the vocabulary, the rule handbook
 * from the rules, and the JSON Schemas of settings files and of everything written as JSON from what checks them.
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
await generateHandbook();
await generateSchemas();

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
    const { vocabulary } = await load('language/src/vocabulary/index.ts');
    const { functions } = await load('language/src/model/functions.ts');
    const terminals = terminalsOf(fs.readFileSync(path.join(root, 'language/src/syntax/hotroom.langium'), 'utf8'));
    fs.mkdirSync(path.join(target, 'syntaxes'), { recursive: true });
    fs.writeFileSync(path.join(target, 'syntaxes/hotroom.tmLanguage.json'), `${JSON.stringify(textmateGrammar(vocabulary, Object.keys(functions), terminals), undefined, 2)}\n`);
}

/** A page for each rule and each mistake of the language, and an index by family; a page whose rule is gone goes too. */
async function generateHandbook() {
    const { allRuleHelp, ruleHelpMarkdown } = await load('language/src/renderings/rule-help.ts');
    const { languageReference } = await load('language/src/renderings/language-reference.ts');
    const folder = path.join(target, 'language/handbook');
    fs.rmSync(folder, { recursive: true, force: true });
    fs.mkdirSync(folder, { recursive: true });
    const all = allRuleHelp().toSorted((a, b) => a.family.localeCompare(b.family, 'en') || (a.id < b.id ? -1 : 1));
    for (const help of all) fs.writeFileSync(path.join(folder, `${help.id}.md`), `# ${help.title}\n\n\`${help.id}\` (${help.family})\n\n${ruleHelpMarkdown(help).trimEnd()}\n`);
    fs.writeFileSync(path.join(folder, 'reference.md'), languageReference());
    const families = Map.groupBy(all, help => help.family);
    const index = [...families].map(([family, members]) => `## ${family}\n\n${members.map(({ id, title, severity }) => `- [${id}](${id}.md), ${severity}: ${title}`).join('\n')}\n`);
    fs.writeFileSync(path.join(folder, 'README.md'), `# Rule handbook\n\nEverything Hotroom reports. How the language is written stands in the [language reference](reference.md). Made from the rules by \`npm run generate\`. The examples replace or join blocks of the standard job, \`examples/birch-point.hotroom\`; a remark \`// without …\` takes a block away.\n\n${index.join('\n')}`);
}

/** The descriptions of settings files and of all that is written as JSON, from what checks them: editors and other programs complete and check with them. */
async function generateSchemas() {
    const schemas = {
        hotroom: (await load('language/src/settings/schema.ts')).settingsJsonSchema(),
        model: (await load('language/src/exports/model-schema.ts')).modelJsonSchema(),
        comparison: (await load('language/src/compare/comparison-json.ts')).comparisonJsonSchema(),
        review: (await load('language/src/review/review-json.ts')).reviewJsonSchema(),
        findings: (await load('language/src/renderings/findings-json.ts')).findingsJsonSchema(),
        'cut-list': (await load('language/src/renderings/cut-list-json.ts')).cutListJsonSchema(),
    };
    fs.mkdirSync(path.join(target, 'language/schemas'), { recursive: true });
    for (const [name, schema] of Object.entries(schemas)) fs.writeFileSync(path.join(target, `language/schemas/${name}.schema.json`), `${JSON.stringify(schema, undefined, 1)}\n`);
}

async function load(entry) {
    const bundle = await esbuild.build({ absWorkingDir: root, entryPoints: [entry], bundle: true, write: false, format: 'esm', platform: 'node', logLevel: 'error' });
    return import(`data:text/javascript;base64,${Buffer.from(bundle.outputFiles[0].contents).toString('base64')}`);
}
