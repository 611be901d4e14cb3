import { commitOf, mergeBase } from './revision.js';
import { GitFailure, runGit } from './run-git.js';

interface Branch { readonly name: string; readonly leadsTo: string; readonly follows: string }

/** Names a first branch goes by where no other repository says which it is. */
const usualNames = ['main', 'master', 'trunk'];

/**
 * Where the branch that is checked out parted from the one it started from: the first branch of the repository it was fetched from, else one of a usual
 * name, else the branch it follows.
 * @returns the commit, and the branch it was found with
 * @throws a `GitFailure` when there is no other branch
 */
export async function branchBase(folder: string): Promise<{ readonly commit: string; readonly from: string }> {
    await commitOf('HEAD', folder);
    const branches = await branchesOf(folder);
    const own = await currentBranch(folder);
    const find = (name: string): readonly Branch[] => branches.filter(branch => branch.name === name && branch.name !== own);
    const [started] = [
        ...branches.filter(({ name, leadsTo }) => /^refs\/remotes\/[^/]+\/HEAD$/.test(name) && leadsTo !== '').sort((a, b) => Number(b.name.includes('/origin/')) - Number(a.name.includes('/origin/'))).flatMap(({ leadsTo }) => find(leadsTo)),
        ...usualNames.flatMap(name => find(`refs/heads/${name}`)),
        ...usualNames.flatMap(name => find(`refs/remotes/origin/${name}`)),
        ...branches.filter(({ name }) => name === own).flatMap(({ follows }) => find(follows)),
    ];
    if (!started) throw new GitFailure('failed', 'there is no other branch this one could have started from. The last commit can be compared with.');
    return { commit: await mergeBase('HEAD', started.name, folder), from: started.name.replace(/^refs\/(heads|remotes)\//, '') };
}

async function branchesOf(folder: string): Promise<readonly Branch[]> {
    const answer = (await runGit(['for-each-ref', '--format=%(refname)%00%(symref)%00%(upstream)', 'refs/heads', 'refs/remotes'], folder)).toString('utf8');
    return answer.split('\n').filter(line => line !== '').map(line => {
        const [name = '', leadsTo = '', follows = ''] = line.split('\0');
        return { name, leadsTo, follows };
    });
}

/** None while no branch is checked out. */
async function currentBranch(folder: string): Promise<string | undefined> {
    try {
        return (await runGit(['symbolic-ref', '--quiet', 'HEAD'], folder)).toString('utf8').trim();
    } catch (error) {
        if (error instanceof GitFailure && error.kind === 'failed') return undefined;
        throw error;
    }
}
