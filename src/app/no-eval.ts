import { config } from "zod";

// The hub's content security policy forbids code made at run time. Zod tests for it when a schema is made, and that
// test alone is reported as a violation. This file turns the test off. It must be imported first, before any schema is
// made.
config({ jitless: true });
