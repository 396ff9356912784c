import type { HubArguments, Terminal } from "./cli/index.ts";
import { EXIT, runCommandLine, UnusableInputError } from "./cli/index.ts";
import type { Instant } from "./core/units/index.ts";
import { words } from "./words/index.ts";

/** Runs a hub in this process until it is told to stop. Nothing of it is loaded for other commands. */
async function serveHub(hubArguments: HubArguments, terminal: Terminal): Promise<void> {
  const { HubTroubleError, startHub } = await import("./hub/index.ts");
  try {
    const hub = await startHub(hubArguments, terminal);
    await new Promise<void>((resolve) => {
      for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve());
    });
    await hub.close();
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
  });
} catch (error) {
  const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  process.stderr.write(`${words("cli/own-mistake", { what: what.replaceAll(/\s+/g, " ") })}\n`);
  process.exitCode = EXIT.unusable;
}
