import type { Reporter } from 'vitest/node';

/** Shows what the benchmarks print, the pairs that they time, and what went wrong. Each benchmark as a whole is run once; how long
 *  that took says nothing. */
export const pairedLines: Reporter = {
  onUserConsoleLog({ content }) {
    process.stdout.write(content);
  },
  onTestRunEnd(modules, unhandled) {
    const errors = modules.flatMap((module) => [
      ...module.errors(),
      ...[...module.children.allTests()].flatMap((test) => test.result().errors ?? []),
    ]);
    for (const { message } of [...unhandled, ...errors]) process.stderr.write(`${message}\n`);
  },
};
