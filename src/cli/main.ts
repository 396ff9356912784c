import type { Instant } from "../core/units/index.ts";
import { runCommandLine } from "./command-line.ts";
import { EXIT } from "./terminal.ts";

// A reader that has seen enough (`| head`) closes the pipe; that is no error.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  process.exit(error.code === "EPIPE" ? EXIT.fine : EXIT.unusable);
});

try {
  process.exitCode = await runCommandLine(process.argv.slice(2), {
    terminal: {
      out: (text) => process.stdout.write(text),
      err: (text) => process.stderr.write(text),
    },
    now: () => Date.now() as Instant,
  });
} catch (error) {
  const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  process.stderr.write(`Tetherline met a mistake of its own and stopped: ${what.replaceAll(/\s+/g, " ")}\n`);
  process.exitCode = EXIT.unusable;
}
