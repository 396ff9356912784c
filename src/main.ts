import type { HubArguments, Terminal } from "./cli/index.ts";
import { EXIT, runCommandLine, UnusableInputError } from "./cli/index.ts";
import type { Instant } from "./core/units/index.ts";
import { words } from "./words/index.ts";

/** Runs a hub in this process until it is told to stop. Nothing of it is loaded for other commands. */
async function serveHub(hubArguments: HubArguments, terminal: Terminal): Promise<void> {
  const { startHub } = await import("./hub/index.ts");
  const hub = await asInput(() => startHub(hubArguments, terminal));
  await new Promise<void>((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve());
  });
  await asInput(() => hub.close());
}

/** What a hub's owner can do something about is input that cannot be used. */
async function asInput<T>(work: () => Promise<T>): Promise<T> {
  const { HubTroubleError } = await import("./hub/index.ts");
  try {
    return await work();
  } catch (error) {
    if (error instanceof HubTroubleError) throw new UnusableInputError(error.message);
    throw error;
  }
}

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
    serveHub,
    hubStore: {
      backup: async (data, file) => {
        const { backupHub } = await import("./hub/index.ts");
        return asInput(() => backupHub(data, file));
      },
      restore: async (data, file) => {
        const { restoreHub } = await import("./hub/index.ts");
        return asInput(() => restoreHub(data, file));
      },
    },
  });
} catch (error) {
  const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  process.stderr.write(`${words("cli/own-mistake", { what: what.replaceAll(/\s+/g, " ") })}\n`);
  process.exitCode = EXIT.unusable;
}
