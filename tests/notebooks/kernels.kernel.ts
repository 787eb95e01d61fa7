import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { newProject, tool } from '../clients/project.js';
import { codeCellsOf, isAlike } from '../docs/notebook.js';
import { filesIn, read, root } from '../tree.js';

const notebooks = filesIn('docs/notebooks/').filter((file) => file.endsWith('.ipynb'));

/** Each kernel with its package and how it is started. */
const kernels = {
  deno: { tools: ['deno@2.9.6'], args: ['jupyter', '--kernel', '--conn', '{connection_file}'] },
  tslab: { tools: ['tslab@1.0.22'], args: ['kernel', '--config-path={connection_file}'] },
};

declare module 'vitest' {
  interface ProvidedContext {
    /** Whether the outputs are put into docs/notebooks: `npm run notebooks`. */
    readonly isWriting: boolean;
  }
}

/** A Python that can run notebooks: that of the system may have what another in front of it lacks. */
function findPython(): string {
  const found = ['python3', '/usr/bin/python3', 'python'].find(
    (python) => spawnSync(python, ['-c', 'import nbclient, nbformat']).status === 0,
  );
  if (found) return found;
  throw new Error(
    'Notebooks are run by nbclient, a part of Jupyter, which no Python here has. Install it: "apt-get install jupyter-nbconvert jupyter-client" on Debian, "pip install nbconvert" elsewhere.',
  );
}

describe.each(Object.entries(kernels))('in the kernel of %s', (kernel, { tools, args }) => {
  const python = findPython();
  let folder = '';

  beforeAll(() => {
    folder = newProject(`notebooks-${kernel}`, tools);
    const spec = join(folder, 'jupyter/kernels', kernel);
    mkdirSync(spec, { recursive: true });
    const argv = [tool(folder, kernel), ...args];
    const text = JSON.stringify({ argv, display_name: kernel, language: 'typescript' });
    writeFileSync(join(spec, 'kernel.json'), text);
  });

  test.each(notebooks)('%s runs from top to bottom and says what it said', (file) => {
    const source = join(folder, 'source.ipynb');
    const target = join(folder, 'target.ipynb');
    copyFileSync(join(root, file), source);
    const program = join(root, 'tests/notebooks/execute.py');
    const { status, stderr } = spawnSync(python, [program, source, target, kernel], {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, JUPYTER_PATH: join(folder, 'jupyter'), NO_COLOR: '1' },
      timeout: 240_000,
    });
    expect({ status, stderr: status === 0 ? '' : stderr }).toEqual({ status: 0, stderr: '' });
    const executed = readFileSync(target, 'utf8');
    if (inject('isWriting') && kernel === 'deno') writeFileSync(join(root, file), executed);
    const now = codeCellsOf(JSON.parse(executed));
    for (const [k, { code, text, html }] of codeCellsOf(JSON.parse(read(file))).entries()) {
      const got = now[k]?.text ?? '';
      expect({ code, text: isAlike(got, text) ? text : got }).toEqual({ code, text });
      if (kernel === 'deno') expect(now[k]?.html ?? null).toBe(html); // that of tslab shows text alone
    }
  });
});
