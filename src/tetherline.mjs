#!/usr/bin/env node
// The command line runs from source: tsx reads the TypeScript, so there is no build step to forget.
import { register } from "tsx/esm/api";

register();
await import("./main.ts");
